package view

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/web/page"
)

// hidden are the inputs that carry what the others cannot hold to the letter:
// containers that were given empty, empty texts and unticked boxes that were
// given, and the entries of another kind of joint.
func (f *form) hidden() []page.Hidden {
	var out []page.Hidden
	seen := map[string]bool{}
	for _, e := range f.typed.Draft.Entries {
		if seen[e.Path] {
			continue
		}
		seen[e.Path] = true
		if field, ok := press.FieldAt(e.Path); ok && field.Kind != press.Rows {
			if shown := Shown(field, e.Text); shown != e.Text || shown == "" && inGiven(field) {
				out = append(out, page.Hidden{Name: page.NameExact, Value: Carry(e)})
			}
			continue
		}
		if isContainer(e) && !isRowContainer(e.Path) {
			out = append(out, page.Hidden{Name: e.Path, Value: strings.TrimSpace(e.Text)})
		}
	}
	for _, e := range f.typed.Parked {
		out = append(out, page.Hidden{Name: page.NameParked, Value: Carry(e)})
	}
	return out
}

// inGiven tells whether nothing typed can still be an entry: an empty text.
func inGiven(f *press.Field) bool { return f.Kind == press.Text }

// isContainer tells whether the entry is a container that was given empty.
func isContainer(e press.Entry) bool {
	text := strings.TrimSpace(e.Text)
	_, known := containers[general(e.Path)]
	return known && (text == "{}" || text == "[]")
}

// isRowContainer tells whether the path is that of a whole row, which brings its
// own carrier.
func isRowContainer(path string) bool {
	g := general(path)
	return strings.HasSuffix(g, "[]") && hasRoom(path)
}

// others are the entries for which the form has no place.
func (f *form) others() []page.Entry {
	var out []page.Entry
	seen := map[string]bool{}
	for i, e := range f.typed.Draft.Entries {
		if !other(e, seen) {
			continue
		}
		id := fmt.Sprintf("f-other-%d", i)
		f.places[e.Path] = id
		out = append(out, page.Entry{
			ID: id, Path: e.Path, Text: e.Text, Fault: strings.Join(f.faults.At(e.Path), "; "),
			Carrier: page.Hidden{Name: page.NameOther, Value: Carry(e)},
			Remove:  "forget " + strconv.Itoa(len(out)),
		})
	}
	return out
}

func isInput(path string) bool {
	field, ok := press.FieldAt(path)
	return ok && field.Kind != press.Rows
}

// parked says what is kept aside.
func (f *form) parked() string {
	if len(f.typed.Parked) == 0 {
		return ""
	}
	kind := say.ChosenKindOfJoint()
	if f.kind == "" {
		kind = say.JointOfNoKind()
	} else if slices.Contains([]string{press.Touch, press.Measured, press.Interference}, f.kind) {
		kind = say.JointOfKind(f.kind)
	}
	return say.KeptAside(kind, counted(len(f.typed.Parked), "entry", "entries"))
}
