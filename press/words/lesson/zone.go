package lesson

import (
	"ramplan/press/words"
)

func (say Words) NoGoodPartToShow() string {
	return "No good part can be shown: the stretch of good readings is too narrow to write a height in."
}

func (say Words) NoZoneAroundPushEnd(end float64) string {
	return "The push end at " + say.At(end) + " lies where no zone can tell too tall from too short."
}

func (say Words) NewNest(by string, way string) string {
	return "A new nest stands " + by + " " + way + " than the one of the plan. Set the zone so that it judges these parts rightly."
}

func (say Words) PushEndMoved(typed string) string {
	return "The push end was moved along and stands at " + typed + "."
}

func (say Words) PushEndInsideZone(pastEnd float64) string {
	return "The push end must lie inside the zone, at least " + say.Length(pastEnd) + " before the zone end."
}

func (say Words) ZoneIsToDo() string {
	return "Both lamps must be on for good parts, and for no others. Too tall and too short must show different lamps."
}

func (say Words) OnlyASetter() string {
	return "This is an exercise. At the station only a setter who is allowed to may change the zone."
}

func (say Words) ZoneExample(zone string) string { return "For example from " + zone + "." }

func (say Words) ZoneMovedAlong(zone string, by string, way string) string {
	return "From " + zone + ", the zone of the plan moved by " + by + ": every reading stands " + by + " " + way + ", so the zone does too."
}

func (say Words) StopsOnThisNest(high string, at float64) string {
	return "On this nest a part of " + high + " stops the ram at " + say.At(at) + ". A taller part stops it earlier, by as much as it is taller."
}

func (say Words) NoZone() string { return "No zone was given." }

func (say Words) StartBeforeEnd() string {
	return "The zone start must stand before the zone end."
}

func (say Words) WrongWouldPass(high string, orWords string, story string) string {
	return "The part of " + high + " is " + orWords + " by the drawing and would pass as good. " + story
}

func (say Words) GoodWouldBeRefused(high string, story string) string {
	return "The part of " + high + " is good and would be refused. " + story
}

func (say Words) TallAndShortAlike(high string, high2 string, on words.Pair, story string) string {
	return "The part of " + high + " is too tall and the one of " + high2 + " too short. Both show " + on.String() +
		", so nobody could tell them apart. " + story
}

func (say Words) OthersJudgedWrongly(high string, heightHigh float64, noTaller string) string {
	return "These parts are judged rightly, but others are not: with this zone a part of " + high +
		" would pass, and the drawing allows no more than " + say.At(heightHigh) + "." + noTaller
}

func (say Words) PushEndOutside(end string) string {
	return "The push end at " + end + " lies outside this zone. A ram that nothing stops rests at the push end, and zone must be on there: with zone off, a missing insert shows both lamps off, as a fault of the station does."
}

func (say Words) PushEndAtStart(end string) string {
	return "The push end at " + end + " lies at the zone start. A ram that nothing stops rests at the push end, and zone must be on there each time: the zone must start before it."
}

func (say Words) PushEndTooNearEnd(end string, zoneEnd float64, pastEnd float64) string {
	return "The push end at " + end + " lies only " + say.Length(zoneEnd) + " before the zone end. It must be " + say.Length(pastEnd) + " at least: a ram that nothing stops does not rest at the same position each time, and zone must be on there."
}

func (say Words) PlanPassesNoTaller(high string) string {
	return " The zone of the plan lets no part pass that is taller than " + high + "."
}

func (say Words) ZoneMovedAsTheNest() string {
	return "That is the zone of the plan, moved exactly as far as the nest: it judges every part as the plan does."
}

func (say Words) ZoneStart() string { return "zone start" }

func (say Words) ZoneEnd() string { return "zone end" }

func (say Words) OnlyFrom(by float64) string { return "stands only " + say.Length(by) + " from" }

func (say Words) AtTheReadingOf() string { return "stands at the reading of" }

func (say Words) RightButUnsure(name string, stands string, high string, unsure float64) string {
	return "It is right for these readings. But the " + name + " " + stands + " the part of " + high +
		", and a reading may be off by " + say.Length(unsure) + ". Now and then it would be judged wrongly."
}

func (say Words) RoomEnough(unsure float64) string {
	return "A reading may be off by " + say.Length(unsure) + ", and every part has more room than that."
}
