package proving

import "time"

// When something is due. Common practice, no source: a plan says in words when its shift is
// checked, so a day is taken for the longest time between two checks.
const (
	SoonDays  = 30 // before a station stops being proved its studies are due again
	CheckEach = 24 * time.Hour
)

// A Due is what a station at work lacks, or will lack soon.
type Due struct {
	Soon        bool // it is proved for SoonDays more at most
	Days        int  // so many, the day asked not counted
	CheckFailed bool // the last shift check did
	CheckOld    bool // the last shift check was longer ago than CheckEach
	NoCheck     bool // it is proved, and there is no shift check of the newest revision
}

// Any tells whether something is due.
func (d Due) Any() bool { return d.Soon || d.CheckFailed || d.CheckOld || d.NoCheck }

// DueOf tells what is due at a station, by its state, the last day on which it is proved, and
// its last shift check of the newest revision, with a zero time where there was none.
func DueOf(state, until string, checked time.Time, passed Answer, now time.Time) Due {
	d := Due{CheckFailed: !checked.IsZero() && passed == Fail}
	if !checked.IsZero() && !d.CheckFailed {
		d.CheckOld = now.Sub(checked) > CheckEach
	}
	if state != StateProved || until == "" {
		return d
	}
	d.NoCheck = checked.IsZero()
	today := theDay(now.UTC().Format(time.DateOnly))
	d.Days = int(theDay(until).Sub(today).Hours() / 24)
	d.Soon = d.Days <= SoonDays
	return d
}
