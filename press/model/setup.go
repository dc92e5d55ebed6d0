package model

import "math"

// NestPush is what the ram does on an empty nest, or on a load cell, at one setting:
// its push, N, and where it comes to rest on the nest.
type NestPush struct {
	Setting            float64 // %
	Low, Typical, High float64 // N
	Reading            float64 // mm, on the empty nest, typically
	Within             float64 // mm, ± two standard deviations of that reading
}

// PushAt tells what the ram does on an empty nest at a settable setting.
func (r *Outcome) PushAt(setting float64) NestPush {
	w := r.inside()
	f := w.force.at(setting)
	sigma := w.p.readingError(f)
	return NestPush{
		Setting: setting, Low: f.low(), Typical: f.typical, High: f.high(),
		Reading: w.p.Station.Nest + w.p.Station.under(f.typical),
		Within:  2 * math.Sqrt(square(sigma)+square(w.p.Station.NestDrift)/3),
	}
}

// A NestStop is what the signals say where the empty nest itself stops the ram before
// the push ends: a move that merely ends is then not told from one that was stopped.
type NestStop struct {
	Reading float64 // mm
	Zone    bool    // the zone signal is on there
}

// NestStops tells whether it does; false as well where the signals are not known.
func (r *Outcome) NestStops() (NestStop, bool) {
	w := r.work
	if w == nil || !w.zone.known { // a result that nothing was evaluated for knows no nest
		return NestStop{}, false
	}
	at := w.emptyNest()
	if w.zone.at.Early(at) || !w.zone.at.Arrives(at) {
		return NestStop{}, false
	}
	return NestStop{at, w.zone.at.InZone(at)}, true
}

// PastNest tells whether the ram never comes to a reading, because the nest itself stops it
// before.
func (r *Outcome) PastNest(reading float64) bool {
	stop, stops := r.NestStops()
	return stops && reading > stop.Reading+slack
}

// emptyNest is where the ram comes to rest on the nest alone at the setting in force.
func (w *work) emptyNest() float64 { return w.p.Station.Nest + w.p.Station.under(w.force.now.typical) }

// Rising are the settings at which a push is proved one after the other: the least
// settable one at which even a weak ram pushes, one halfway, and the setting in
// force.
func (r *Outcome) Rising() []float64 {
	w, to := r.inside(), r.Force.Setting
	all := w.p.Ram.steps()
	k := all.first
	for k < all.last && all.at(k) < to && w.force.at(all.at(k)).low() <= 0 {
		k++
	}
	least := all.at(k)
	if least >= to {
		return []float64{to}
	}
	if half := all.at(math.Round((least + to) / 2 / w.p.Ram.SettingStep)); half > least && half < to {
		return []float64{least, half, to}
	}
	return []float64{least, to}
}

// MeanWithin is by how much the mean reading of so many good parts may lie off the
// expected one, ± mm, two standard deviations: the error of a reading, and what is
// left of the spread of the parts. The error is taken whole: how much of it goes
// from part to part is not known.
func (r *Outcome) MeanWithin(parts int) float64 {
	return 2 * math.Sqrt(square(r.Window.Uncertainty)+square(r.Stack.Seat.SD)/float64(parts))
}
