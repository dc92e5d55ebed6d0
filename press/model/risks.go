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
func (in *Input) risks(q *parts, s *reading, z *signals) (chance, Risk) {
	var c chance
	if !q.pressable() {
		return c, Risk{}
	}
	c.contact = stack.NewSum(append(q.contact, in.positionError()...))
	drift := []stack.Term{in.Station.drift()}
	c.window = risk.Window{Low: z.first, High: z.last, Empty: !z.overlap, Error: stack.NewError(s.sigma, drift)}
	c.bare = c.window
	if len(q.read) > 0 {
		c.window.Error = in.wholeError(q, s)
	}
	all := in.population(q, s)
	r := Risk{
		ConformingShare: all.Conforming(),
		EarlyContactPPM: million64 * c.contact.Above(in.Station.Nest-z.a),
	}
	if z.known && !s.stalled {
		consumer, producer := all.Global(c.window)
		r.ConsumerPPM, r.ProducerPPM = ptr(million64*consumer), ptr(million64*producer)
	}
	return c, r
}

// wholeError is the error of a reading with the rows under the datum.
func (in *Input) wholeError(q *parts, s *reading) *stack.Sum {
	return stack.NewError(s.sigma, append([]stack.Term{in.Station.drift()}, q.read...))
}

// population is every part that the process makes, as it is read at a setting.
func (in *Input) population(q *parts, s *reading) risk.Population {
	all := risk.Population{
		Height: stack.NewSum(q.product),
		Low:    in.Requirement.HeightLow,
		High:   in.Requirement.HeightHigh,
		Base:   s.base + q.aside,
	}
	if len(q.beside) > 0 {
		all.Beside = stack.NewSum(q.beside)
		all.Whole = stack.NewSum(append(q.product, q.beside...))
	}
	return all
}

// positionError is what moves the whole ram against the parts, whatever the force.
func (in *Input) positionError() []stack.Term {
	normal := math.Hypot(in.Ram.Repeatability/2, in.Station.ReferenceUncertainty/2)
	return []stack.Term{in.Station.drift(), {Row: stack.Row{Half: normal, Shape: stack.Normal, Sigmas: 1}, Times: 1}}
}

// positionDoubt is the expanded uncertainty of a position at no force, U_p, mm.
func (in *Input) positionDoubt() float64 {
	return 2 * stack.Add(in.positionError()).SD
}

// samples finds the heights of the limit samples (model section 11) for a probability;
// the base is the reading of a part of no height; nil where nothing is accepted.
func (c *chance) samples(p, base float64) *Samples {
	if c.bare.Error == nil || c.bare.Empty {
		return nil
	}
	l := c.bare.Limits(p)
	s := &Samples{Probability: p, Long: base - l.Low, Short: base - l.High}
	if l.HasGood {
		s.TallestGood, s.ShortestGood = ptr(base-l.GoodLow), ptr(base-l.GoodHigh)
	}
	return s
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
