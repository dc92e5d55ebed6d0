package lesson

import (
	"ramplan/press/words"
)

func (say Words) ReadTwice() string {
	return "The lamps are read in the probe, which lets the press follow or refuses the part, and once more at the end of the push, before the ram goes back: only that judges the part."
}

func (say Words) ReadOnce() string {
	return "The lamps are read once, at the end of the push, before the ram goes back."
}

func (say Words) OnTheWayBackWhy(zoneStart float64, on words.Pair, orWords string) string {
	return "On the way back nothing stops the ram, so arrival is off. Zone stays on until the ram leaves the zone at " + say.At(zoneStart) +
		". So every part, also a good one, shows " + on.String() + " then. At the end of a push these lamps would mean " + orWords + "."
}

func (say Words) AtHomeWhy(zoneStart float64, zoneEnd float64) string {
	return "At home nothing stops the ram and it stands outside the zone from " + say.Bare(zoneStart) + " to " + say.At(zoneEnd) + ", so both lamps must be off there. They judge a part only at the end of its push."
}

func (say Words) WhenReadBack() string { return "While the ram goes back" }

func (say Words) WhenReadZone() string { return "As soon as the zone lamp comes on" }

func (say Words) WhenReadZoneWhy(zoneStart float64, when string) string {
	return "Zone comes on when the ram passes " + say.At(zoneStart) + ", whether a part has stopped it or not. " + when
}

func (say Words) WhenReadHome() string { return "When the ram stands at home again" }

func (say Words) WhenReadOnce() string {
	return "Once, at the end of the push, before the ram goes back"
}

func (say Words) WhenReadTwice() string {
	return "In the probe, and again at the end of the push, before the ram goes back"
}

func (say Words) WhenRead() string { return "When are the two lamps read?" }

func (say Words) OnTheWayBackRight() string {
	return "Nothing: it is the same with every part"
}

func (say Words) OnTheWayBackBroken() string {
	return "The arrival signal is broken: it should stay on"
}

func (say Words) OnTheWayBackZone() string { return "It is good: zone is on" }

func (say Words) OnTheWayBack(on words.Pair) string {
	return "While the ram goes back, the lamps show " + on.String() + ". What does that say about the part?"
}

func (say Words) AtHome() string {
	return "The ram stands at home, and both lamps are off. The next part is not pressed yet. What do the lamps say?"
}

func (say Words) AtHomeRight() string { return "Nothing about a part: they must be off here" }

func (say Words) AtHomeLast() string { return "The part before was refused" }

func (say Words) AtHomeLastWhy(waiting string) string {
	return "The lamps at the end of its own push have judged the part before. " + waiting
}

func (say Words) AtHomeEmpty() string { return "That there is no insert in the nest" }

func (say Words) AtHomeEmptyWhy(waiting string) string {
	return "Nothing has been pushed yet. " + waiting
}

func (say Words) AtHomeSafe() string { return "That the ram will not move, so that a hand may go in" }

func (say Words) AtHomeSafeWhy(byHand string) string {
	return "The lamps do not say whether the ram will move. " + byHand
}

func (say Words) LitAtHomeWhy(waiting string) string {
	return waiting + " A lamp that is on here may be stuck on. Then it judges the next part wrongly."
}

func (say Words) LitAtHome() string {
	return "The ram stands at home, and the zone lamp is on. The next part is not pressed yet. What do you do?"
}

func (say Words) LitAtHomeStop() string { return "Stop, and have the zone signal tested" }

func (say Words) LitAtHomeGo() string { return "Press the next part: one lamp alone does not matter" }

func (say Words) LitAtHomeTwice() string {
	return "Press the next part and look twice at the arrival lamp"
}

func (say Words) LitAtHomeTwiceWhy(why string) string {
	return "Arrival alone does not judge a part. " + why
}

func (say Words) LitAtHomeWait() string { return "Wait until it goes off by itself, and go on" }

func (say Words) LitAtHomeWaitWhy(why string) string {
	return why + " When it goes off, nobody knows yet why it was on."
}

func (say Words) HandAtInsert() string {
	return "The cycle has begun. You see that the insert does not stand straight in the nest. What do you do?"
}

func (say Words) HandAtInsertStop() string { return "Stop the cycle, with both hands outside" }

func (say Words) HandAtInsertQuick() string {
	return "Set it straight quickly, while the ram is still far up"
}

func (say Words) HandAtInsertSlow() string { return "Set it straight when the ram has become slow" }

func (say Words) HandAtInsertSide() string { return "Push it straight from the side with two fingers" }

func (say Words) HandAtGuard() string {
	return "A screw has fallen beside the nest, and both lamps are off. May you reach in for it?"
}

func (say Words) HandAtGuardNo() string {
	return "Only when the station is stopped and secured, as your instructions say"
}

func (say Words) HandAtGuardOff() string { return "Yes: with arrival off the ram presses on nothing" }

func (say Words) HandAtGuardZone() string { return "As long as zone is off: the ram is far away" }

func (say Words) HandAtGuardCycle() string { return "Between two cycles, if you are quick" }

func (say Words) HandOnTheWayBackWhy(byHand string) string {
	return "The ram crushes on its way back too. No lamp says that it has stopped. " + byHand
}

func (say Words) HandOnTheWayBack() string {
	return "The push is over and the ram goes back. May you take the part out now?"
}

func (say Words) HandOnTheWayBackHome() string { return "No: not before the ram stands still at home" }

func (say Words) HandOnTheWayBackBack() string {
	return "Yes: going back, the ram presses on nothing and moves away"
}

func (say Words) HandOnTheWayBackGood() string { return "If both lamps were on" }

func (say Words) HandOnTheWayBackSide() string { return "If you reach in from the side" }

func (say Words) HandAtLowestWhy(byHand string) string {
	return "Even the lowest setting can hurt. It limits the push only, not the approach. " + byHand
}

func (say Words) HandAtLowest() string {
	return "For a trial the setting stands at its lowest. May a hand hold the insert while the ram comes?"
}

func (say Words) HandAtLowestNo() string { return "No: even the lowest setting can hurt" }

func (say Words) HandAtLowestTouch() string { return "Yes: at the lowest setting the ram only touches" }

func (say Words) HandAtLowestOther() string { return "If somebody else stands ready to stop the ram" }

func (say Words) HandAtLowestTrial() string { return "For a trial of a single part" }

func (say Words) StrikeWhy(setting float64, start float64, hit string, byHand string) string {
	return "The setting of " + say.Setting(setting) + " limits the push only, and the push begins at " + say.At(start) + ". Before that, the moving mass strikes with at least " + hit + ". " + byHand
}

func (say Words) Strike() string {
	return "Something stands in the way of the fast approach. How hard is it struck?"
}

func (say Words) StrikeStrike(hit string) string { return "With at least " + hit }

func (say Words) StrikePush(push string) string { return "As hard as the push at most, with " + push }

func (say Words) StrikeStop() string { return "Hardly at all: the ram stops at the first touch" }

func (say Words) StrikeLamp() string { return "Not at all: the ram stops when arrival comes on" }

func (say Words) StrikeLampWhy(why string) string {
	return "Arrival judges parts at the end of a push and stops nothing. " + why
}
