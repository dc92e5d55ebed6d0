package screen

import (
	"ramplan/press/words"
)

func (say Words) FaultsRamplan() string { return "Faults · ramplan" }

func (say Words) FaultsOfRamplan(name string) string { return "Faults of " + name + " · ramplan" }

func (say Words) MarkedJudgedRightlyLessThan(counted string, sampleProbability float64) string {
	return "Marked: " + counted + " judged rightly less than " + say.TargetShare(sampleProbability) + " of the time."
}

func (say Words) TheEntriesAreNoSound(text string) string {
	return "The entries are no sound plan yet: " + text
}

func (say Words) ThisPageShowsTheLast() string {
	return " This page shows the last state that was one."
}

func (say Words) ThereIsNoCatalogueBefore() string {
	return " There is no catalogue before they are one."
}

func (say Words) TheSmallStripsAllTo(pos words.Positions, from float64, to float64) string {
	return "The small strips, all to one scale: the ram as it rests, a diamond where it reads; under it the readings of parts that are too tall, good (" +
		pos.Bare(from) + " to " + pos.At(to) + ") and too short"
}

func (say Words) ThenTheZoneTo(pos words.Positions, from float64, to float64) string {
	return ", then the zone (" + pos.Bare(from) + " to " + pos.At(to) + ")"
}

func (say Words) TheHatchedStopIsThe(pos words.Positions, e float64) string {
	return "; the hatched stop is the push end (" + pos.At(e) + ")"
}

func (say Words) RefuseItAtTheFirst() string {
	return "Refuse it at the first look: arrival off, no press."
}

func (say Words) TheDrawingAsksForTo(pos words.Positions, heightLow float64, heightHigh float64) string {
	return "The drawing asks for " + pos.Bare(heightLow) + " to " + pos.At(heightHigh) + "."
}

func (say Words) RefuseItNotBothSignals() string { return "Refuse it: not both signals on." }

func (say Words) NoHeightIsAcceptedAs() string { return "No height is accepted as surely as that." }

func (say Words) ItCannotBePressed() string { return "It cannot be pressed." }

func (say Words) AcceptItBothSignalsOn() string { return "Accept it: both signals on." }
