package view

import (
	"slices"
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// longestStandIn is how many characters fit into a field beside its unit.
const longestStandIn = 17

// field makes the input of one field at one path.
func (f *form) field(field *press.Field, path string) page.Field {
	text := f.text[path]
	out := stated().fields[field]
	out.ID, out.Name = anchor(path), path
	out.Value, out.OwnUnit, out.ReadAs = Shown(field, text), field.Bare(text) != text, readAs(field, text)
	out.Messages = slices.Concat(f.faults.At(path), f.pairFault(path))
	f.idle(&out)
	f.places[path] = out.ID
	out.Missing = strings.TrimSpace(text) == "" && onlyMissing(f.faults, path)
	if out.Missing && out.Messages[0] != "not given; "+field.Allowed() {
		out.Why = needOf(out.Messages)
	}
	switch field.Kind {
	case press.Flag:
		out.Checked = out.Value == "true"
	case press.Choice:
		out.Options = options(field, out.Value)
	}
	if path == holdStep {
		f.heldStep(&out)
	}
	return out
}

// pairs are entries of which the first is to be less than the second.
var pairs = map[string]string{"window.zone_start": "window.zone_end"}

// pairFault says at the first entry of a pair what the checker says at the second: either
// of them can be the one that is wrong.
func (f *form) pairFault(path string) []string {
	second, ok := pairs[path]
	if !ok || !slices.ContainsFunc(f.faults, func(p press.Problem) bool { return p.Path == second && p.Code == press.CodeOrder }) {
		return nil
	}
	field, _ := press.FieldAt(second)
	return []string{say.LessThanOther(Shown(field, f.text[second]), field.Label)}
}

// idle shows that an entry is of no use beside what is chosen next to it: the
// standard deviations of a part, unless its lengths are spread normally.
func (f *form) idle(out *page.Field) {
	row, is := strings.CutSuffix(out.Name, "].sigmas")
	if !is || strings.TrimSpace(f.text[row+"].shape"]) == press.Normal {
		return
	}
	out.Idle, out.StandIn = true, say.IfNormal()
	if out.Value != "" {
		out.ReadAs = say.UsedWithNormalOnly()
	}
}

// onlyMissing tells whether the one fault at a path is that nothing was given.
func onlyMissing(faults press.Problems, path string) bool {
	missing := false
	for _, p := range faults {
		if p.Path == path {
			if p.Code != press.CodeRequired {
				return false
			}
			missing = true
		}
	}
	return missing
}

// wideText tells whether a text is likely to be long.
func wideText(f *press.Field) bool {
	return slices.Contains([]string{"title.name", "title.characteristic", "ram.name", "ram.curve.source", "station.presence_check", "parts[].name", "quality.reactions[].check"}, f.Path)
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
		out = append(out, page.Option{Label: say.Choose()})
	} else if d, ok := f.Default.(string); ok {
		label := say.NotGiven(f.Path, d)
		if strings.Contains(f.Path, "[]") { // a row has room for a word
			label = "(" + words.ChoiceOf(f.Path, d) + ")"
		}
		out = append(out, page.Option{Label: label})
	} else {
		out = append(out, page.Option{Label: say.NoEntry()})
	}
	for _, c := range f.Choices {
		out = append(out, page.Option{Value: c, Label: words.ChoiceOf(f.Path, c)})
	}
	at := slices.IndexFunc(out, func(o page.Option) bool { return o.Value == value })
	if at < 0 {
		out = append(out, page.Option{Value: value, Label: strconv.Quote(value)})
		at = len(out) - 1
	}
	out[at].Chosen = true
	return out
}

// choiceLabel writes a choice as people read it.
func choiceLabel(c string) string { return strings.ReplaceAll(c, "_", " ") }

// sentence begins with a capital and ends with a full stop.
func sentence(s string) string {
	if s == "" {
		return ""
	}
	return strings.ToUpper(s[:1]) + s[1:] + "."
}
