package screen

import (
	"ramplan/press/words"
)

func (say Words) FaultsTitle() string { return "Faults · ramplan" }

func (say Words) FaultsOfTitle(name string) string { return "Faults of " + name + " · ramplan" }

func (say Words) MarkedSamples(counted string, sampleProbability float64) string {
	return "Marked: " + counted + " judged rightly less than " + say.TargetShare(sampleProbability) + " of the time."
}

func (say Words) EntriesUnsound(text string) string {
	return "The entries are no sound plan yet: " + text
}

func (say Words) ShowsLastSound() string {
	return " This page shows the last state that was one."
}

func (say Words) NoCatalogueYet() string {
	return " There is no catalogue before they are one."
}

func (say Words) SmallStripsLegend(pos words.Positions, from float64, to float64) string {
	return "The small strips, all to one scale: the ram as it rests, a diamond where it reads; under it the readings of parts that are too tall, good (" +
		pos.Bare(from) + " to " + pos.At(to) + ") and too short"
}

func (say Words) SmallStripsZone(pos words.Positions, from float64, to float64) string {
	return ", then the zone (" + pos.Bare(from) + " to " + pos.At(to) + ")"
}

func (say Words) SmallStripsPushEnd(pos words.Positions, e float64) string {
	return "; the hatched stop is the push end (" + pos.At(e) + ")"
}

func (say Words) RefuseAtFirstLook() string {
	return "Refuse it at the first look: arrival off, no press."
}

func (say Words) DrawingAsksFor(pos words.Positions, heightLow float64, heightHigh float64) string {
	return "The drawing asks for " + pos.Bare(heightLow) + " to " + pos.At(heightHigh) + "."
}

func (say Words) RefuseIt() string { return "Refuse it: not both signals on." }

func (say Words) NoHeightSoSurely() string { return "No height is accepted as surely as that." }

func (say Words) CannotBePressed() string { return "It cannot be pressed." }

func (say Words) AcceptIt() string { return "Accept it: both signals on." }
