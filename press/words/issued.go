package words

import (
	"strings"
	"time"
)

// Standing says in a few words what a draft is to the last issued revision, of
// which it is the same plan or not; the letter is empty before the first.
func (say Printer) Standing(letter string, same bool) string {
	switch {
	case letter == "":
		return "Draft, nothing issued"
	case same:
		return "Revision " + letter
	}
	return "Draft after revision " + letter
}

// StandingOld is what a draft is that makes the plan of an earlier revision again.
func (say Printer) StandingOld(same, last string) string {
	return "Draft, the plan of revision " + same + ", " + say.SupersededBy(last, "")
}

// SupersededBy says of a revision that a newer one was issued; day is that of its
// issue, and may be empty.
func (say Printer) SupersededBy(letter, day string) string {
	s := "superseded by revision " + letter
	if day != "" {
		s += ", issued " + day
	}
	return s
}

// DraftState says which state of a draft it is; it stands where nothing was changed since.
func (say Printer) DraftState(at time.Time, stands bool) string {
	s := "a draft state of " + say.When(at) + ", not issued"
	if stands {
		s += "; the draft stands so today"
	}
	return s
}

// AskedChanges says what changed since a revision of that which the drill asks about.
func (say Printer) AskedChanges(last string, changed []string, lamps bool) string {
	s := "Zone, push end, limits of the drawing, sizes of faults and own reactions are as in revision " + last + "."
	if len(changed) > 0 {
		s = "Changed since revision " + last + ", and asked about in the drill: " + strings.Join(changed, "; ") + "."
	}
	if lamps {
		return s + " The lamps mean something else than in revision " + last + ": the change concerns it."
	}
	return s + " The four pairs of lamps mean what they meant there. Is there anything else that people must know?"
}
