package proving

import (
	"fmt"
	"time"
)

// keepsFor is how long a study counts, days.
const keepsFor = 365

// moments are the first and the last moment at which something written so may have been: a
// bare day is any moment of it, in UTC.
func moments(at string) (first, last time.Time) {
	if t, err := time.Parse(time.RFC3339, at); err == nil {
		return t, t
	}
	t := theDay(at)
	return t, t.AddDate(0, 0, 1).Add(-time.Nanosecond)
}

// dayOf is the day of a moment, as it is written: where the station stands.
func dayOf(at string) string { return at[:min(len(at), len(time.DateOnly))] }

// theDay reads a day. What is none got past a reader.
func theDay(s string) time.Time {
	t, err := time.Parse(time.DateOnly, dayOf(s))
	if err != nil {
		panic(fmt.Sprintf("proving: no day: %q", s))
	}
	return t
}

// keepsUntil is the last day on which a study counts.
func keepsUntil(s *Study) string {
	return theDay(s.TakenAt).AddDate(0, 0, keepsFor).Format(time.DateOnly)
}
