package training

import "time"

// An ID names a record; it is never given again.
type ID int64

// A PlanID names a plan in the archive that keeps the records; it is never given
// again, and is all that ties a record to its plan.
type PlanID int64

// A Record is that of an exam that somebody took. It is never changed;
// it stays when its plan is removed, and goes when its person's records are
// removed.
type Record struct {
	ID         ID
	Plan       PlanID    // its number in the archive
	Sitting    string    // of the exam: one is recorded once
	Who        string    // name or number, as entered
	At         time.Time // when it ended
	Name       string    // of the plan as it was then
	Number     string
	Revision   string // letter; empty for a draft
	Digest     string // of the plan in canonical form
	Exam       string // whose it was, such as technician; empty in records of older programs, of one exam of everything
	Seed       uint64
	Items      int
	Right      int
	Needed     int
	Pass       float64 // share of right answers that was asked for
	Limit      time.Duration
	Took       time.Duration
	OverTime   bool
	Passed     bool
	Grave      []string // what was answered that failed it whatever the score; worded as deeds in records of older programs, or none
	Unfinished bool     // it was begun and left: nothing of it was judged
	Answered   int      // of one that is not finished: how many questions had an answer
	Repeat     bool     // the same person had handed in this seed of this plan before
	Known      bool     // another person had been given this seed of this plan before, and this one had not
	Missed     []string // keys of the items
	Misses     []Miss   // the same in words, in that order; none in records of older programs
	Damaged    bool     // the document does not match its digest; only ID, Plan, Who, At and Revision are known
}

// A Miss is an item that was missed, in words: what was asked with its situation, what was
// answered and what is right; the last two are empty where they were not kept.
type Miss struct {
	Question string `json:"question"`
	Given    string `json:"given"`
	Right    string `json:"right"`
	Number   int    `json:"number,omitzero"` // of the question in the exam, from 1; 0 in records of older programs
	Alone    bool   `json:"alone,omitzero"`  // this answer failed the exam whatever the score
}
