package drill

import (
	"math/rand/v2"
	"slices"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/press/words/lesson"
)

// when says when the lamps are read.
func (d *Drill) when() string {
	if words.TwoLooks(d.r) {
		return d.say.ReadTwice()
	}
	return d.say.ReadOnce()
}

// returning says what the lamps show on the way back, and what they would be taken
// for.
func (d *Drill) returning() string {
	on := words.Returning
	list := d.r.Verdict.Table.Words(on.Arrival, on.Zone)
	return d.say.OnTheWayBackWhy(d.s.ZoneStart, on, d.orWords(list))
}

// waiting says what both lamps off mean at home.
func (d *Drill) waiting() string {
	return d.say.AtHomeWhy(d.s.ZoneStart, d.s.ZoneEnd)
}

// handlingItems: when the lamps count, and what no lamp makes safe.
func (d *Drill) handlingItems() {
	d.add(Read, 1, "when/read", d.whenRead, "when")
	if d.throughZone() {
		d.add(Read, 1, "when/back", d.onTheWayBack, "when")
	}
	if words.OffAtHome(d.p, d.s) {
		d.add(Read, 1, "when/home", d.atHome, "when", homeTopic)
		d.add(Read, 1, "when/lit", d.litAtHome, stuckTopic, homeTopic)
	}
	d.add(Safe, 1, "hands/insert", d.handAtInsert)
	d.add(Safe, 1, "hands/guard", d.handAtGuard)
	d.add(Safe, 1, "hands/return", d.handOnTheWayBack)
	d.add(Safe, 1, "hands/lowest", d.handAtLowest)
	if d.r.Impact.Early > 0 {
		d.add(Safe, 1, "hands/approach", d.strike)
	}
}

// asked makes an exercise whose first choice is the right one.
func (d *Drill) asked(rng *rand.Rand, question, explain string, choices ...Choice) Exercise {
	e := Exercise{Question: question, Explain: explain, Right: []string{choices[0].ID}}
	e.Choices = shuffled(rng, slices.Clone(choices))
	return e
}

func (d *Drill) whenRead(rng *rand.Rand) Exercise {
	explain, back := d.when(), d.when()
	if d.throughZone() {
		explain += " " + d.returning()
		back = d.returning() + " " + back
	}
	wrong := []Choice{
		{ID: "back", Text: d.say.WhenReadBack(), Reason: back},
		{ID: "zone", Text: d.say.WhenReadZone(), Reason: d.say.WhenReadZoneWhy(d.s.ZoneStart, d.when())},
	}
	if words.OffAtHome(d.p, d.s) {
		explain += " " + d.waiting()
		wrong = append(wrong, Choice{ID: "home", Text: d.say.WhenReadHome(), Reason: d.waiting() + " " + d.when()})
	}
	right := d.say.WhenReadOnce()
	if words.TwoLooks(d.r) {
		right = d.say.WhenReadTwice()
	}
	return d.asked(rng, d.say.WhenRead(), explain, append([]Choice{{ID: "end", Text: right}}, wrong...)...)
}

// homeTopic is what the lamps show at home: who is told that one of them is wrong there
// knows that they must be off.
const homeTopic = "home"

// throughZone tells whether the ram goes back through the zone.
func (d *Drill) throughZone() bool { return d.s.ZoneStart < d.s.End }

func (d *Drill) onTheWayBack(rng *rand.Rand) Exercise {
	on := words.Returning
	choices := []Choice{
		{ID: "nothing", Text: d.say.OnTheWayBackRight()},
		{ID: "broken", Text: d.say.OnTheWayBackBroken(), Reason: d.returning()},
		{ID: "zone", Text: d.say.OnTheWayBackZone(), Reason: d.returning()},
	}
	if list := d.r.Verdict.Table.Words(on.Arrival, on.Zone); len(list) > 0 && !slices.Contains(list, press.Good) {
		choices = append(choices, Choice{ID: "refused", Text: upper(d.orWords(list)), Reason: d.returning()})
	}
	return d.asked(rng, d.say.OnTheWayBack(on), d.returning(), choices...)
}

func (d *Drill) atHome(rng *rand.Rand) Exercise {
	return d.asked(rng, d.say.AtHome(), d.waiting(),
		Choice{ID: "right", Text: d.say.AtHomeRight()},
		Choice{ID: "last", Text: d.say.AtHomeLast(), Reason: d.say.AtHomeLastWhy(d.waiting())},
		Choice{ID: "empty", Text: d.say.AtHomeEmpty(), Reason: d.say.AtHomeEmptyWhy(d.waiting())},
		Choice{ID: "safe", Text: d.say.AtHomeSafe(), Reason: d.say.AtHomeSafeWhy(d.byHand()), Grave: graveHand})
}

