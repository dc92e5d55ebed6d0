package drill

import (
	"math/rand/v2"
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
	return d.asked(rng, d.say.HandAtHoming(), d.byHand(),
		Choice{ID: "no", Text: d.say.HandAtHomingNo()},
		Choice{ID: "slow", Text: d.say.HandAtHomingSlow(), Reason: d.byHand(), Grave: graveHand},
		Choice{ID: "part", Text: d.say.HandAtHomingPart(), Reason: d.byHand(), Grave: graveHand},
		Choice{ID: "zone", Text: d.say.HandAtHomingZone(), Reason: d.byHand(), Grave: graveHand})
}

func (d *Drill) handAtJogging(rng *rand.Rand) Exercise {
	return d.asked(rng, d.say.HandAtJogging(), d.byHand(),
		Choice{ID: "no", Text: d.say.HandAtJoggingNo()},
		Choice{ID: "small", Text: d.say.HandAtJoggingSmall(), Reason: d.byHand(), Grave: graveHand},
		Choice{ID: "see", Text: d.say.HandAtJoggingSee(), Reason: d.byHand(), Grave: graveHand},
		Choice{ID: "count", Text: d.say.HandAtJoggingCount(), Reason: d.byHand(), Grave: graveHand})
}

func (d *Drill) twoHands(rng *rand.Rand) Exercise {
	why := d.say.TwoHandsWhy(d.byHand())
	return d.asked(rng, d.say.TwoHands(), why,
		Choice{ID: "no", Text: d.say.TwoHandsNo()},
		Choice{ID: "both", Text: d.say.TwoHandsBoth(), Reason: why, Grave: graveOther},
		Choice{ID: "look", Text: d.say.TwoHandsLook(), Reason: why, Grave: graveOther},
		Choice{ID: "stop", Text: d.say.TwoHandsStop(), Reason: d.say.TwoHandsStopWhy(why), Grave: graveOther})
}

func (d *Drill) trapped(rng *rand.Rand) Exercise {
	why := d.say.TrappedWhy()
	return d.asked(rng, d.say.Trapped(), why,
		Choice{ID: "free", Text: d.say.TrappedFree()},
		Choice{ID: "figures", Text: d.say.TrappedFigures(), Reason: d.say.TrappedFiguresWhy(why)},
		Choice{ID: "share", Text: d.say.TrappedShare(), Reason: d.say.TrappedShareWhy(why)},
		Choice{ID: "quick", Text: d.say.TrappedQuick(), Reason: d.say.TrappedQuickWhy(why)})
}

func (d *Drill) shield(rng *rand.Rand) Exercise {
	why := d.say.ShieldWhy(d.r.Force.High)
	return d.asked(rng, d.say.Shield(), why,
		Choice{ID: "no", Text: d.say.ShieldNo()},
		Choice{ID: "hand", Text: d.say.ShieldHand(), Reason: why, Grave: graveGuard},
		Choice{ID: "low", Text: d.say.ShieldLow(), Reason: why, Grave: graveGuard},
		Choice{ID: "side", Text: d.say.ShieldSide(), Reason: why, Grave: graveGuard})
}

func (d *Drill) bridged(rng *rand.Rand) Exercise {
	why := d.say.BridgedWhy()
	return d.asked(rng, d.say.Bridged(), why,
		Choice{ID: "report", Text: d.say.BridgedReport()},
		Choice{ID: "careful", Text: d.say.BridgedCareful(), Reason: why, Grave: graveGuard},
		Choice{ID: "end", Text: d.say.BridgedEnd(), Reason: why, Grave: graveGuard},
		Choice{ID: "both", Text: d.say.BridgedBoth(), Reason: why, Grave: graveGuard})
}

func (d *Drill) underTheRam(rng *rand.Rand) Exercise {
	why := d.say.UnderTheRamWhy()
	return d.asked(rng, d.say.UnderTheRam(), why,
		Choice{ID: "prop", Text: d.say.UnderTheRamProp()},
		Choice{ID: "power", Text: d.say.UnderTheRamPower(), Reason: why, Grave: graveHand},
		Choice{ID: "stop", Text: d.say.UnderTheRamStop(), Reason: why, Grave: graveHand},
		Choice{ID: "short", Text: d.say.UnderTheRamShort(), Reason: why, Grave: graveHand})
}
