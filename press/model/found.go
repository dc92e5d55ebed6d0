package model

import (
	"math"

	"ramplan/press/risk"
	"ramplan/press/stack"
)

// A FoundError is what the readings of a station were found to do, in place of what the plan
// says of them.
type FoundError struct {
	Bias float64 // mm, by which every reading lies off the planned one
	SD   float64 // mm, the normal part of the error; the nest's drift and the datum rows stay
}

// AsFound is the promise of a plan computed again for a station as it was found.
type AsFound struct {
	ConsumerPPM *float64 // wrong heights accepted; nil where the nominal part stalls
	ProducerPPM *float64 // right heights refused; likewise
	Samples     Samples
}

// AsFound computes the risks of all parts (model section 9) and the limit samples (section
// 11) with the error that the station was found to have, the window as set. It is false
// where nothing is accepted.
func (r *Outcome) AsFound(e FoundError) (AsFound, bool) {
	w := r.inside()
	if !w.zone.known || !w.zone.overlap || !w.parts.pressable() {
		return AsFound{}, false
	}
	drift := w.p.Station.drift()
	c := chance{bare: w.readWith(stack.NewError(e.SD, []stack.Term{drift}))}
	out := AsFound{Samples: *c.samples(w.p.Faults.SampleProbability, w.seated.base+e.Bias)}
	if !w.seated.stalled {
		all := w.p.population(&w.parts, &w.seated)
		all.Base += e.Bias
		consumer, producer := all.Global(w.readWith(stack.NewError(e.SD, append([]stack.Term{drift}, w.parts.read...))))
		out.ConsumerPPM, out.ProducerPPM = ptr(million64*consumer), ptr(million64*producer)
	}
	return out, true
}

// SampleWindow is the window in which a sample is accepted whose height is known to
// within ± doubt, mm, of two standard deviations: the error of a reading is without the rows
// under the datum, which a sample brings along. It is false where nothing is accepted.
func (r *Outcome) SampleWindow(doubt float64) (risk.Window, bool) {
	w := r.inside()
	if !w.zone.known || !w.zone.overlap || !w.parts.pressable() {
		return risk.Window{}, false
	}
	return w.readWith(stack.NewError(math.Hypot(w.seated.sigma, doubt/2), []stack.Term{w.p.Station.drift()})), true
}

// SampleError is the standard deviation of the error of one reading of a sample, mm, without
// the rows under the datum.
func (r *Outcome) SampleError() float64 {
	w := r.inside()
	return math.Sqrt(square(w.seated.sigma) + square(w.p.Station.NestDrift)/3)
}

// readWith is the window as set, read with an error of another kind.
func (w *work) readWith(e *stack.Sum) risk.Window {
	return risk.Window{Low: w.zone.first, High: w.zone.last, Error: e}
}

// Heights are the mean and the standard deviation of the heights of all parts above the
// datum, mm.
func (r *Outcome) Heights() (mean, sd float64) {
	q := &r.inside().parts
	product, beside := stack.Add(q.product), stack.Add(q.beside)
	return product.Mean + beside.Mean, math.Hypot(product.SD, beside.SD)
}

// ReadingSD is the standard deviation of the readings of all parts, mm: of their heights and
// of the error of a reading, at the plan's own setting; of any plan, also of one in which
// nothing can be pressed.
func (r *Outcome) ReadingSD() float64 {
	w := r.inside()
	_, sd := r.Heights()
	u := math.Sqrt(square(w.p.readingError(w.force.now)) + square(w.p.Station.NestDrift)/3 + square(w.parts.under.SD))
	return math.Hypot(sd, u)
}

// WithoutInsert is where the ram would come to rest when the insert is missing, mm, at the
// plan's own setting; nowhere where nothing is known to stop it.
func (r *Outcome) WithoutInsert() (reading float64, nowhere bool) {
	m := r.inside().withoutInsert()
	return m.Reading, m.Nowhere
}

// Base is the reading of a part of no height above the datum, mm, at the plan's own setting:
// of any plan, also of one in which nothing can be pressed.
func (r *Outcome) Base() float64 {
	w := r.inside()
	return w.p.Station.Nest - w.parts.under.Mean + w.seated.deflection
}
