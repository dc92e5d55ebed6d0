package press

import (
	"ramplan/press/risk"
	"ramplan/press/stack"
)

// chance is how parts and readings scatter.
type chance struct {
	contact *stack.Sum  // H0
	window  risk.Window // of the plan, with the whole reading error
	bare    risk.Window // the same for samples, without the rows under the datum
}

const million64 = 1e6

// risks computes the shares of parts (model section 9, closed form).
func (w *work) risks() {
	c := &w.chance
	c.contact = stack.NewSum(w.parts.contact)
	noise := make([]stack.Term, 0, 1+len(w.parts.datum))
	noise = append(noise, w.drift())
	c.window = risk.Window{Low: w.zone.first, High: w.zone.last, Empty: !w.zone.overlap, Error: stack.NewError(w.seated.sigma, noise)}
	c.bare = c.window
	if len(w.parts.datum) > 0 {
		c.window.Error = stack.NewError(w.seated.sigma, append(noise, w.parts.datum...))
	}
	all := risk.Population{
		Height: stack.NewSum(w.parts.product),
		Low:    w.p.Requirement.HeightLow,
		High:   w.p.Requirement.HeightHigh,
		Base:   w.seated.base,
	}
	w.r.Risk = Risk{
		ConformingShare: all.Conforming(),
		EarlyContactPPM: million64 * c.contact.Above(w.p.Station.Nest-w.zone.a),
	}
	if w.zone.known {
		consumer, producer := all.Global(c.window)
		w.r.Risk.ConsumerPPM, w.r.Risk.ProducerPPM = ptr(million64*consumer), ptr(million64*producer)
	}
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
