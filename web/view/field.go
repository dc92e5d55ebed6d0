package view

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/web/page"
)

// field makes the input of one field at one path.
func (f *form) field(field *press.Field, path string) page.Field {
	text, typed := f.text[path]
	out := page.Field{
		ID:       anchor(path),
		Name:     path,
		Label:    field.Label,
		Unit:     field.Unit,
		Help:     field.Help,
		Range:    sentence(field.Range()),
		Value:    Shown(field, text),
		StandIn:  standIn(field),
		Required: field.Required,
		Messages: f.faults.At(path),
	}
	f.places[path] = out.ID
	if field.Unit != "" {
		out.Spoken = "in " + field.Unit
	}
	out.Missing = len(out.Messages) > 0 && (!typed || strings.TrimSpace(text) == "")
	switch field.Kind {
	case press.Number:
		out.Kind = "number"
	case press.Flag:
		out.Kind = "flag"
		out.Checked = out.Value == "true"
	case press.Choice:
		out.Kind = "choice"
		out.Options = options(field, out.Value)
	default:
		out.Kind = "text"
		if field.Lines > 1 {
			out.Kind = "area"
		}
		out.Wide = wideText(field)
	}
	return out
}

// wideText tells whether a text is likely to be long.
func wideText(f *press.Field) bool {
	return slices.Contains([]string{"title.name", "title.characteristic", "ram.name", "ram.curve.source", "station.presence_check", "parts[].name"}, f.Path)
}

// standIn says what holds while nothing is typed.
func standIn(f *press.Field) string {
	switch d := f.Default.(type) {
	case float64:
		return strconv.FormatFloat(d, 'f', -1, 64)
	case string:
		return d
	}
	return f.Derived
}

// options are the words of a choice. What is not one of them is kept as a word
// of its own, so that a typed fault is shown and not lost.
func options(f *press.Field, value string) []page.Option {
	var out []page.Option
	if f.Required {
		out = append(out, page.Option{Label: "choose …"})
	} else if d, ok := f.Default.(string); ok {
		out = append(out, page.Option{Label: d + " (not given)"})
	} else {
		out = append(out, page.Option{Label: "not given"})
	}
	for _, c := range f.Choices {
		out = append(out, page.Option{Value: c, Label: c})
	}
	at := slices.IndexFunc(out, func(o page.Option) bool { return o.Value == value })
	if at < 0 {
		out = append(out, page.Option{Value: value, Label: strconv.Quote(value)})
		at = len(out) - 1
	}
	out[at].Chosen = true
	return out
}

// sentence begins with a capital and ends with a full stop.
func sentence(s string) string {
	if s == "" {
		return ""
	}
	return strings.ToUpper(s[:1]) + s[1:] + "."
}

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
		first := !seen[e.Path]
		seen[e.Path] = true
		if first && hasPlace(e.Path) && (isContainer(e) || isInput(e.Path)) {
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
	kind := "the chosen kind of joint"
	if f.kind == "" {
		kind = "a joint of no kind yet"
	} else if slices.Contains([]string{press.Touch, press.Measured, press.Interference}, f.kind) {
		kind = "a joint of kind " + f.kind
	}
	return "Kept aside, as " + kind + " has no such fields: " + counted(len(f.typed.Parked), "entry") +
		". They come back with the kind that has them; a saved plan leaves them out, a saved draft keeps them."
}
