package view

import (
	"ramplan/press"
)

// readAs says as what a doubtful figure is read, and of a presence check that it names none;
// empty for any other.
func readAs(f *press.Field, text string) string {
	if f.Path == "station.presence_check" {
		return say.LeaveEmpty(text)
	}
	x, doubtful := f.Doubtful(text)
	if !doubtful {
		return ""
	}
	return say.ReadAs(x)
}
