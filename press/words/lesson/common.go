package lesson

import "strings"

// EmptyPart is the rule for what was in the nest when there was no insert.
func (say Words) EmptyPart() string {
	return "A part into which nothing was pressed may go back only when somebody who is in charge has seen that it is empty and whole."
}

// PassOn is what happens to a good part.
func (say Words) PassOn() string { return "Pass it on." }

// BriefCaution stands where the cautions in full would answer what is asked.
func (say Words) BriefCaution() string {
	return "Never a hand in the work space. The lamps are no safety function."
}

// Common ends what rests on no figure of the plan.
func (say Words) Common() string { return " Common practice." }

// AnyOrder says before the answer what counts of a list that is common practice.
func (say Words) AnyOrder() string {
	return "Every check that belongs to these lamps is right. Their order does not count."
}

// OneFirst says it where one check comes before all others.
func (say Words) OneFirst() string {
	return "One of these comes before all the others: it stops the work, holds parts back, or can only be seen before the next push."
}

// MostLikely asks for what lamps most likely show, where the question asked for what they
// show: a reading near an edge may fall on either side of it.
func (say Words) MostLikely(question string) string {
	return strings.Replace(question, "What will the lamps show", "What will the lamps most likely show", 1)
}

// IsMeasure tells whether a check is that the height is measured.
func (say Words) IsMeasure(check string) bool { return strings.HasPrefix(check, "Measure its height") }
