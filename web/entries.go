package web

import (
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/web/page"
	"ramplan/web/view"
)

// sortInputs tells the fields of the plan from what is carried along.
func sortInputs(inputs []input, file *postedFile) *posted {
	p := &posted{file: file, picks: map[string]string{}, signed: map[string]string{}}
	var shown, exact, others, parked []press.Entry
	for _, in := range inputs {
		value := strings.ReplaceAll(in.value, "\r\n", "\n")
		switch in.name {
		case page.NameDo:
			p.do = value
		case page.NameVersion:
			p.version, _ = strconv.ParseInt(value, 10, 64)
		case page.NameState:
			p.state, _ = strconv.ParseInt(value, 10, 64)
		case page.NameWindow:
			p.window = value
		case page.NameMine:
			p.mine = value
		case page.NamePaste:
			p.paste = value
		case page.NameGrowthLength:
			p.growth.Length = value
		case page.NameGrowthChange:
			p.growth.Change = value
		case page.NameGrowthExpansion:
			p.growth.Expansion = value
		case page.NameExact, page.NameParked, page.NameOther:
			e, ok := view.Carried(value)
			switch {
			case !ok:
			case in.name == page.NameExact:
				exact = append(exact, e)
			case in.name == page.NameParked:
				parked = append(parked, e)
			default:
				others = append(others, e)
			}
		default:
			if path, ok := pick(in.name); ok {
				p.picks[path] = value
			} else if path, ok := strings.CutPrefix(in.name, page.NameSigned); ok {
				p.signed[path] = value
			} else if !strings.HasPrefix(in.name, ":") {
				shown = append(shown, press.Entry{Path: in.name, Text: value})
			}
		}
	}
	p.typed = view.Take(append(given(shown, exact), others...), parked)
	return p
}

// given leaves out the inputs in which nothing was typed, and gives those whose
// input still shows what they were given their text to the letter.
func given(shown, exact []press.Entry) []press.Entry {
	letter := make(map[string]string, len(exact))
	for _, e := range exact {
		letter[e.Path] = e.Text
	}
	out := make([]press.Entry, 0, len(shown))
	seen := make(map[string]bool, len(shown))
	add := func(e press.Entry) {
		field, ok := press.FieldAt(e.Path)
		if text, carried := letter[e.Path]; ok && carried && view.Shown(field, text) == view.Shown(field, e.Text) {
			out = append(out, press.Entry{Path: e.Path, Text: text})
		} else if e.Text != "" {
			out = append(out, e)
		}
	}
	for _, e := range shown {
		seen[e.Path] = true
		add(e)
	}
	for _, e := range exact {
		// A box that is not ticked sends nothing at all.
		if field, ok := press.FieldAt(e.Path); ok && field.Kind == press.Flag && !seen[e.Path] {
			seen[e.Path] = true
			add(press.Entry{Path: e.Path})
		}
	}
	return out
}
