package proving

import (
	"math"
	"time"
)

// ByLimits gives rows of samples with the reading of those of some names held to limits of their own, mm
// to both sides of the predicted reading.
func ByLimits(rows []SampleRow, within float64, names ...string) []SampleRow {
	out := append([]SampleRow(nil), rows...)
	for i := range out {
		for _, n := range names {
			if out[i].Sample != n {
				continue
			}
			out[i].Allowed = &within
			if d := out[i].Difference; d != nil {
				reading := passes(math.Abs(*d) <= within+slack, Fail)
				out[i].Reading = &reading
			}
		}
	}
	return out
}

// LatestOf is the last moment at which an event may have been that was written down then: a
// bare day is any moment of it, but none after it was written.
func LatestOf(s *Study, written time.Time) time.Time {
	_, last := moments(s.TakenAt)
	if written.Before(last) {
		return written
	}
	return last
}
