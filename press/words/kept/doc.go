// Package kept holds what the archive says of its file, its folder and what is in it, when
// something could not be kept, read or found.
package kept

import "ramplan/press/words"

// Words writes for who asked the archive.
type Words struct{ words.Printer }
