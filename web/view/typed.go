// Package view makes the structs that pages print: pure functions from what was
// typed and what was found to ready strings.
package view

import (
	"encoding/json"
	"slices"
	"strings"

	"ramplan/press"
)

// Typed is what a form holds: the draft that is checked, and the entries of
// another kind of joint, which are kept aside so that nothing typed is lost.
type Typed struct {
	Draft  press.Draft
	Parked []press.Entry
}

// Take sorts the entries of a draft, and those kept aside before, by whether the
// chosen kind of joint has them. An entry that was given twice is kept twice.
func Take(entries, parked []press.Entry) Typed {
	entries = tidyRows(entries)
	kind := ""
	given := make(map[string]bool, len(entries))
	for _, e := range entries {
		given[e.Path] = true
		if e.Path == "joint.kind" && kind == "" {
			kind = strings.TrimSpace(e.Text)
		}
	}
	var t Typed
	place := func(e press.Entry, wasParked bool) {
		switch {
		case wasParked && given[e.Path]:
			// What the form shows now is newer.
		case !applies(e.Path, kind):
			t.Parked = append(t.Parked, e)
		default:
			t.Draft.Entries = append(t.Draft.Entries, e)
		}
	}
	for _, e := range entries {
		place(e, false)
	}
	for _, e := range parked {
		place(e, true)
	}
	return t
}

// All is every entry, those kept aside last: what a draft file holds.
func (t Typed) All() *press.Draft {
	return &press.Draft{Entries: slices.Concat(t.Draft.Entries, t.Parked)}
}

// Carry writes an entry as the value of one input.
func Carry(e press.Entry) string {
	b, err := json.Marshal([2]string{e.Path, e.Text})
	if err != nil {
		panic("view: " + err.Error())
	}
	return string(b)
}

// Carried reads what Carry wrote.
func Carried(value string) (press.Entry, bool) {
	var pair [2]string
	if json.Unmarshal([]byte(value), &pair) != nil {
		return press.Entry{}, false
	}
	return press.Entry{Path: pair[0], Text: pair[1]}, true
}

// Shown is what the input of a field sends back when it was given this text: a
// box that is not ticked sends nothing, one line holds no line breaks.
func Shown(f *press.Field, text string) string {
	text = strings.ReplaceAll(strings.ReplaceAll(text, "\r\n", "\n"), "\r", "\n")
	text = strings.ReplaceAll(text, "\x00", "\uFFFD")
	switch {
	case f.Kind == press.Flag:
		if strings.TrimSpace(text) == "true" {
			return "true"
		}
		return ""
	case f.Kind == press.Choice:
		for _, c := range f.Choices {
			if strings.TrimSpace(text) == c {
				return c
			}
		}
		return text
	case f.Lines > 1:
		return text
	}
	return strings.ReplaceAll(text, "\n", "")
}
