// Package label holds what stands on drawings and paper: labels beside lines, what a drawing
// says to who cannot see it, heads and feet of the sheet and of training records.
package label

import "ramplan/press/words"

// Words writes for who looks at the drawing.
type Words struct{ words.Printer }
