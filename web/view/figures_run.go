package view

import (
	"strconv"

	"ramplan/press/words"
	"ramplan/web/page"
)

// probe are the figures of the probe: none where no probe takes place, or where it has
// no figures.
func (w writer) probe() []page.Figure {
	b := &w.r.Probe
	if !b.InUse || b.End == nil {
		return nil
	}
	out := []page.Figure{
		{Label: "Probe setting", Value: words.Setting(*b.Setting), Exact: words.Exact(*b.Setting)},
		{Label: "Probe pushes", Value: span(*b.Low, *b.High, 0), Unit: "N", Note: "typically " + words.Fixed(*b.Typical, 0)},
		w.position("Probe end", b.End),
		w.position("Latest probe end", b.LatestEnd),
		w.position("Nominal part stalls at", b.StallNominal),
		w.position("Loosest sound part stalls at", b.StallLoosest),
		maybe("Room left to the probe end", b.Room, 3, "mm", "less the uncertainty"),
	}
	below := page.Figure{Label: "Refused surely below", Value: "none is"}
	if c := b.CaughtBelow; c != nil {
		below = figure(below.Label, c.Effective, 1, "µm")
		below.Note = "effective; such a part holds " + words.Force(c.Holding)
	}
	return append(out, below,
		maybe("Passed surely above", b.PassedAbove, 1, "µm", "effective"),
		share("Sound parts refused by the probe", b.FalseRefusalPPM),
		lasting("The probe adds", b.AddedTime),
	)
}

// run are the positions at which each pass of a step ends, as low, nominal and high, and
// how long it lasts.
func (w writer) run() []page.Figure {
	s := w.r.Sequence
	if s == nil {
		return nil
	}
	var out []page.Figure
	for _, x := range s.Steps {
		name := strconv.Itoa(x.Step+1) + " " + words.StepName(w.p, x.Step)
		if x.Pass > 1 {
			name += ", pass " + strconv.Itoa(x.Pass)
		}
		f := page.Figure{Label: name, Link: w.places.link(rowPath(stepRows, x.Step)), Value: w.pos.Bare(x.End[1]), Unit: "mm", Exact: words.Exact(x.End[1])}
		if x.End[0] != x.End[2] {
			f.Value = w.pos.Bare(x.End[0]) + " to " + w.pos.Bare(x.End[2])
			f.Note = "nominal " + w.pos.Bare(x.End[1]) + "; "
		}
		f.Note += "from " + words.Seconds(x.Begins) + " to " + words.Seconds(x.Begins+x.Duration)
		out = append(out, f)
	}
	return out
}
