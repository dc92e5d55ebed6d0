package words

import "strings"

// Again is why somebody has to take an exam again.
type Again struct {
	TypedIn bool   // what there is was typed in from a code
	Failed  bool   // the last exam on a state that counts was not passed
	Passed  bool   // an exam was passed, on a state that does not count any more
	On      string // letter of the revision of that record; empty for a draft
	Since   string // letter of the revision whose change concerns the drill; empty where nothing was issued
	Told    bool   // its planner said so; else nobody said anything, and then it does
	Reason  string // for its change, as it was signed
}

// String says it in one or two sentences.
func (a Again) String() string {
	on := "a draft"
	if a.On != "" {
		on = "revision " + a.On
	}
	switch {
	case a.TypedIn:
		return "The record was typed in from a code, and nobody watched that exam: one is to be taken here."
	case a.Failed:
		return "The last exam on a state that counts, " + on + ", was not passed."
	case !a.Passed:
		return "The exam was not passed here yet."
	case a.Since == "":
		return "Passed on " + on + ". The draft was changed since, and nothing was issued yet."
	}
	s := "Passed on " + on + ". Revision " + a.Since
	if a.Told {
		s += " concerns the drill, as its planner said when it was issued"
	} else {
		s += " was issued since. Nobody said whether it concerns the drill, so it does"
	}
	if reason := strings.TrimSuffix(strings.TrimSpace(a.Reason), "."); reason != "" {
		s += ". Reason for that change: " + reason
	}
	return s + "."
}
