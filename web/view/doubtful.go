package view

import (
	"ramplan/press"
	"ramplan/press/words"
)

// readAs says as what a doubtful figure is read; empty for any other.
func readAs(f *press.Field, text string) string {
	x, doubtful := f.Doubtful(text)
	if !doubtful {
		return ""
	}
	return words.ReadAs(x)
}
