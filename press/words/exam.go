package words

import (
	"strings"
	"time"
)

// An Outcome is what an exam came to.
type Outcome struct {
	Passed, Draft bool // Draft: on a draft that is no revision yet
	Below         bool // the score is below the mark
	OverTime      bool
	Unfinished    bool     // it was begun and left
	Grave         []string // what was answered that failed it whatever the score
}

// String says it, with every reason.
func (o Outcome) String() string {
	switch {
	case o.Unfinished:
		return "Not finished"
	case o.Passed && o.Draft:
		return "Passed on a draft"
	case o.Passed:
		return "Passed"
	}
	var why []string
	if o.Below {
		why = append(why, "the score is below the mark")
	}
	if o.OverTime {
		why = append(why, "over the time")
	}
	for i, s := range AllAnswered(o.Grave) {
		if i > 0 {
			s = strings.TrimPrefix(s, "answered ") // one sentence
		}
		why = append(why, s)
	}
	if len(why) == 0 {
		return "Not passed"
	}
	return "Not passed: " + strings.Join(why, "; ")
}

// answered is what records of older programs call a deed: nobody did it, it was answered.
var answered = map[string]string{
	"a refused part was passed on":                               "answered that a refused part may be passed on",
	"a part was pressed again that must not be":                  "answered that a part may be pressed again that must not be",
	"work went on after a fault":                                 "answered that work may go on after a fault",
	"work went on after several refused parts in a row":          "answered that work may go on after several refused parts in a row",
	"the setting or the zone was changed in answer to the lamps": "answered that the setting or the zone may be changed in answer to the lamps",
	"a hand was put into the work space":                         "answered that a hand may be put into the work space",
}

// AllAnswered says of answers that failed an exam alone that they were answers, also
// where a record of an older program words them as deeds.
func AllAnswered(grave []string) []string {
	out := make([]string, len(grave))
	for i, s := range grave {
		if out[i] = s; answered[s] != "" {
			out[i] = answered[s]
		}
	}
	return out
}

// ExamOf names the exam of a role; that of older programs, which nobody is named for,
// asked everything.
func (say Printer) ExamOf(role string) string {
	switch role {
	case "technician":
		return "Technician's exam"
	case "setter":
		return "Setter's exam"
	case practice:
		return "Practice round"
	}
	return "Exam of everything"
}

// ExamAsks says what the exam of a role is about.
func (say Printer) ExamAsks(role string) string {
	switch role {
	case "technician":
		return "For who works at the station: what the lamps mean, what to do, and hands."
	case "setter":
		return "For who sets it up, as well: zones, what to check, what the lamps will show or not find, and hands."
	}
	return "Everything."
}

// NotFinished says of an exam that was begun and left how much of it had an answer.
func (say Printer) NotFinished(answered, items string) string {
	return answered + " of " + items + " answered, nothing judged"
}

// TimeOver says of an exam that was not handed in when its time ended what still can be
// done with it, and until when.
func (say Printer) TimeOver(leftFrom time.Time) string {
	return "The time is over: it cannot be passed any more. Handed in by " + leftFrom.Local().Format("15:04") + " it is judged, as over the time; after that it counts as not finished."
}

// YourAnswer and RightAnswer mark choices after an answer.
const (
	YourAnswer  = "your answer"
	RightAnswer = "right"
)

// AloneFails marks an answer that fails an exam whatever else was right.
const AloneFails = "this alone fails"

// SetOf says of the questions of an exam who had been given them before; empty for a
// set that was new to everybody.
func (say Printer) SetOf(repeat, known bool) string {
	switch {
	case repeat:
		return "repeat of a seen set"
	case known:
		return "a set given before to another person"
	}
	return ""
}
