package draw

import (
	"math"

	"ramplan/press"
)

// RunPlaces say where things lie on the run that [NewRun] makes with the same options:
// the ground of each step, and the way of the step in which the hold case is studied.
type RunPlaces struct {
	Width, Height float64     // px
	Top, Bottom   float64     // px, of the ground of every step
	Steps         []RunGround // those that are run, in order
	Held          []RunSpot   // the nominal way of the held pass; nil without
}

// RunGround is the strip of ground of one step.
type RunGround struct {
	Step     int     // counted from 0
	From, To float64 // px
}

// A RunSpot is a place on the way of the ram.
type RunSpot struct{ X, Y, At float64 } // px, px, mm

// PlacesOfRun finds them; none where the run is not drawn.
func PlacesOfRun(p *press.Plan, r *press.Result, o Options) RunPlaces {
	if p.Sequence == nil || r.Sequence == nil {
		return RunPlaces{}
	}
	d := layRun(newRunModel(p, r), o)
	out := RunPlaces{Width: d.width, Height: d.height, Top: d.plot.Y0, Bottom: d.plot.Y1 + 4}
	if n := len(d.lanes); n > 0 {
		out.Bottom = d.lanes[n-1].Y1 + 4
	}
	for _, s := range d.m.steps {
		out.Steps = append(out.Steps, RunGround{s.step, d.x.At(s.from), d.x.At(s.to)})
	}
	h := p.Sequence.Hold
	if h == nil {
		return out
	}
	for _, x := range r.Sequence.Steps {
		if x.Step != int(h.Step) || x.Pass != int(h.Pass) || x.Kind != press.StepMove && x.Kind != press.StepShift {
			continue
		}
		ends := x.Begins + x.Duration - p.Sequence.Steps[x.Step].Pause
		for _, q := range sampled(within2(d.m.way, x.Begins, ends), math.Inf(-1), 12) {
			at := d.at(q[0], q[1])
			out.Held = append(out.Held, RunSpot{at[0], at[1], q[1]})
		}
	}
	return out
}
