package drill

import (
	"math/rand/v2"
	"slices"

	"ramplan/press"
	"ramplan/press/words"
)

// when says when the lamps are read.
func (d *Drill) when() string {
	if words.TwoLooks(d.r) {
		return "The lamps are read in the probe, which lets the press follow or refuses the part, and once more at the end of the push, before the ram goes back: only that judges the part."
	}
	return "The lamps are read once, at the end of the push, before the ram goes back."
}

// returning says what the lamps show on the way back, and what they would be taken
// for.
func (d *Drill) returning() string {
	on := words.Returning
	list := d.r.Verdict.Table.Words(on.Arrival, on.Zone)
	return "On the way back nothing stops the ram, so arrival is off. Zone stays on until the ram leaves the zone at " + d.pos.At(d.s.ZoneStart) +
		". So every part, also a good one, shows " + on.String() + " then. At the end of a push these lamps would mean " + d.orWords(list) + "."
}

// waiting says what both lamps off mean at home.
func (d *Drill) waiting() string {
	return "At home nothing stops the ram and it stands outside the zone from " + d.pos.Bare(d.s.ZoneStart) + " to " + d.pos.At(d.s.ZoneEnd) + ", so both lamps must be off there. They judge a part only at the end of its push."
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
		{ID: "back", Text: "While the ram goes back", Reason: back},
		{ID: "zone", Text: "As soon as the zone lamp comes on", Reason: "Zone comes on when the ram passes " + d.pos.At(d.s.ZoneStart) + ", whether a part has stopped it or not. " + d.when()},
	}
	if words.OffAtHome(d.p, d.s) {
		explain += " " + d.waiting()
		wrong = append(wrong, Choice{ID: "home", Text: "When the ram stands at home again", Reason: d.waiting() + " " + d.when()})
	}
	right := "Once, at the end of the push, before the ram goes back"
	if words.TwoLooks(d.r) {
		right = "In the probe, and again at the end of the push, before the ram goes back"
	}
	return d.asked(rng, "When are the two lamps read?", explain, append([]Choice{{ID: "end", Text: right}}, wrong...)...)
}

// homeTopic is what the lamps show at home: who is told that one of them is wrong there
// knows that they must be off.
const homeTopic = "home"

// throughZone tells whether the ram goes back through the zone.
func (d *Drill) throughZone() bool { return d.s.ZoneStart < d.s.End }

func (d *Drill) onTheWayBack(rng *rand.Rand) Exercise {
	on := words.Returning
	choices := []Choice{
		{ID: "nothing", Text: "Nothing: it is the same with every part"},
		{ID: "broken", Text: "The arrival signal is broken: it should stay on", Reason: d.returning()},
		{ID: "zone", Text: "It is good: zone is on", Reason: d.returning()},
	}
	if list := d.r.Verdict.Table.Words(on.Arrival, on.Zone); len(list) > 0 && !slices.Contains(list, press.Good) {
		choices = append(choices, Choice{ID: "refused", Text: upper(d.orWords(list)), Reason: d.returning()})
	}
	return d.asked(rng, "While the ram goes back, the lamps show "+on.String()+". What does that say about the part?", d.returning(), choices...)
}

func (d *Drill) atHome(rng *rand.Rand) Exercise {
	return d.asked(rng, "The ram stands at home, and both lamps are off. The next part is not pressed yet. What do the lamps say?", d.waiting(),
		Choice{ID: "right", Text: "Nothing about a part: they must be off here"},
		Choice{ID: "last", Text: "The part before was refused", Reason: "The lamps at the end of its own push have judged the part before. " + d.waiting()},
		Choice{ID: "empty", Text: "That there is no insert in the nest", Reason: "Nothing has been pushed yet. " + d.waiting()},
		Choice{ID: "safe", Text: "That the ram will not move, so that a hand may go in", Reason: "The lamps do not say whether the ram will move. " + d.byHand(), Grave: graveHand})
}

func (d *Drill) litAtHome(rng *rand.Rand) Exercise {
	why := d.waiting() + " A lamp that is on here may be stuck on. Then it judges the next part wrongly."
	return d.asked(rng, "The ram stands at home, and the zone lamp is on. The next part is not pressed yet. What do you do?", why,
		Choice{ID: "stop", Text: "Stop, and have the zone signal tested"},
		Choice{ID: "go", Text: "Press the next part: one lamp alone does not matter", Reason: why, Grave: graveGoOn},
		Choice{ID: "twice", Text: "Press the next part and look twice at the arrival lamp", Reason: "Arrival alone does not judge a part. " + why, Grave: graveGoOn},
		Choice{ID: "wait", Text: "Wait until it goes off by itself, and go on", Reason: why + " When it goes off, nobody knows yet why it was on.", Grave: graveGoOn})
}

