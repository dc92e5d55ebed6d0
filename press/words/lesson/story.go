package lesson

import (
	"ramplan/press/words"
)

func (say Words) MetInTheApproach(start float64, afterAStrike string) string {
	return "The tool meets the part in the fast approach, before the push begins at " + say.At(start) +
		". There the force is not limited, and nobody can say what the lamps show. Do not try it: the approach strikes the part. If it happens, stop, do not start again, and call the setter: " + afterAStrike
}

func (say Words) ArrivalStuck(arrival bool) string {
	return "The arrival signal is stuck " + words.OnOff(arrival) + ", whatever the ram does."
}

func (say Words) StoppedAt(at string, beforeEnd string) string {
	return "Something stops the ram at " + at + beforeEnd + ": arrival comes on."
}

func (say Words) NotStopped(end float64) string {
	return "Nothing stops the ram before the push end at " + say.At(end) + ": arrival stays off."
}

func (say Words) ZoneStuck(zone bool) string {
	return "The zone signal is stuck " + words.OnOff(zone) + ", wherever the ram stands."
}

func (say Words) WhichIsThePushEnd() string { return ", the push end" }

func (say Words) BeforeThePushEnd(end float64) string {
	return ", before the push end at " + say.At(end)
}

func (say Words) RestsAt(at string) string { return "The ram rests at " + at }

func (say Words) RestsThere() string { return "The ram rests there" }

func (say Words) RestsInsideZone(rests string, zoneStart float64, zoneEnd float64) string {
	return rests + ", inside the zone from " + say.Bare(zoneStart) + " to " + say.At(zoneEnd) + ": zone is on."
}

func (say Words) RestsBeforeZone(rests string, zoneStart float64) string {
	return rests + ", before the zone start at " + say.At(zoneStart) + ": zone is off."
}

func (say Words) RestsPastZone(rests string, zoneEnd float64) string {
	return rests + ", past the zone end at " + say.At(zoneEnd) + ": zone is off."
}

func (say Words) ArrivalIs(arrival bool) string { return "Arrival is " + words.OnOff(arrival) }

func (say Words) SinceStopped(end float64) string {
	return ": something stopped the ram, at the push end of " + say.At(end) + " or before"
}

func (say Words) SinceNotStopped(end float64) string {
	return ": nothing stopped the ram, so by plan it ran to the push end at " + say.At(end)
}

func (say Words) ZoneIs(zone bool) string { return ". Zone is " + words.OnOff(zone) }

func (say Words) SinceItStands(inside string) string { return ": the ram stands" + inside }

func (say Words) SinceItStandsNot(inside string) string { return ": the ram does not stand" + inside }

func (say Words) CannotBothBeTrue(side string) string {
	return " But the push end lies " + side + " the zone, so both cannot be true: a signal or a set value is wrong."
}

func (say Words) ArrivalIsNot(arrival bool, arrival2 bool) string {
	return "Arrival is " + words.OnOff(arrival) + ", not " + words.OnOff(arrival2) + "."
}

func (say Words) ZoneIsNot(zone bool, zone2 bool) string {
	return "Zone is " + words.OnOff(zone) + ", not " + words.OnOff(zone2) + "."
}
