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
	d.add(Safe, 1, "look/hand", d.handBetween)
}

// lookTopic is what the first look means: who is told its rule knows both answers.
const lookTopic = "look"

// first says what the plan says of a pair at the first look.
func (d *Drill) first(on words.Pair) words.FirstLookText {
	return words.AtFirstLook(d.p, d.r, on, words.One)
}

func (d *Drill) goesOn(rng *rand.Rand) Exercise {
	why := d.first(words.GoesOn).Meaning + " " + words.GoOnOnly
	return d.asked(rng, "In the probe, arrival comes on and zone stays off. What does that say?", why,
		Choice{ID: "on", Text: "The press may follow; the part is not judged yet"},
		Choice{ID: "good", Text: "The part is good", Reason: why, Grave: gravePass},
		Choice{ID: "tall", Text: "The part is too tall", Reason: "These lamps say so at the end of the push, and not in the probe. " + why},
		Choice{ID: "fault", Text: "The arrival signal is broken", Reason: why})
}

func (d *Drill) refusedFirst(rng *rand.Rand) Exercise {
	t := d.first(words.Pair{})
	why := t.Meaning + " " + t.Do
	e := d.asked(rng, "The probe has ended, and both lamps are off. What happens to the part?", why,
		Choice{ID: "apart", Text: "The press does not take place; the part is set apart"},
		Choice{ID: "press", Text: "It is pressed by hand mode, because only the probe failed", Reason: why, Grave: gravePass},
		Choice{ID: trapAgain, Text: "The probe is left out, and the part is pressed once more", Reason: why, Grave: graveAgain},
		Choice{ID: "second", Text: "Nothing yet: the second look decides", Reason: "There is no second look after a refusal. " + why})
	return e
}

func (d *Drill) handBetween(rng *rand.Rand) Exercise {
	why := "After the probe the ram moves on by itself, with the full push. " + d.byHand()
	return d.asked(rng, "The ram stands still in the probe. May a hand go into the work space now?", why,
		Choice{ID: "no", Text: "No: the ram goes on by itself"},
		Choice{ID: "still", Text: "Yes, as long as it stands still", Reason: why, Grave: graveHand},
		Choice{ID: "weak", Text: "Yes, the probe pushes with little force", Reason: why, Grave: graveHand},
		Choice{ID: "arrival", Text: "Yes, when arrival is on", Reason: why, Grave: graveHand})
}

// firstStory says why the probe refuses a row of the catalogue.
func (d *Drill) firstStory(e event) string {
	s := "Nothing stops the ram in the probe before its end at " + d.pos.At(*d.r.Probe.End) + ": arrival stays off."
	switch {
	case e.arrival != nil:
		s = "The arrival signal is stuck " + words.OnOff(*e.arrival) + ", in the probe already."
	case e.first.Zone:
		s = "Zone is on in the probe, where it must be off."
	}
	return s + " The first look refuses it, and the press does not take place."
}
