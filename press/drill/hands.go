package drill

import (
	"math/rand/v2"

	"ramplan/press/words"
)

// slowTopic is that a slow ram crushes as well.
const slowTopic = "hands/slow"

// handsItems: what no lamp makes safe, beside the cycle itself.
func (d *Drill) handsItems() {
	d.add(Safe, 1, "hands/homing", d.handAtHoming, slowTopic)
	d.add(Safe, 1, "hands/jog", d.handAtJogging, slowTopic)
	d.add(Safe, 1, "hands/colleague", d.twoHands)
	d.add(Safe, 1, "hands/trapped", d.trapped)
	d.add(Safe, 1, "hands/shield", d.shield)
	d.add(Safe, 1, "hands/bridged", d.bridged)
	d.add(Safe, 1, "hands/under", d.underTheRam)
}

func (d *Drill) handAtHoming(rng *rand.Rand) Exercise {
	return d.asked(rng, "The ram looks for its home position, slowly and without a part. May a hand be in the work space?", d.byHand(),
		Choice{ID: "no", Text: "No: a slow ram crushes as well"},
		Choice{ID: "slow", Text: "Yes: there is time to pull the hand out", Reason: d.byHand(), Grave: graveHand},
		Choice{ID: "part", Text: "Without a part there is nothing to press", Reason: d.byHand(), Grave: graveHand},
		Choice{ID: "zone", Text: "While the zone lamp is off", Reason: d.byHand(), Grave: graveHand})
}

func (d *Drill) handAtJogging(rng *rand.Rand) Exercise {
	return d.asked(rng, "A setter jogs the ram in small steps. May somebody else hold the part meanwhile?", d.byHand(),
		Choice{ID: "no", Text: "No: small steps crush as well"},
		Choice{ID: "small", Text: "Yes: each step is smaller than a finger", Reason: d.byHand(), Grave: graveHand},
		Choice{ID: "see", Text: "If the two see each other", Reason: d.byHand(), Grave: graveHand},
		Choice{ID: "count", Text: "If the setter counts aloud before each step", Reason: d.byHand(), Grave: graveHand})
}

func (d *Drill) twoHands(rng *rand.Rand) Exercise {
	why := "Two-hand control protects the one person who uses it (ISO 13851), and nobody else. " + d.byHand()
	return d.asked(rng, "You start the cycle with a two-hand control. Does it protect a colleague beside you?", why,
		Choice{ID: "no", Text: "No: it protects only the person who uses it"},
		Choice{ID: "both", Text: "Yes: the ram does not move without both buttons", Reason: why, Grave: graveOther},
		Choice{ID: "look", Text: "As long as you look at the colleague", Reason: why, Grave: graveOther},
		Choice{ID: "stop", Text: "When you let go, the ram stands still at once", Reason: "The ram takes time to stop, and you must see the danger first. " + why, Grave: graveOther})
}

func (d *Drill) trapped(rng *rand.Rand) Exercise {
	why := "Know how a trapped person is freed with the power off, and whether the emergency stop holds the ram or lets it go: then there is no time to find out."
	return d.asked(rng, "What must everybody at this station know before the first push?", why,
		Choice{ID: "free", Text: "How a trapped person is freed, and what the ram does at an emergency stop"},
		Choice{ID: "figures", Text: "Setting, push end and zone by heart", Reason: "These stand in the plan. " + why},
		Choice{ID: "share", Text: "How many parts are refused on average", Reason: "That is good to know, and hurts nobody. " + why},
		Choice{ID: "quick", Text: "How the station is made quicker", Reason: "That is not changed at the station. " + why})
}

func (d *Drill) shield(rng *rand.Rand) Exercise {
	why := "A part may burst or jump out at any push, with up to " + words.Force(d.r.Force.High) + " behind it. Shield the work space."
	return d.asked(rng, "The shield in front of the nest is in the way. May it stay open for one push?", why,
		Choice{ID: "no", Text: "No: a part can burst or jump out"},
		Choice{ID: "hand", Text: "Yes, if no hand is inside", Reason: why, Grave: graveGuard},
		Choice{ID: "low", Text: "With the lowest setting", Reason: why, Grave: graveGuard},
		Choice{ID: "side", Text: "If you stand beside it", Reason: why, Grave: graveGuard})
}

func (d *Drill) bridged(rng *rand.Rand) Exercise {
	why := "A bridged guard protects nobody, and no lamp takes its place. Guards follow the machinery rules in force and a qualified person."
	return d.asked(rng, "Somebody has bridged a guard switch, so that loading is quicker. What do you do?", why,
		Choice{ID: "report", Text: "Do not start. Report it, and have it put right first"},
		Choice{ID: "careful", Text: "Work on, with more care", Reason: why, Grave: graveGuard},
		Choice{ID: "end", Text: "Report it after the shift, and work on until then", Reason: why, Grave: graveGuard},
		Choice{ID: "both", Text: "As long as the lamps are right, work on", Reason: why, Grave: graveGuard})
}

func (d *Drill) underTheRam(rng *rand.Rand) Exercise {
	why := "A vertical ram may sink or drop without power or brake: prop it before working under it."
	return d.asked(rng, "A vertical ram stands high, and the power is off. May you work under it?", why,
		Choice{ID: "prop", Text: "Only when it is propped"},
		Choice{ID: "power", Text: "Yes: without power it cannot move", Reason: why, Grave: graveHand},
		Choice{ID: "stop", Text: "If the emergency stop is pressed", Reason: why, Grave: graveHand},
		Choice{ID: "short", Text: "For a moment", Reason: why, Grave: graveHand})
}
