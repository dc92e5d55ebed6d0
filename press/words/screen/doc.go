// Package screen holds what the pages of the bench say where it hangs on a figure, a choice
// or a state: labels beside figures, answers to what was done, what a field asks for. The
// text that a page has always stands in its templ.
package screen

import "ramplan/press/words"

// Words writes for one reader of the pages.
type Words struct{ words.Printer }
