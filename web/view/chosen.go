package view

import (
	"strconv"

	"ramplan/press/drill"
)

// choiceValue is how a page names a choice: by its place in the order of chance. What
// an answer is about cannot be read in the source of a page.
func choiceValue(i int) string { return strconv.Itoa(i + 1) }

// Chosen gives the choice that a page names, empty for none. It is not ok for what no
// page of this program names, such as an answer on a page of an older one.
func Chosen(e drill.Exercise, value string) (id string, ok bool) {
	if value == "" {
		return "", true
	}
	for i, c := range e.Choices {
		if choiceValue(i) == value {
			return c.ID, true
		}
	}
	return "", false
}

// ValueOf is how a page of an exercise names a choice; empty for one that it has not.
func ValueOf(e drill.Exercise, id string) string {
	for i, c := range e.Choices {
		if c.ID == id {
			return choiceValue(i)
		}
	}
	return ""
}

// Unreadable says why an answer is asked for again.
func Unreadable(e drill.Exercise) string {
	if e.Zone != nil {
		return say.NoZone()
	}
	return say.OldAnswer()
}
