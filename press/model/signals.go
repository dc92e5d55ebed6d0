package model

import "ramplan/press/verdict"

// Signals are the positions that make the two signals of a plan.
type Signals = verdict.Signals

// Signals gives the positions that make the signals. It is false where the push
// end or an end of the zone is not known. A changed copy of the answer tells what
// another zone would say.
func (r *Outcome) Signals() (Signals, bool) {
	z, e := r.Window.Zone, r.Travel.PushEnd
	if r.Verdict == nil || z == nil || z[0] == nil || z[1] == nil || e == nil {
		return Signals{}, false
	}
	return Signals{Start: r.Travel.ApproachEnd, End: *e, ZoneStart: *z[0], ZoneEnd: *z[1]}, true
}

// ReadingOf gives the reading of a part of a height above the datum, mm: without
// error, at the plan's own setting.
func (r *Outcome) ReadingOf(height float64) float64 {
	return r.Window.GoodRange[1] + r.inside().p.Requirement.HeightLow - height
}

// Datum gives the mean height of the datum above the nest, mm, and whether any row makes
// one up; without such a row the nest itself is the datum.
func (r *Outcome) Datum() (height float64, rows bool) {
	p := &r.inside().parts
	return p.under.Mean, len(p.read)+len(p.beside) > 0
}

// HeightOf gives the height above the datum of the part that stops the ram at a
// reading, mm: the way back of [Outcome.ReadingOf].
func (r *Outcome) HeightOf(reading float64) float64 {
	return r.Window.GoodRange[1] + r.inside().p.Requirement.HeightLow - reading
}

// Word is the drawing's word for a reading: a low reading is a tall part.
func (w *Readings) Word(reading float64) string {
	switch {
	case reading < w.GoodRange[0]:
		return Long
	case reading > w.GoodRange[1]:
		return Short
	}
	return Good
}

// Nominal is the reading of the nominal part, stalled or seated, mm. It lies past
// the push end where the ram does not get so far.
func (r *Outcome) Nominal() float64 {
	for i := range r.Faults {
		if f := &r.Faults[i]; f.Name == RowNominal && !f.Own && f.Reading != nil {
			return *f.Reading
		}
	}
	return r.Travel.SeatReading
}
