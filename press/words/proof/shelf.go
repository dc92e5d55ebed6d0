package proof

import (
	"strings"
	"time"

	"ramplan/press/proving"
)

// CardState says on the card of a plan whether its newest revision is proved.
func (say Words) CardState(letter, state, until string) string {
	switch state {
	case proving.StateProved:
		return "Revision " + letter + " proved until " + until
	case proving.StateWithdrawn:
		return "Revision " + letter + " no longer proved: withdrawn"
	case proving.StateExpired:
		return "Revision " + letter + " no longer proved: expired"
	}
	return "Revision " + letter + " not proved"
}

// CardDamaged says that a study of the plan cannot be read, so that nothing is proved.
func (say Words) CardDamaged(letter string) string {
	return "Revision " + letter + " not proved: a stored study is damaged"
}

// CardDue says what is due at the station; empty where nothing is.
func (say Words) CardDue(d proving.Due, checked time.Time) string {
	var parts []string
	if d.Soon && d.Days == 0 {
		parts = append(parts, "prove the station again today")
	} else if d.Soon {
		parts = append(parts, "prove the station again within "+counted(d.Days, "day", "days"))
	}
	switch {
	case d.CheckFailed:
		parts = append(parts, "last shift check failed, "+say.When(checked))
	case d.CheckOld:
		parts = append(parts, "last shift check over a day old, "+say.When(checked))
	case d.NoCheck:
		parts = append(parts, "no shift check kept yet")
	}
	if len(parts) == 0 {
		return ""
	}
	return "Due: " + strings.Join(parts, "; ")
}

// CardChecked says when the last shift check passed and until when the next one is due; empty
// where it did not, or where it is due already.
func (say Words) CardChecked(d proving.Due, checked time.Time) string {
	if checked.IsZero() || d.CheckFailed || d.CheckOld {
		return ""
	}
	return "Last shift check passed, " + say.When(checked) + "; the next is due by " + say.When(checked.Add(proving.CheckEach))
}
