package model

import "ramplan/press/risk"

// MasterWithin is by how much the reading of a master of the nominal height may lie off
// the expected one, ± mm: the expanded uncertainty of a reading.
func (r *Outcome) MasterWithin() float64 { return 2 * r.Window.Uncertainty }

// WearFound is how surely a nest that is worn as deep as the plan says shows when a
// master of the nominal height is pressed once, and must give both signals and read
// from low to high, mm. It is over the same errors of a reading as the detection of the
// fault catalogue, and false where no verdict is known or no wear is asked about.
func (r *Outcome) WearFound(low, high float64) (share float64, ok bool) {
	w := r.inside()
	p := w.p
	if p.Faults.NestWear <= 0 || !w.withRisk || !w.zone.overlap {
		return 0, false
	}
	check := risk.Window{Low: max(low, w.zone.first), High: min(high, w.zone.last), Error: w.chance.window.Error}
	check.Empty = check.Low > check.High
	return 1 - check.Accept(w.seated.nominal+p.Faults.NestWear), true
}

// SampleRange is from where to where a limit sample of a plan may be made so that it
// says something: at its limit, and no further off it than a reading is uncertain.
// A sample far outside is judged rightly by any station.
type SampleRange struct {
	From, To float64 // mm above the datum, From ≤ To
}

// sampleLeast is the least width of such a range, mm: nobody makes one finer.
const sampleLeast = 0.01

// SampleRanges are the ranges of the limit samples. Tall and Short are refused, the
// other two, nil where no height is accepted so surely, are accepted.
type SampleRanges struct {
	Tall, Short               SampleRange
	TallestGood, ShortestGood *SampleRange
}

// SampleRanges gives them; false for a result without limit samples. Where a tall one
// would be met in the approach the range ends before it; it may be empty then.
func (r *Outcome) SampleRanges() (SampleRanges, bool) {
	s := r.Samples
	if s == nil {
		return SampleRanges{}, false
	}
	width := max(r.MasterWithin(), sampleLeast)
	out := SampleRanges{Tall: SampleRange{s.Long, s.Long + width}, Short: SampleRange{s.Short - width, s.Short}}
	// A sample is met at its full height, at no force.
	most := r.inside().p.Station.Nest - r.inside().parts.under.Mean - r.Travel.ApproachEnd - r.MasterWithin()
	out.Tall.To = min(out.Tall.To, most)
	if s.TallestGood != nil && s.ShortestGood != nil {
		middle := (*s.TallestGood + *s.ShortestGood) / 2
		out.TallestGood = &SampleRange{max(middle, *s.TallestGood-width), *s.TallestGood}
		out.ShortestGood = &SampleRange{*s.ShortestGood, min(middle, *s.ShortestGood+width)}
	}
	return out, true
}
