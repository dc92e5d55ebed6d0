package model

import (
	"math"

	"ramplan/press/stack"
)

// reading is what the encoder tells of a seated part (model section 6).
type reading struct {
	deflection float64 // mm, δ
	sigma      float64 // mm, the normal part of the error
	u          float64 // mm, standard uncertainty
	base       float64 // mm, the reading of a part of no height above the datum
	nominal    float64 // mm, where the ram rests on the nominal part, stalled or seated
	stalled    bool
}

// under is the deflection at a force: under force the encoder reads deeper.
func (w *work) under(force float64) float64 {
	return (force - w.p.Station.NestForce) / w.p.Station.Stiffness
}

// rest gives where the ram comes to rest on a part that stands taller by some
// mm, at a force and against a demand.
func (w *work) rest(taller, force float64, d push) (r float64, stalled bool) {
	if z, stalled := d.stall(force); stalled {
		return w.parts.xContact - taller + z + w.under(force), true
	}
	return w.parts.xSeat - taller + w.under(force), false
}

// readings computes the range of good readings and what is accepted of it.
func (w *work) readings() {
	st, force := &w.p.Station, w.force.now
	s := &w.seated
	s.deflection = w.under(force.typical)
	s.nominal, s.stalled = w.rest(0, force.typical, w.joint.push[mid])
	if !w.r.Pressable() {
		return
	}
	s.sigma = w.readingError(force)
	s.u = math.Sqrt(square(s.sigma) + square(st.NestDrift)/3 + square(w.parts.under.SD))
	s.base = st.Nest - w.parts.under.Mean + s.deflection

	good := Pair{s.base - w.p.Requirement.HeightHigh, s.base - w.p.Requirement.HeightLow}
	guard := w.p.Window.GuardFactor * 2 * s.u
	r := Readings{GoodRange: good, GuardBand: guard, Uncertainty: s.u}
	if a := (Pair{good[0] + guard, good[1] - guard}); a[0] <= a[1]+slack {
		r.Acceptance = &a
	}
	w.r.Window = r
}

// readingError is the normal part of the error of a reading at a force: one
// standard deviation, mm.
func (w *work) readingError(force thrust) float64 {
	st := &w.p.Station
	return math.Sqrt(square(w.p.Ram.Repeatability/2) + square(force.scatter/2/st.Stiffness) +
		square(w.under(force.typical)*st.StiffnessTolerance/100/2) + square(st.ReferenceUncertainty/2))
}

// drift is the nest's wander as a row of its own.
func (w *work) drift() stack.Term {
	return stack.Term{Row: stack.Row{Half: w.p.Station.NestDrift}, Times: 1}
}

func square(x float64) float64 { return x * x }
