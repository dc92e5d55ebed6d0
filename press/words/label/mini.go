package label

import (
	"ramplan/press/words"
)

func (say Words) RequiredReadingsTo(pos words.Positions, from float64, to float64) string {
	return "Required readings " + pos.Bare(from) + " to " + pos.At(to)
}

func (say Words) ZoneBetween(pos words.Positions, zoneStart float64, zoneEnd float64) string {
	return ", zone " + pos.Bare(zoneStart) + " to " + pos.At(zoneEnd)
}

func (say Words) PushEndAt(pos words.Positions, end float64) string {
	return ", push end " + pos.At(end)
}

func (say Words) MetInTheApproach() string { return "met in the approach" }

func (say Words) NoPushEndKnown() string { return "no push end known" }

func (say Words) NothingMet() string { return "nothing met" }

func (say Words) MetInTheApproachBefore(name string) string {
	return name + ": met in the approach, before the push begins"
}

func (say Words) RestUnknown(name string) string {
	return name + ": nobody knows where the ram comes to rest"
}

func (say Words) RestAt(name string, figure string) string {
	return name + ": the ram comes to rest at " + words.Unit(figure, "mm")
}

func (say Words) MeetsNothing(name string, pos words.Positions, at float64) string {
	return name + ": the ram meets nothing and stops at the push end, " + pos.At(at)
}
