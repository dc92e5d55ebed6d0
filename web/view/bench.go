package view

import (
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// A Bench is everything that the page of one plan is made from.
type Bench struct {
	Typed    Typed
	Faults   press.Problems // of the draft
	Plan     *press.Plan    // the last valid one; nil before there was any
	Result   *press.Result  // of that plan
	Drawings Drawings       // of it
	Fresh    bool           // nothing was asked of these entries yet
	Notices  []page.Notice
	Before   string // the entries that were replaced, as a draft file
	Paste    *page.Paste
}

// Drawings of a plan, as SVG.
type Drawings struct{ Strip, Force, PressIn, Cycle string }

// Page gives the page of the bench.
func (b Bench) Page(assets page.Assets) page.Bench {
	form := newForm(b.Typed, b.Faults)
	form.paste, form.curve = b.Paste, b.curve()
	out := page.Bench{
		Assets:  assets,
		Title:   "ramplan",
		Form:    form.page(),
		State:   b.state(),
		Notices: b.Notices,
		Faults:  form.list(),
	}
	name := strings.TrimSpace(form.text["title.name"])
	out.Name = "New plan"
	if name != "" {
		out.Title, out.Name = name+" · ramplan", name
	}
	if b.Plan != nil {
		out.Form.Hidden = append(out.Form.Hidden, page.Hidden{Name: page.NameLast, Value: string(b.Plan.JSON())})
		out.Result = result(b.Plan, b.Result, b.Drawings, form.places)
		out.Standing = page.State{Kind: gravest(b.Result), Text: out.Result.Count}
		if len(b.Faults) > 0 {
			out.Result.Older = "Older than the entries: this is the last state that was a sound plan."
		}
		out.Result.Copy = copied(b.Plan, b.Result, out.Result.Setpoints, len(b.Faults) > 0)
		out.Headline, out.Perfect = words.Headline(b.Plan, b.Result), out.Result.Perfect
		out.Glance = words.Glance(b.Plan, b.Result)
	}
	if b.Before != "" {
		out.Back = true
		out.Form.Hidden = append(out.Form.Hidden, page.Hidden{Name: page.NameBefore, Value: b.Before})
	}
	return out
}

// state says in one line how the entries stand.
func (b Bench) state() page.State {
	if len(b.Faults) == 0 {
		return page.State{Kind: "valid", Text: "Up to date with the entries."}
	}
	missing := 0
	for _, p := range b.Faults {
		if p.Code == press.CodeRequired {
			missing++
		}
	}
	wrong := len(b.Faults) - missing
	switch {
	case wrong == 0:
		return page.State{Kind: "incomplete", Text: counted(missing, "entry is", "entries are") + " still needed."}
	case missing == 0:
		return page.State{Kind: "wrong", Text: counted(wrong, "fault is", "faults are") + " in the entries."}
	}
	return page.State{Kind: "wrong", Text: counted(wrong, "fault is", "faults are") + " in the entries, and " + counted(missing, "entry is", "entries are") + " still needed."}
}

// list is every fault of the entries, each leading to its field.
func (f *form) list() []page.Fault {
	var out []page.Fault
	for _, p := range f.faults {
		where := label(p.Path)
		if where == "" {
			where = "The plan"
		}
		out = append(out, page.Fault{Link: f.places.link(p.Path), Where: where, Text: p.Message})
	}
	return out
}

// counted counts in words: 1 entry, 2 entries.
func counted(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return strconv.Itoa(n) + " " + many
}
