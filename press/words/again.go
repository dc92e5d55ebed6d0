package words

import "strings"

// Again is why somebody has to take an exam, for the first time or again.
type Again struct {
	TypedIn bool   // what there is was typed in from a code
	Failed  bool   // the last exam on a state that counts was not passed
	Passed  bool   // an exam was passed, on a state that does not count any more
	On      string // letter of the revision of that record; empty for a draft
	Became  string // letter of the revision that the draft became; empty where it became none
	Since   string // letter of the revision whose change concerns the drill; empty where nothing was issued
	Told    bool   // its planner said so; else nobody said anything, and then it does
	Reason  string // for its change, as it was signed
}

// String says it in short sentences.
func (a Again) String() string {
	switch {
	case a.TypedIn:
		return "The record was typed in from a code, and nobody watched that exam: one is to be taken here."
	case a.Failed:
		return "Did not pass the last exam on " + a.on() + ", which counts."
	case !a.Passed:
		return "Has not passed it here yet."
	case a.Since == "":
		return "Passed on " + a.on() + ". The draft was changed since, and nothing was issued yet."
	}
	s := "Passed on " + a.on() + ". " + a.Since
	if a.Told {
		s += " changed the drill."
	} else {
		s += " was issued since, and nobody said that its drill is the same."
	}
	if reason := strings.TrimSuffix(strings.TrimSpace(a.Reason), "."); reason != "" {
		s += " Reason for " + a.Since + ": " + reason + "."
	}
	return s
}

// on names the state of the plan that the exam was about.
func (a Again) on() string {
	switch {
	case a.On != "":
		return a.On
	case a.Became != "":
		return "the draft that became " + a.Became
	}
	return "a draft"
}
