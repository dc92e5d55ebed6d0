// Package shell holds what the command line says: what a verb needs, what it did and what
// it could not do.
package shell

import "ramplan/press/words"

// Words writes for who typed the command.
type Words struct{ words.Printer }
