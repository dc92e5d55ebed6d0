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
		{Label: say.ProbeSetting(), Value: say.Setting(*b.Setting), Exact: words.Exact(*b.Setting)},
		{Label: say.ProbePushes(), Value: span(*b.Low, *b.High, 0), Unit: "N", Note: "typically " + words.Fixed(*b.Typical, 0)},
		w.position(say.ProbeEnd(), b.End),
		w.position(say.LatestProbeEnd(), b.LatestEnd),
		w.position(say.NominalPartStallsAt(), b.StallNominal),
		w.position(say.LoosestSoundPartStallsAt(), b.StallLoosest),
		maybe(say.RoomLeftToTheProbe(), b.Room, 3, "mm", say.LessTheUncertainty()),
	}
	below := page.Figure{Label: say.RefusedSurelyBelow(), Value: say.NoneIs()}
	if c := b.CaughtBelow; c != nil {
		below = figure(below.Label, c.Effective, 1, "µm")
		below.Value = words.Fixed(words.CaughtBelowIn(c.Effective), 1)
		below.Note = say.EffectiveSuchAPartHolds(c.Holding)
	}
	above := maybe(say.PassedSurelyAbove(), b.PassedAbove, 1, "µm", "effective")
	if b.PassedAbove != nil { // as the drawing and the sentences round it
		above.Value = words.Fixed(words.PassedAboveIn(*b.PassedAbove), 1)
	}
	return append(out, below, above,
		share(say.SoundRefusedByProbe(), b.FalseRefusalPPM),
		lasting(say.ProbeAdds(), b.AddedTime),
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
			name += say.Pass(x.Pass)
		}
		f := page.Figure{Label: name, Link: w.places.link(rowPath(stepRows, x.Step)), Value: w.pos.Bare(x.End[1]), Unit: "mm", Exact: words.Exact(x.End[1])}
		if x.End[0] != x.End[2] {
			f.Value = w.pos.Bare(x.End[0]) + " to " + w.pos.Bare(x.End[2])
			f.Note = "nominal " + w.pos.Bare(x.End[1]) + "; "
		}
		f.Note += "from " + say.Seconds(x.Begins) + " to " + say.Seconds(x.Begins+x.Duration)
		out = append(out, f)
	}
	return out
}
