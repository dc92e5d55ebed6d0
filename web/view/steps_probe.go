package view

import (
	"math"
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// DoProbeStep starts the command that puts the probe's step before the press, or takes it
// away, so that it stands among the steps where the probe is in use.
const DoProbeStep = "probestep"

// The two ways of it.
const (
	probeIn  = "in"
	probeOut = "out"
)

// kindsOf lists the kinds of the steps.
func kindsOf(text func(path string) string, n int) []string {
	kinds := make([]string, n)
	for i := range kinds {
		kinds[i] = strings.TrimSpace(text(rowPath(stepRows, i) + ".kind"))
	}
	return kinds
}

// probeStep offers what the steps lack of the probe, or have too much: nil where they go
// together, or where there is no press that it could stand before.
func (f *form) probeStep() []page.Start {
	kinds := kindsOf(func(path string) string { return f.text[path] }, f.count[stepRows])
	has := slices.Contains(kinds, press.StepProbe)
	switch {
	case f.probing() && !has && slices.Contains(kinds, press.StepPress):
		return []page.Start{{Do: DoProbeStep + " " + probeIn, Label: say.ProbeStepIn()}}
	case !f.probing() && has:
		return []page.Start{{Do: DoProbeStep + " " + probeOut, Label: say.ProbeStepOut()}}
	}
	return nil
}

// ProbeStep puts the probe's step before the press, or takes it away; the hold case stays
// with its step. It is false where there is nothing to do.
func ProbeStep(t Typed, way string) (Typed, bool) {
	texts := map[string]string{}
	for _, e := range t.Draft.Entries {
		texts[e.Path] = e.Text
	}
	n := rowsIn(t.Draft.Entries, stepRows)
	kinds := kindsOf(func(path string) string { return texts[path] }, n)
	at := slices.Index(kinds, press.StepProbe)
	order := make([]int, n)
	for i := range order {
		order[i] = i
	}
	push := slices.Index(kinds, press.StepPress)
	switch {
	case way == probeIn && at < 0 && push >= 0:
		order = slices.Insert(order, push, n) // a row that was not there
	case way == probeOut && at >= 0:
		order = slices.Delete(order, at, at+1)
	default:
		return t, false
	}
	t.Draft.Entries = heldWith(reordered(t.Draft.Entries, stepRows, order), n, order)
	if way == probeIn {
		t.Draft.Set(rowPath(stepRows, push)+".kind", press.StepProbe)
	}
	return t, true
}

// overThePart is how far before the contact a template places what is done over the part,
// mm: a start to be changed.
const overThePart = 30

// overPart is the position so far before the contact of the nominal part, as it is typed
// in, with room for as much more above it; empty where the entries are no plan yet, or
// where the ram has no room for it.
func overPart(t Typed, more float64) string {
	d := press.Draft{Entries: slices.DeleteFunc(slices.Clone(t.Draft.Entries), func(e press.Entry) bool { return within(e.Path, "sequence") })}
	p, faults := d.Check()
	if len(faults) > 0 {
		return ""
	}
	r := press.Evaluate(p)
	at := r.Travel.Contact - overThePart
	if !r.Pressable() || at-more < max(0, p.Station.Home) {
		return ""
	}
	step := p.Station.PositionStep
	if step <= 0 {
		step = 0.01
	}
	return words.Exact(math.Round(math.Floor(at/step+1e-6)*step*1e6) / 1e6)
}
