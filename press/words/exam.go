package words

import "strings"

// An Outcome is what an exam came to.
type Outcome struct {
	Passed, Draft bool // Draft: on a draft that is no revision yet
	Below         bool // the score is below the mark
	OverTime      bool
	Grave         []string // what failed it whatever the score
}

// String says it, with every reason.
func (o Outcome) String() string {
	switch {
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
	if why = append(why, o.Grave...); len(why) == 0 {
		return "Not passed"
	}
	return "Not passed: " + strings.Join(why, "; ")
}

// AloneFails marks an answer that fails an exam whatever else was right.
const AloneFails = "this alone fails"

// SetOf says of the questions of an exam who had been given them before; empty for a
// set that was new to everybody.
func SetOf(repeat, known bool) string {
	switch {
	case repeat:
		return "repeat of a seen set"
	case known:
		return "a set given before to another person"
	}
	return ""
}
