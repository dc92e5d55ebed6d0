package drill

import (
	"math/rand/v2"
	"slices"

	"ramplan/press"
	"ramplan/press/words"
)

// judged is a result whose catalogue says what the whole cycle makes of a row, by one look
// or by two: where a probe refuses a row, no push follows and nothing is asked of it.
func judged(r *press.Result) *press.Result {
	if !words.TwoLooks(r) {
		return r
	}
	both := *r
	both.Faults = slices.Clone(r.Faults)
	for i, f := range both.Faults {
		both.Faults[i] = words.AsJudged(f)
	}
	return &both
}

// firstLookItems ask about the look in the probe; none where there is no probe.
func (d *Drill) firstLookItems() {
	if !words.TwoLooks(d.r) {
		return
	}
	d.add(Read, 1, "look/on", d.goesOn, lookTopic)
	d.add(Act, 1, "look/refused", d.refusedFirst, lookTopic)
	d.add(Read, 2, "look/lit", d.zoneAtFirst, lookTopic)
	d.add(Safe, 1, "look/hand", d.handBetween)
}

// lookTopic is what the first look means: who is told its rule knows both answers.
const lookTopic = "look"

// first says what the plan says of a pair at the first look.
func (d *Drill) first(on words.Pair) words.FirstLookText {
	return d.say.AtFirstLook(d.p, d.r, on, words.One)
}

func (d *Drill) goesOn(rng *rand.Rand) Exercise {
	why := d.first(words.GoesOn).Meaning + " " + words.GoOnOnly
	return d.asked(rng, d.say.GoesOn(), why,
		Choice{ID: "on", Text: d.say.GoesOnOn()},
		Choice{ID: "good", Text: d.say.ZoneSaysGood(), Reason: why, Grave: gravePass},
		Choice{ID: "tall", Text: d.say.GoesOnTall(), Reason: d.say.GoesOnTallWhy(why)},
		Choice{ID: "fault", Text: d.say.GoesOnFault(), Reason: why})
}

func (d *Drill) refusedFirst(rng *rand.Rand) Exercise {
	t := d.first(words.Pair{})
	why := t.Meaning + " " + t.Do
	e := d.asked(rng, d.say.RefusedFirst(), why,
		Choice{ID: "apart", Text: d.say.RefusedFirstApart()},
		Choice{ID: "press", Text: d.say.RefusedFirstPress(), Reason: why, Grave: gravePass},
		Choice{ID: trapAgain, Text: d.say.RefusedFirstAgain(), Reason: why, Grave: graveAgain},
		Choice{ID: "second", Text: d.say.RefusedFirstSecond(), Reason: d.say.RefusedFirstSecondWhy(why)})
	return e
}

// zoneAtFirst asks about a zone lamp that is on in the probe: a loose part shows none, so
// that something is stuck or wrongly set.
func (d *Drill) zoneAtFirst(rng *rand.Rand) Exercise {
	on := words.Pair{Arrival: true, Zone: true}
	t := d.first(on)
	why := t.Meaning + " " + t.Do
	return d.asked(rng, d.say.ZoneAtFirst(), why,
		Choice{ID: "refused", Text: d.say.ZoneAtFirstRefused()},
		Choice{ID: "good", Text: d.say.ZoneAtFirstGood(), Reason: d.say.ZoneAtFirstGoodWhy(why), Grave: gravePass},
		Choice{ID: "loose", Text: d.say.ZoneAtFirstLoose(), Reason: d.say.ZoneAtFirstLooseWhy(why)},
		Choice{ID: "short", Text: d.say.ZoneAtFirstShort(), Reason: why})
}

func (d *Drill) handBetween(rng *rand.Rand) Exercise {
	why := d.say.HandBetweenWhy(d.byHand())
	return d.asked(rng, d.say.HandBetween(), why,
		Choice{ID: "no", Text: d.say.HandBetweenNo()},
		Choice{ID: "still", Text: d.say.HandBetweenStill(), Reason: why, Grave: graveHand},
		Choice{ID: "weak", Text: d.say.HandBetweenWeak(), Reason: why, Grave: graveHand},
		Choice{ID: "arrival", Text: d.say.HandBetweenArrival(), Reason: why, Grave: graveHand})
}

// firstStory says why the probe refuses a row of the catalogue.
func (d *Drill) firstStory(e event) string {
	s := d.say.ProbeFindsNothing(*d.r.Probe.End)
	switch {
	case e.arrival != nil:
		s = d.say.ArrivalStuckInProbe(*e.arrival)
	case e.first.Zone:
		s = d.say.ZoneOnInProbe()
	}
	return d.say.FirstLookRefuses(s)
}
