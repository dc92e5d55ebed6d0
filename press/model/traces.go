package model

import (
	"math"

	"ramplan/press/stack"
)

// Traces are the curves that drawings need beside the figures of a result.
type Traces struct {
	Readings                  []Pair     // the spread of seated readings: position mm, density 1/mm
	Force                     []Band     // force at the tool against the setting: %, N
	Demand                    []Band     // press-in force against depth from first contact: mm, N; nil for touch
	Part                      []Moment   // position against time of a cycle with the part
	Missing                   []Moment   // the same without an insert; nil without a push end
	PartStages, MissingStages []Stage    // the phases of the two
	Stall                     *float64   // mm of depth at which the typical fit stalls the ram
	Tight                     *float64   // mm of depth at which the tightest fit stalls a weak ram
	Earliest                  float64    // mm, earliest contact by the worst case
	NoInsert                  *float64   // mm, where the ram would stop without an insert
	Steps                     [2]float64 // %, first and last settable step
}

// Band is low, typical and high of one quantity at one place.
type Band struct{ At, Low, Typical, High float64 }

// Moment is where the ram is at a time.
type Moment struct {
	Time     float64 // s
	Position float64 // mm
}

// Points of one trace: enough for a smooth line in print.
const tracePoints = 120

// Traces gives the curves of the plan. They are computed when they are asked for
// first.
func (r *Outcome) Traces() *Traces {
	w := r.inside()
	w.once.Do(func() { w.traces = w.traceAll() })
	return &w.traces
}

func (w *work) traceAll() Traces {
	all := w.p.Ram.steps()
	t := Traces{
		Readings: w.traceReadings(),
		Force:    w.traceForce(),
		Demand:   w.traceDemand(),
		Earliest: w.parts.earliest,
		Steps:    [2]float64{all.at(all.first), all.at(all.last)},
	}
	part := w.nominalTimeline()
	t.Part, t.PartStages = part.moments(), part.stages()
	if w.zone.e != nil {
		missing := w.missingTimeline(*w.zone.e)
		t.Missing, t.MissingStages = missing.moments(), missing.stages()
	}
	if z, stalled := w.joint.push[mid].stall(w.force.now.typical); stalled {
		t.Stall = &z
	}
	if z, stalled := w.joint.push[high].stall(w.force.now.low()); stalled {
		t.Tight = &z
	}
	if m := w.withoutInsert(); !m.Nowhere {
		t.NoInsert = &m.Reading
	}
	return t
}

// traceReadings is the density of readings of all parts: product and error.
func (w *work) traceReadings() []Pair {
	terms := make([]stack.Term, 0, len(w.p.Parts)+2)
	terms = append(terms, w.parts.product...)
	terms = append(terms, w.parts.read...)
	terms = append(terms, w.p.Station.drift(), stack.Term{Row: stack.Row{Half: w.seated.sigma, Shape: stack.Normal, Sigmas: 1}, Times: 1})
	height := stack.NewSum(terms)
	centre := w.parts.xSeat + w.seated.deflection
	if height.Point() {
		return []Pair{{centre, 0}}
	}
	first, last := height.Support()
	reach := math.Min((last-first)/2, 5*height.SD())
	out := make([]Pair, 0, tracePoints+1)
	for i := range tracePoints + 1 {
		x := reach * (2*float64(i)/tracePoints - 1)
		out = append(out, Pair{centre + x, height.PDF(height.Mean() + x)})
	}
	return out
}

func (w *work) traceForce() []Band {
	from, to := w.p.Ram.SettingMin, w.p.Ram.SettingMax
	out := make([]Band, 0, tracePoints+1)
	for i := range tracePoints + 1 {
		c := from + (to-from)*float64(i)/tracePoints
		f := w.force.at(c)
		out = append(out, Band{c, f.low(), f.typical, f.high()})
	}
	return out
}

// traceDemand needs the corners only: demand runs in straight lines.
func (w *work) traceDemand() []Band {
	if w.p.Joint.Kind == Touch {
		return nil
	}
	band := func(z float64) Band {
		f := func(i int) float64 { return w.joint.push[i].at(z) }
		return Band{z, f(low), f(mid), f(high)}
	}
	d := w.joint.push[mid]
	out := []Band{band(0)}
	for _, z := range []float64{d.pilot, d.pilot + d.length, d.travel} {
		if z > out[len(out)-1].At && z <= d.travel {
			out = append(out, band(z))
		}
	}
	return out
}
