package view

import (
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/drafts"
	"ramplan/press/words"
	"ramplan/web/page"
)

// A Change is one entry that means something else in the second of two drafts.
type Change struct {
	Path     string
	Was, Is  string
	Had, Has bool

	row        string // what the row is called in which it stands
	came, went bool   // the whole row did
}

// InRows tells changes between two drafts in which rows they stand.
func InRows(cs []Change, was, is *press.Draft) []Change {
	before, after := rowsOf(was), rowsOf(is)
	for i := range cs {
		base, n, ok := rowOf(cs[i].Path)
		if !ok {
			continue
		}
		path := rowPath(base, n)
		old, had := before[path]
		now, has := after[path]
		cs[i].row, cs[i].came, cs[i].went = now, !had, !has
		if now == "" {
			cs[i].row = old
		}
	}
	return cs
}

// rowsOf gives the rows of a draft with what each is called, if it has a name.
func rowsOf(d *press.Draft) map[string]string {
	out := map[string]string{}
	for _, e := range d.Entries {
		base, n, ok := rowOf(e.Path)
		if !ok {
			continue
		}
		path := rowPath(base, n)
		name := out[path]
		if e.Path == path+".name" {
			name = strings.TrimSpace(e.Text)
		}
		out[path] = name
	}
	return out
}

// where names the entry, with its row by name and number.
func (c Change) where() string {
	base, n, inRow := rowOf(c.Path)
	f, isField := press.FieldAt(c.Path)
	name := label(c.Path)
	switch {
	case inRow && isField && c.row != "" && !strings.HasSuffix(c.Path, "].name"):
		name = c.row + " (" + strings.ToLower(RowName(base, n)) + "): " + strings.ToLower(f.Label[:1]) + f.Label[1:]
	case inRow && !isField:
		name = RowName(base, n)
	}
	if name == "" {
		return c.Path
	}
	return name
}

// page is the change as a table has it.
func (c Change) page() page.Change {
	out := page.Change{Where: c.where(), Path: c.Path, Was: shownEntry(c.Path, c.Was, c.Had), Is: shownEntry(c.Path, c.Is, c.Has)}
	if f, ok := press.FieldAt(c.Path); ok && f.Kind == press.Flag {
		// A box that says nothing is not ticked; only beside one that says so it
		// counts as not given.
		if !c.Had && strings.TrimSpace(c.Is) == "true" {
			out.Was = say.Unticked()
		}
		if !c.Has && strings.TrimSpace(c.Was) == "true" {
			out.Is = say.Unticked()
		}
	}
	return out
}

// shownEntry is what a typed text says, for people.
func shownEntry(path, typed string, given bool) string {
	if !given {
		return none
	}
	text, _ := press.AsRead(path, typed)
	f, ok := press.FieldAt(path)
	switch {
	case (!ok || f.Kind == press.Rows) && (text == "{}" || text == "[]"):
		return say.ThereEmpty()
	case !ok:
		return shownText(text)
	case path == drafts.PathShelfDigest:
		return words.ShortDigest(text)
	case f.Kind == press.Number:
		x, read := press.TypedNumber(text)
		if !read {
			return shownText(typed)
		}
		if path == holdStep {
			return "step " + words.Full(x+1)
		}
		return words.Unit(words.Full(x), f.Unit)
	case f.Kind == press.Flag && text == "true":
		return "ticked"
	case f.Kind == press.Flag && text == "false":
		return say.Unticked()
	case f.Kind == press.Choice:
		return shownText(words.ChoiceOf(f.Path, text))
	}
	return shownText(text)
}

// bareEntry is the same without the unit, which stands beside it or above.
func bareEntry(path, typed string) string {
	text, _ := press.AsRead(path, typed)
	f, ok := press.FieldAt(path)
	switch {
	case !ok:
		return typed
	case f.Kind == press.Choice:
		return words.ChoiceOf(f.Path, text)
	case f.Kind == press.Number:
		if x, read := press.TypedNumber(text); read {
			return words.Full(x)
		}
	}
	return typed
}

// shownText is a typed text as a table shows it.
func shownText(text string) string {
	const most = 120
	switch runes := []rune(text); {
	case text == "":
		return "empty"
	case len(runes) > most:
		return string(runes[:most]) + "…"
	}
	return text
}

func changedAll(cs []Change) []page.Change {
	var out []page.Change
	for _, c := range cs {
		out = append(out, c.page())
	}
	return out
}

// inBrief tells changes in fewer lines: a row that came or went in one, the
// points of the curve in one, and the digest of a copied ram not beside others.
func inBrief(cs []Change) []page.Change {
	var out []page.Change
	told := map[string]bool{}
	points := curvePoints(cs)
	for _, c := range cs {
		base, n, inRow := rowOf(c.Path)
		switch {
		case base == curveRows:
			if !told[base] {
				out = append(out, page.Change{Where: "Curve", Path: base, Told: points})
			}
			told[base] = true
		case inRow && (c.came || c.went):
			row := rowPath(base, n)
			if !told[row] {
				out = append(out, page.Change{Where: rowCalled(base, n, c.row), Path: row, Told: moved(c.came)})
			}
			told[row] = true
		case c.Path == drafts.PathShelfDigest && len(cs) > 1:
		case c.Path == drafts.PathShelfDigest && c.Has:
			out = append(out, page.Change{Where: "Ram", Path: c.Path, Told: say.CopiedAnew()})
		default:
			out = append(out, c.page())
		}
	}
	return out
}

func rowCalled(base string, n int, name string) string {
	if name == "" {
		return RowName(base, n)
	}
	return RowName(base, n) + ", " + name + ","
}

func moved(came bool) string {
	if came {
		return "added"
	}
	return "removed"
}

// curvePoints says how many points of the curve came, went and changed.
func curvePoints(cs []Change) string {
	rows := map[int]Change{}
	for _, c := range cs {
		if base, n, ok := rowOf(c.Path); ok && base == curveRows {
			rows[n] = c
		}
	}
	var came, went, changed int
	for _, c := range rows {
		switch {
		case c.came:
			came++
		case c.went:
			went++
		default:
			changed++
		}
	}
	var out []string
	add := func(n int, what string) {
		if n > 0 {
			out = append(out, counted(n, "point", "points")+" "+what)
		}
	}
	add(changed, "changed")
	add(came, "added")
	add(went, "removed")
	return strings.Join(out, ", ")
}

// cut leaves at most so many changes, and says how many more there are.
func cut(cs []page.Change, most int) ([]page.Change, string) {
	if len(cs) <= most {
		return cs, ""
	}
	more := len(cs) - most
	if more == 1 {
		return cs[:most], say.OneMore()
	}
	return cs[:most], "and " + strconv.Itoa(more) + " more"
}
