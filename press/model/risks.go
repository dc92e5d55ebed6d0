package model

import (
	"math"

	"ramplan/press/risk"
	"ramplan/press/stack"
)

// chance is how parts and readings scatter.
type chance struct {
	contact *stack.Sum  // H0 and the errors of the position at which it is met
	window  risk.Window // of the plan, with the whole reading error
	bare    risk.Window // the same for samples, without the rows under the datum
}

const million64 = 1e6

// risks computes the shares of parts (model section 9, closed form). The risks of
// heights are about seated parts: where the nominal part stalls there are none.
func (w *work) risks() {
	if !w.r.Pressable() {
		return
	}
	c := &w.chance
	c.contact = stack.NewSum(append(w.parts.contact, w.positionError()...))
	drift := []stack.Term{w.drift()}
	c.window = risk.Window{Low: w.zone.first, High: w.zone.last, Empty: !w.zone.overlap, Error: stack.NewError(w.seated.sigma, drift)}
	c.bare = c.window
	if len(w.parts.read) > 0 {
		c.window.Error = stack.NewError(w.seated.sigma, append(drift, w.parts.read...))
	}
	all := risk.Population{
		Height: stack.NewSum(w.parts.product),
		Low:    w.p.Requirement.HeightLow,
		High:   w.p.Requirement.HeightHigh,
		Base:   w.seated.base + w.parts.aside,
	}
	if len(w.parts.beside) > 0 {
		all.Beside = stack.NewSum(w.parts.beside)
		all.Whole = stack.NewSum(append(w.parts.product, w.parts.beside...))
	}
	w.r.Risk = Risk{
		ConformingShare: all.Conforming(),
		EarlyContactPPM: million64 * c.contact.Above(w.p.Station.Nest-w.zone.a),
	}
	if w.zone.known && !w.seated.stalled {
		consumer, producer := all.Global(c.window)
		w.r.Risk.ConsumerPPM, w.r.Risk.ProducerPPM = ptr(million64*consumer), ptr(million64*producer)
	}
}

// positionError is what moves the whole ram against the parts, whatever the force.
func (w *work) positionError() []stack.Term {
	normal := math.Hypot(w.p.Ram.Repeatability/2, w.p.Station.ReferenceUncertainty/2)
	return []stack.Term{w.drift(), {Row: stack.Row{Half: normal, Shape: stack.Normal, Sigmas: 1}, Times: 1}}
}

// positionDoubt is the expanded uncertainty of a position at no force, U_p, mm.
func (w *work) positionDoubt() float64 {
	return 2 * stack.Add(w.positionError()).SD
}

// samples finds the heights of the limit samples (model section 11).
func (w *work) samples() {
	if !w.zone.overlap {
		return
	}
	p := w.p.Faults.SampleProbability
	l := w.chance.bare.Limits(p)
	s := &Samples{Probability: p, Long: w.seated.base - l.Low, Short: w.seated.base - l.High}
	if l.HasGood {
		s.TallestGood, s.ShortestGood = ptr(w.seated.base-l.GoodLow), ptr(w.seated.base-l.GoodHigh)
	}
	w.r.Samples = s
}

// Accepted gives the share of all parts that both signals accept: what is within the
// drawing less what of it is refused, and what is accepted besides. Not known where
// the risks are not.
func (r *Risk) Accepted() (share float64, known bool) {
	if r.ConsumerPPM == nil || r.ProducerPPM == nil {
		return 0, false
	}
	return min(1, max(0, r.ConformingShare+(*r.ConsumerPPM-*r.ProducerPPM)/million64)), true
}
