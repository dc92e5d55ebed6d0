package training

import (
	"time"

	"ramplan/press"
)

// A Sitting is an exam under way: what is needed to ask its questions again after the
// program was started anew, and what was answered so far. It goes when it is handed in,
// or left, for the record that is kept then; and when its person's records are removed.
type Sitting struct {
	ID       string
	Plan     PlanID // its number in the archive
	Who      string // name or number, as records keep it
	Started  time.Time
	Revision string // letter; empty for a draft
	Document []byte // the plan in canonical form
	Exam     string // whose it is; empty: of older programs, of everything
	Seed     uint64
	Items    int // that were asked for
	Asks     int // that it has: a plan may have fewer
	Needed   int
	Pass     float64
	Limit    time.Duration
	Asked    string           // digest of the questions
	Given    map[string]Given // what was answered so far, by the keys of the items
	Heard    time.Time        // when that was kept; zero: nothing was
}

// Given is an answer as it was chosen or typed.
type Given struct {
	Choice string `json:"choice,omitzero"`
	From   string `json:"from,omitzero"` // the ends of a zone
	To     string `json:"to,omitzero"`
}

// An exam is left when nobody has handed it in so long after its time ended, or, where
// it has no limit, after it began.
const (
	LeftAfter     = time.Hour
	LeftUnlimited = 24 * time.Hour
)

// Left tells whether a sitting is left at a time.
func (s Sitting) Left(now time.Time) bool { return now.After(s.LeftFrom()) }

// LeftFrom is the time after which a sitting is left.
func (s Sitting) LeftFrom() time.Time {
	if s.Limit <= 0 {
		return s.Started.Add(LeftUnlimited)
	}
	return s.Started.Add(s.Limit + LeftAfter)
}

// LastHeard is when an answer was kept last; when the exam began, where none was.
func (s Sitting) LastHeard() time.Time {
	if s.Heard.IsZero() {
		return s.Started
	}
	return s.Heard
}

// LeftAt gives the record of a sitting that is not finished at a time. What was answered
// is not judged: nobody has handed it in.
func (s Sitting) LeftAt(at time.Time) Record {
	t := Record{
		Plan: s.Plan, Sitting: s.ID, Who: s.Who, At: at, Revision: s.Revision, Exam: s.Exam, Seed: s.Seed, Items: s.Asks, Needed: s.Needed, Pass: s.Pass,
		Limit: s.Limit, Took: at.Sub(s.Started), Unfinished: true, Answered: len(s.Given),
	}
	if t.Items == 0 {
		t.Items = s.Items // older programs kept no more
	}
	if plan, faults := press.Decode(s.Document); len(faults) == 0 {
		t.Name, t.Number, t.Digest = plan.Title.Name, plan.Title.Number, plan.Digest()
	}
	return t
}