func (d *Drill) litAtHome(rng *rand.Rand) Exercise {
	why := d.say.LitAtHomeWhy(d.waiting())
	return d.asked(rng, d.say.LitAtHome(), why,
		Choice{ID: "stop", Text: d.say.LitAtHomeStop()},
		Choice{ID: "go", Text: d.say.LitAtHomeGo(), Reason: why, Grave: graveGoOn},
		Choice{ID: "twice", Text: d.say.LitAtHomeTwice(), Reason: d.say.LitAtHomeTwiceWhy(why), Grave: graveGoOn},
		Choice{ID: "wait", Text: d.say.LitAtHomeWait(), Reason: d.say.LitAtHomeWaitWhy(why), Grave: graveGoOn})
}

func (d *Drill) handAtInsert(rng *rand.Rand) Exercise {
	return d.asked(rng, d.say.HandAtInsert(), d.byHand(),
		Choice{ID: "stop", Text: d.say.HandAtInsertStop()},
		Choice{ID: "quick", Text: d.say.HandAtInsertQuick(), Reason: d.byHand(), Grave: graveHand},
		Choice{ID: "slow", Text: d.say.HandAtInsertSlow(), Reason: d.byHand(), Grave: graveHand},
		Choice{ID: "side", Text: d.say.HandAtInsertSide(), Reason: d.byHand(), Grave: graveHand})
}

func (d *Drill) handAtGuard(rng *rand.Rand) Exercise {
	why := d.say.AtHomeSafeWhy(d.byHand())
	return d.asked(rng, d.say.HandAtGuard(), why,
		Choice{ID: "no", Text: d.say.HandAtGuardNo()},
		Choice{ID: "off", Text: d.say.HandAtGuardOff(), Reason: why, Grave: graveHand},
		Choice{ID: "zone", Text: d.say.HandAtGuardZone(), Reason: why, Grave: graveHand},
		Choice{ID: "cycle", Text: d.say.HandAtGuardCycle(), Reason: why, Grave: graveHand})
}

func (d *Drill) handOnTheWayBack(rng *rand.Rand) Exercise {
	why := d.say.HandOnTheWayBackWhy(d.byHand())
	return d.asked(rng, d.say.HandOnTheWayBack(), why,
		Choice{ID: "home", Text: d.say.HandOnTheWayBackHome()},
		Choice{ID: "back", Text: d.say.HandOnTheWayBackBack(), Reason: why, Grave: graveHand},
		Choice{ID: "good", Text: d.say.HandOnTheWayBackGood(), Reason: why, Grave: graveHand},
		Choice{ID: "side", Text: d.say.HandOnTheWayBackSide(), Reason: why, Grave: graveHand})
}

func (d *Drill) handAtLowest(rng *rand.Rand) Exercise {
	why := d.say.HandAtLowestWhy(d.byHand())
	return d.asked(rng, d.say.HandAtLowest(), why,
		Choice{ID: "no", Text: d.say.HandAtLowestNo()},
		Choice{ID: "touch", Text: d.say.HandAtLowestTouch(), Reason: why, Grave: graveHand},
		Choice{ID: "other", Text: d.say.HandAtLowestOther(), Reason: why, Grave: graveHand},
		Choice{ID: "trial", Text: d.say.HandAtLowestTrial(), Reason: why, Grave: graveHand})
}

func (d *Drill) strike(rng *rand.Rand) Exercise {
	hit, push := d.say.EarlyBlow(d.r), d.say.Force(d.r.Force.High)
	why := d.say.StrikeWhy(d.r.Force.Setting, d.s.Start, hit, d.byHand())
	return d.asked(rng, d.say.Strike(), why,
		Choice{ID: "strike", Text: d.say.StrikeStrike(hit)},
		Choice{ID: "push", Text: d.say.StrikePush(push), Reason: why},
		Choice{ID: "stop", Text: d.say.StrikeStop(), Reason: why},
		Choice{ID: "lamp", Text: d.say.StrikeLamp(), Reason: d.say.StrikeLampWhy(why)})
}

// passes marks the choices that would pass a part on which its lamps refuse.
func (d *Drill) passes(on words.Pair) lesson.Grave {
	if slices.Contains(d.r.Verdict.Table.Words(on.Arrival, on.Zone), press.Good) {
		return ""
	}
	return gravePass
}
