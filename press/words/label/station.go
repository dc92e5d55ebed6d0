package label

import (
	"ramplan/press/words"
)

func (say Words) LampsSayGoodWrongly() string { return "The lamps say good: it is not" }

func (say Words) BeforeThePush() string { return "Before the push" }

func (say Words) PoseText(time float64, at string, phase string) string {
	return say.Seconds(time) + ", at " + at + ": " + phase + "."
}

func (say Words) PoseLamps(arrival string, zone string) string {
	return " Arrival " + arrival + ", zone " + zone + "."
}

func (say Words) StationTitle(name string) string { return "The station with: " + name }

func (say Words) StationPose(phase string, at string, time float64) string {
	return phase + ": the ram stands at " + at + ", " + say.Seconds(time) + " after the start."
}

func (say Words) LampsUnknown() string { return "What the lamps show is not known." }

func (say Words) LampsText(arrival string, zone string) string {
	return "Arrival " + arrival + ", zone " + zone + "."
}

func (say Words) SetAndRequired(pos words.Positions, zoneStart float64, zoneEnd float64, end float64, from float64, to float64) string {
	return "Zone " + pos.Bare(zoneStart) + " to " + pos.At(zoneEnd) + ", push end " + pos.At(end) + ". Required by the drawing: " + pos.Bare(from) + " to " + pos.At(to) + "."
}
