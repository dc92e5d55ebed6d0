package model

import (
	"math"

	"ramplan/press/stack"
)

// reading is what the encoder tells of a seated part (model section 6).
type reading struct {
	force      thrust
	deflection float64 // mm, δ
	sigma      float64 // mm, the normal part of the error
	u          float64 // mm, standard uncertainty
	base       float64 // mm, the reading of a part of no height above the datum
	nominal    float64 // mm, where the ram rests on the nominal part, stalled or seated
	stalled    bool
}

// under is the deflection at a force: under force the encoder reads deeper.
func (st *Station) under(force float64) float64 { return (force - st.NestForce) / st.Stiffness }

// rest gives where the ram comes to rest on a part that stands taller by some
// mm, at a force and against a demand.
func (w *work) rest(taller, force float64, d push) (r float64, stalled bool) {
	return w.parts.rest(&w.p.Station, taller, force, d)
}

func (q *parts) rest(st *Station, taller, force float64, d push) (r float64, stalled bool) {
	if z, stalled := d.stall(force); stalled {
		return q.xContact - taller + z + st.under(force), true
	}
	return q.xSeat - taller + st.under(force), false
}

// readings computes the range of good readings at a push, against the typical demand,
// and what is accepted of it.
func (in *Input) readings(q *parts, force thrust, typical push) (reading, Readings) {
	st := &in.Station
	s := reading{deflection: st.under(force.typical)}
	s.nominal, s.stalled = q.rest(st, 0, force.typical, typical)
	if !q.pressable() {
		return s, Readings{}
	}
	s.force, s.sigma = force, in.readingError(force)
	s.u = in.uncertainty(q, s.sigma)
	s.base = st.Nest - q.under.Mean + s.deflection

	good := Pair{s.base - in.Requirement.HeightHigh, s.base - in.Requirement.HeightLow}
	guard := in.Window.GuardFactor * 2 * s.u
	r := Readings{GoodRange: good, GuardBand: guard, Uncertainty: s.u}
	if a := (Pair{good[0] + guard, good[1] - guard}); a[0] <= a[1]+slack {
		r.Acceptance = &a
	}
	return s, r
}

// uncertainty is the standard uncertainty of a reading whose error has this normal part, mm.
func (in *Input) uncertainty(q *parts, sigma float64) float64 {
	return math.Sqrt(square(sigma) + square(in.Station.NestDrift)/3 + square(q.under.SD))
}

// ReadingUncertainty is the standard uncertainty of a reading at the setting in force, mm: that
// of the window, also where the parts leave no way to press in and there is no window.
func (r *Outcome) ReadingUncertainty() float64 {
	w := r.inside()
	return w.p.uncertainty(&w.parts, w.p.readingError(w.force.now))
}

// readingError is the normal part of the error of a reading at a force: one
// standard deviation, mm.
func (in *Input) readingError(force thrust) float64 {
	st := &in.Station
	return math.Sqrt(square(in.Ram.Repeatability/2) + square(force.scatter/2/st.Stiffness) +
		square(st.under(force.typical)*st.StiffnessTolerance/100/2) + square(st.ReferenceUncertainty/2))
}

// drift is the nest's wander as a row of its own.
func (st *Station) drift() stack.Term {
	return stack.Term{Row: stack.Row{Half: st.NestDrift}, Times: 1}
}

func square(x float64) float64 { return x * x }