func (d *Drill) handAtInsert(rng *rand.Rand) Exercise {
	return d.asked(rng, "The cycle has begun. You see that the insert does not stand straight in the nest. What do you do?", d.byHand(),
		Choice{ID: "stop", Text: "Stop the cycle, with both hands outside"},
		Choice{ID: "quick", Text: "Set it straight quickly, while the ram is still far up", Reason: d.byHand(), Grave: graveHand},
		Choice{ID: "slow", Text: "Set it straight when the ram has become slow", Reason: d.byHand(), Grave: graveHand},
		Choice{ID: "side", Text: "Push it straight from the side with two fingers", Reason: d.byHand(), Grave: graveHand})
}

func (d *Drill) handAtGuard(rng *rand.Rand) Exercise {
	why := "The lamps do not say whether the ram will move. " + d.byHand()
	return d.asked(rng, "A screw has fallen beside the nest, and both lamps are off. May you reach in for it?", why,
		Choice{ID: "no", Text: "Only when the station is stopped and secured, as your instructions say"},
		Choice{ID: "off", Text: "Yes: with arrival off the ram presses on nothing", Reason: why, Grave: graveHand},
		Choice{ID: "zone", Text: "As long as zone is off: the ram is far away", Reason: why, Grave: graveHand},
		Choice{ID: "cycle", Text: "Between two cycles, if you are quick", Reason: why, Grave: graveHand})
}

func (d *Drill) handOnTheWayBack(rng *rand.Rand) Exercise {
	why := "The ram crushes on its way back too. No lamp says that it has stopped. " + d.byHand()
	return d.asked(rng, "The push is over and the ram goes back. May you take the part out now?", why,
		Choice{ID: "home", Text: "No: not before the ram stands still at home"},
		Choice{ID: "back", Text: "Yes: going back, the ram presses on nothing and moves away", Reason: why, Grave: graveHand},
		Choice{ID: "good", Text: "If both lamps were on", Reason: why, Grave: graveHand},
		Choice{ID: "side", Text: "If you reach in from the side", Reason: why, Grave: graveHand})
}

func (d *Drill) handAtLowest(rng *rand.Rand) Exercise {
	why := "Even the lowest setting can hurt. It limits the push only, not the approach. " + d.byHand()
	return d.asked(rng, "For a trial the setting stands at its lowest. May a hand hold the insert while the ram comes?", why,
		Choice{ID: "no", Text: "No: even the lowest setting can hurt"},
		Choice{ID: "touch", Text: "Yes: at the lowest setting the ram only touches", Reason: why, Grave: graveHand},
		Choice{ID: "other", Text: "If somebody else stands ready to stop the ram", Reason: why, Grave: graveHand},
		Choice{ID: "trial", Text: "For a trial of a single part", Reason: why, Grave: graveHand})
}

func (d *Drill) strike(rng *rand.Rand) Exercise {
	hit, push := words.EarlyBlow(d.r), words.Force(d.r.Force.High)
	why := "The setting of " + words.Setting(d.r.Force.Setting) + " limits the push only, and the push begins at " + d.pos.At(d.s.Start) + ". Before that, the moving mass strikes with at least " + hit + ". " + d.byHand()
	return d.asked(rng, "Something stands in the way of the fast approach. How hard is it struck?", why,
		Choice{ID: "strike", Text: "With at least " + hit},
		Choice{ID: "push", Text: "As hard as the push at most, with " + push, Reason: why},
		Choice{ID: "stop", Text: "Hardly at all: the ram stops at the first touch", Reason: why},
		Choice{ID: "lamp", Text: "Not at all: the ram stops when arrival comes on", Reason: "Arrival judges parts at the end of a push and stops nothing. " + why})
}

// passes marks the choices that would pass a part on which its lamps refuse.
func (d *Drill) passes(on words.Pair) string {
	if slices.Contains(d.r.Verdict.Table.Words(on.Arrival, on.Zone), press.Good) {
		return ""
	}
	return gravePass
}
