package proving

import "time"

// Holds gives the first and the last day of the days round the one asked on which the state
// of a station is the same, as long as no study comes and the plan stays: a study comes to
// count on the day on which it was taken, and ends a year later.
func Holds(studies []*Study, on string) (first, last string) {
	first, last = "0000-01-01", "9999-12-31"
	turn := func(day time.Time) { // something is another from this day on
		if at := day.Format(time.DateOnly); at <= on {
			first = max(first, at)
		} else {
			last = min(last, day.AddDate(0, 0, -1).Format(time.DateOnly))
		}
	}
	for _, s := range studies {
		turn(theDay(s.TakenAt))
		if s.Kind != Event {
			turn(theDay(s.TakenAt).AddDate(0, 0, keepsFor+1))
		}
	}
	return first, last
}
