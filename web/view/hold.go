package view

import (
	"slices"
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/web/page"
)

const holdStep = "sequence.hold.step"

// heldWith lets the hold case stay with its step when n steps stand in another order: by
// new place, the old one. With its step gone it is in none, and the rest of it stays.
func heldWith(entries []press.Entry, n int, order []int) []press.Entry {
	i := slices.IndexFunc(entries, func(e press.Entry) bool { return e.Path == holdStep })
	if i < 0 {
		return entries
	}
	was, ok := stepTyped(entries[i].Text)
	if !ok {
		return entries
	}
	switch now := slices.Index(order, was); {
	case now == was:
	case now >= 0:
		entries = slices.Clone(entries)
		entries[i].Text = strconv.Itoa(now)
	case was < n: // gone
		entries = slices.Delete(slices.Clone(entries), i, i+1)
	}
	return entries
}

// HeldIn tells whether the hold case is in a step, counted from 0.
func HeldIn(t Typed, step int) bool {
	for _, e := range t.Draft.Entries {
		if e.Path == holdStep {
			was, ok := stepTyped(e.Text)
			return ok && was == step
		}
	}
	return false
}

// HoldLost says what becomes of the hold case when its step is removed.
func HoldLost() string { return say.HoldLost() }

// stepTyped reads the number of a step, counted from 0.
func stepTyped(text string) (int, bool) {
	x, read := press.TypedNumber(strings.TrimSpace(text))
	if !read || x != float64(int(x)) || x < 0 {
		return 0, false
	}
	return int(x), true
}

// heldStep offers the steps by the numbers of their rows, from which one is taken; what
// the plan holds counts them from 0. A wait is no step to hold in. What is no step that
// can be held in is kept, and shown as what it is.
func (f *form) heldStep(out *page.Field) {
	out.Kind, out.Unit, out.StandIn, out.Range, out.ReadAs = "choice", "", "", "", ""
	out.Options = []page.Option{{Label: "none"}}
	value := strings.TrimSpace(f.text[holdStep])
	if x, read := press.TypedNumber(value); read && x == float64(int(x)) {
		value = strconv.Itoa(int(x))
	}
	for i := range f.count[stepRows] {
		row := rowPath(stepRows, i)
		kind, name := strings.TrimSpace(f.text[row+".kind"]), strings.TrimSpace(f.text[row+".name"])
		if o := (page.Option{Value: strconv.Itoa(i)}); kind != press.StepWait || o.Value == value {
			o.Label = strings.TrimSuffix(RowName(stepRows, i)+" "+kind, " ")
			if name != "" {
				o.Label += ", " + name
			}
			out.Options = append(out.Options, o)
		}
	}
	at := slices.IndexFunc(out.Options, func(o page.Option) bool { return o.Value == value })
	if at < 0 {
		out.Options = append(out.Options, page.Option{Value: f.text[holdStep], Label: say.NoSuchStep(value)})
		at = len(out.Options) - 1
	}
	out.Options[at].Chosen = true
}
