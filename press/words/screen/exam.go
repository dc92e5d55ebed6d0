package screen

import (
	"strconv"

	"ramplan/press/words"
)

func (say Words) DraftBeforeIssue() string {
	return "The draft: nothing was issued yet, so these figures may still change."
}

func (say Words) DraftBesideIssued(from string) string {
	return "The draft. The station runs by what was issued last, revision " + from + "."
}

func (say Words) LastIssued(letter string) string {
	return "Revision " + letter + ", the last that was issued."
}

func (say Words) LastIssuedSuperseded(letter string, from string) string {
	return "Revision " + letter + ", " + say.SupersededBy(from, "") + ", the last that was issued."
}

func (say Words) SeedNeeded() string {
	return "A seed is a whole number. Leave it empty for questions that nobody has seen."
}

func (say Words) WholeNumberNeeded(low float64, high float64, unit string) string {
	return "A whole number from " + words.Trimmed(low, 0) + " to " + words.Trimmed(high, 0) + " " + unit + " is needed."
}

func (say Words) GoOn() string { return "Go on" }

func (say Words) LookAtTheAnswers() string { return "Look at the answers" }

func (say Words) TimeEnded(until string) string {
	return "The time ended at " + until + ": what is handed in now does not pass."
}

func (say Words) NothingAnsweredYet() string { return "Nothing answered yet" }

func (say Words) UnansweredWouldMiss(counted string) string {
	return "Not handed in yet: " + counted + " no answer, and would count as missed. The time runs on."
}

func (say Words) InThe(toLower string) string { return "in the " + toLower }

func (say Words) PeopleNotPassed(n int) string {
	return strconv.Itoa(n) + " people have not passed on the state of this plan that counts now"
}

func (say Words) OneNotPassed() string {
	return "1 person has not passed on the state of this plan that counts now"
}
