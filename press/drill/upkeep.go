package drill

import (
	"math/rand/v2"
	"slices"

	"ramplan/press"
	"ramplan/press/words"
)

// common ends what rests on no figure of the plan.
const common = " Common practice."

// upkeepItems: what becomes of parts that nobody has judged, what comes before the first
// part, what is not changed, and whose word counts.
func (d *Drill) upkeepItems() {
	d.partItems()
	d.firstItems()
	d.changeItems()
	d.add(Act, 1, "rule/works", d.whoseWord)
	d.add(Act, 1, "rule/hurry", d.inAHurry, rowTopicOfAll)
	d.add(Act, 1, "rule/forced", d.forcedInput)
	d.add(Act, 1, "rule/card", d.whichCard)
}

func (d *Drill) partItems() {
	d.add(Act, 1, "part/away", d.nobodyLooked)
	d.add(Act, 1, "part/stopped", d.stoppedHalfway)
	d.add(Act, 1, "part/mixed", d.mixedUp)
	d.add(Act, 1, "part/chip", d.chipFound)
	if d.againIsGood() {
		d.add(Act, 1, "part/twice", d.pressedTwice)
	}
}

func (d *Drill) nobodyLooked(rng *rand.Rand) Exercise {
	why := "Nobody has judged this part, and no second push can do it. " + d.again()
	return d.asked(rng, "You were called away, and nobody has seen the lamps of this part. What happens to it?", why+common,
		Choice{ID: "hold", Text: "Hold it back: nobody knows what it is"},
		Choice{ID: trapAgain, Text: "Press it again, and look this time", Reason: why, Grave: graveAgain},
		Choice{ID: "before", Text: "Pass it on: the part before it was good", Reason: "The part before says nothing about this one. " + why, Grave: graveUnseen},
		Choice{ID: "eye", Text: "Pass it on, if it looks right", Reason: "The drawing allows " + d.pos.Length(d.p.Requirement.HeightHigh-d.p.Requirement.HeightLow) + " from the shortest to the tallest part: measure it, do not guess. " + why, Grave: graveUnseen})
}

func (d *Drill) stoppedHalfway(rng *rand.Rand) Exercise {
	why := "The lamps judge a part at the end of a whole push, and this push had no end. The insert may have been moved already: what a second push shows is not sure."
	return d.asked(rng, "The station stopped in the middle of a push. Now it runs again. What happens to the part in the nest?", why+common,
		Choice{ID: "out", Text: "It is not used before somebody has measured it"},
		Choice{ID: trapAgain, Text: "It is pressed once more from the start", Reason: why, Grave: graveAgain},
		Choice{ID: "lamps", Text: "It is passed on, if both lamps are on now", Reason: why, Grave: graveUnseen},
		Choice{ID: "hammer", Text: "The insert is knocked in by hand, and the part is passed on", Reason: "Nobody could say afterwards how it was pressed. " + why, Grave: graveUnseen})
}

func (d *Drill) mixedUp(rng *rand.Rand) Exercise {
	why := "Nobody can tell any more which part it is. Only a measurement finds it. " + d.again()
	return d.asked(rng, "A refused part has fallen into the box of good parts. What do you do?", why+common,
		Choice{ID: "box", Text: "Hold the whole box back, and ask who may sort it"},
		Choice{ID: "one", Text: "Take any one part out, so that the number is right", Reason: why, Grave: gravePass},
		Choice{ID: trapAgain, Text: "Press the whole box again: the lamps will find it", Reason: why, Grave: graveAgain},
		Choice{ID: "leave", Text: "Leave it: one part in a box does no harm", Reason: why, Grave: gravePass})
}

func (d *Drill) chipFound(rng *rand.Rand) Exercise {
	why := "A chip lifts the next part as well. It is taken out when the station is stopped."
	return d.asked(rng, "You see a chip in the nest. What do you do?", why+common,
		Choice{ID: "stop", Text: "Stop the station first, and only then remove the chip"},
		Choice{ID: "reach", Text: "Pick it out while the ram is on its way up", Reason: why + " " + d.byHand(), Grave: graveHand},
		Choice{ID: "flat", Text: "Leave it: the next push presses it flat", Reason: why + " Pressed flat, it is only harder to find.", Grave: graveGoOn},
		Choice{ID: "tell", Text: "Go on, and tell the next shift, who can remove it at their start", Reason: why, Grave: graveGoOn})
}

// againIsGood tells whether a part that was pressed before shows both lamps.
func (d *Drill) againIsGood() bool {
	i := slices.IndexFunc(d.r.Faults, func(f press.FaultRow) bool { return !f.Own && f.Name == press.RowAlreadyPressed && f.Arrival != nil })
	return i >= 0 && d.shows(d.eventOf(i)) == words.Pair{Arrival: true, Zone: true}
}

func (d *Drill) pressedTwice(rng *rand.Rand) Exercise {
	return d.asked(rng, "A refused part was pressed a second time by mistake. Now both lamps are on. What is it?", d.again(),
		Choice{ID: "refused", Text: "It stays a refused part"},
		Choice{ID: trapPass, Text: "A good part: the last push counts", Reason: d.again(), Grave: gravePass},
		Choice{ID: "third", Text: "Not known yet: a third push decides", Reason: d.again(), Grave: graveAgain},
		Choice{ID: "half", Text: "A good part that was only not pressed home the first time", Reason: d.again(), Grave: gravePass})
}

// sinceTopic is how far back parts are held: who is told it knows it elsewhere.
const sinceTopic = "since"

func (d *Drill) firstItems() {
	d.add(Act, 1, "first/check", d.beforeTheFirst)
	d.add(Act, 1, "first/fails", d.checkFails)
	d.add(Act, 1, "first/since", d.sinceWhen, sinceTopic)
	if both := d.r.Verdict.Table.Words(true, true); slices.Equal(both, []string{press.Good}) {
		d.add(Act, 1, "first/change", d.afterAChange)
	}
	if d.emptyIsRefused() {
		d.add(Act, 1, "first/empty", d.emptyPasses, "lamps/"+press.Missing)
	}
}

func (d *Drill) beforeTheFirst(rng *rand.Rand) Exercise {
	why := "The lamps judge parts only when they have been tested themselves: that is what the shift check does."
	return d.asked(rng, "A shift begins. What comes before the first part that counts?", why+common,
		Choice{ID: "check", Text: "The shift check: each push on its list, and each must show what is written there"},
		Choice{ID: "warm", Text: "Ten parts to warm up, which count if both lamps come on", Reason: "Parts that are pressed before the check are judged by lamps that nobody has tested. " + why, Grave: graveUnseen},
		Choice{ID: "none", Text: "Nothing, if the last shift had no trouble", Reason: "Nest, tool and set values may have changed since. " + why, Grave: graveUnseen},
		Choice{ID: "last", Text: "A look at the last part of the shift before", Reason: "One part from before says nothing about the station now. " + why, Grave: graveUnseen})
}

func (d *Drill) checkFails(rng *rand.Rand) Exercise {
	why := "The lamps pass what they must refuse. What they show of parts cannot be trusted either."
	return d.asked(rng, "In the shift check, a sample that must be refused shows both lamps. What do you do?", why+common,
		Choice{ID: "stop", Text: "Stop. Press no part, and call the setter"},
		Choice{ID: "other", Text: "Take other samples until one is refused, and start", Reason: why, Grave: graveGoOn},
		Choice{ID: "note", Text: "Write it down, and start", Reason: why, Grave: graveGoOn},
		Choice{ID: trapWiden, Text: "Move the zone a little until the sample is refused, and start", Reason: why + " " + d.widen(), Grave: graveChange})
}

func (d *Drill) sinceWhen(rng *rand.Rand) Exercise {
	why := "Nobody knows when the fault began. It may have been there right after the last check that was right, so all parts since then are in question: the lamps that passed them may have been wrong."
	return d.asked(rng, "A shift check fails. Which parts may be bad?", why+common,
		Choice{ID: "since", Text: "All that were pressed since the last check that was right"},
		Choice{ID: "next", Text: "The next ones, which are not pressed yet", Reason: why},
		Choice{ID: "ten", Text: "Only the last ten", Reason: why},
		Choice{ID: "refused", Text: "Those that were refused and set apart since then", Reason: why})
}

func (d *Drill) afterAChange(rng *rand.Rand) Exercise {
	why := "After a change of tool, nest or lot the lamps are tested first: until then a part with both lamps is not sure."
	return d.asked(rng, "The tool was changed. The first part after that shows both lamps. What happens to it?", why+common,
		Choice{ID: "keep", Text: "Keep it back until the checks after a change have passed"},
		Choice{ID: "pass", Text: "Pass it on: both lamps are on", Reason: why, Grave: graveUnseen},
		Choice{ID: trapAgain, Text: "Press it again, to see the same lamps twice", Reason: d.again(), Grave: graveAgain},
		Choice{ID: "agree", Text: "Press three more, and pass all four on if they agree with one another", Reason: "Parts that agree may all be wrong in the same way. " + why, Grave: graveUnseen})
}

// emptyIsRefused tells whether a push without an insert surely shows something else
// than both lamps.
func (d *Drill) emptyIsRefused() bool {
	i := slices.IndexFunc(d.r.Faults, func(f press.FaultRow) bool { return !f.Own && f.Name == press.RowMissing && f.Arrival != nil })
	if i < 0 || words.NotLookedAt(d.p, d.r.Faults[i]) || d.r.Faults[i].Verdict == press.EarlyContact {
		return false
	}
	return d.found(d.r.Faults[i]) == foundID && d.shows(d.eventOf(i)) != words.Pair{Arrival: true, Zone: true}
}

func (d *Drill) emptyPasses(rng *rand.Rand) Exercise {
	why := "Without an insert one lamp at least must stay off. With both on, the station would pass a part that has no insert."
	return d.asked(rng, "The shift check has a push without an insert, and both lamps come on. What does it mean?", why,
		Choice{ID: "stop", Text: "The station would pass a part without an insert: stop"},
		Choice{ID: "well", Text: "All is well: both lamps are on, so start", Reason: why, Grave: graveGoOn},
		Choice{ID: "count", Text: "Nothing: without an insert the lamps do not count, so start", Reason: why, Grave: graveGoOn},
		Choice{ID: "once", Text: "It can happen once: start, and look again tomorrow", Reason: why, Grave: graveGoOn})
}

// changeTopic is that only one person changes what the plan says.
const changeTopic = "change"

func (d *Drill) changeItems() {
	d.add(Act, 1, "change/setting", d.mayRaise, changeTopic)
	d.add(Act, 1, "change/zone", d.mayWiden, changeTopic)
	d.add(Act, 1, "change/found", d.foundChanged, sinceTopic)
}

func (d *Drill) mayRaise(rng *rand.Rand) Exercise {
	return d.asked(rng, "Some inserts stop before their seat. May you raise the setting by one step?", d.raise(),
		Choice{ID: "no", Text: "No: it is part of the plan"},
		Choice{ID: "step", Text: "Yes: one step is little", Reason: d.raise(), Grave: graveChange},
		Choice{ID: "good", Text: "If the next part then shows both lamps", Reason: d.raise(), Grave: graveChange},
		Choice{ID: "back", Text: "And set it back at the end of the shift", Reason: d.raise(), Grave: graveChange})
}

func (d *Drill) mayWiden(rng *rand.Rand) Exercise {
	return d.asked(rng, "Every tenth part is refused, just outside the zone. May you make the zone a little wider?", d.widen(),
		Choice{ID: "no", Text: "No: the zone is part of the plan"},
		Choice{ID: "little", Text: "Yes, if it is only a little", Reason: d.widen(), Grave: graveChange},
		Choice{ID: "look", Text: "If the refused parts look good", Reason: d.widen(), Grave: graveChange},
		Choice{ID: "tell", Text: "And write it into the shift book", Reason: d.widen(), Grave: graveChange})
}

func (d *Drill) foundChanged(rng *rand.Rand) Exercise {
	why := "The parts since then were judged by another zone than that of the plan. Setting it right does not judge them anew."
	return d.asked(rng, "The zone is not set as the plan says, and nobody knows since when. What do you do?", why+common,
		Choice{ID: "stop", Text: "Stop, hold back the parts of that time, and report it"},
		Choice{ID: "right", Text: "Set it right, and go on", Reason: why, Grave: graveGoOn},
		Choice{ID: "leave", Text: "Leave it and go on: the parts were good with it", Reason: why, Grave: graveGoOn},
		Choice{ID: "plan", Text: "Write into the plan what is set", Reason: d.widen()})
}

func (d *Drill) whoseWord(rng *rand.Rand) Exercise {
	why := "What your own works instruct goes before this drill, and the two should not differ for long."
	return d.asked(rng, "This drill and the instructions of your works say different things. What do you follow at the station?", why,
		Choice{ID: "works", Text: "The instructions of the works. You report that the two differ"},
		Choice{ID: "drill", Text: "This drill: it was computed", Reason: why},
		Choice{ID: "last", Text: "What the last shift did", Reason: why},
		Choice{ID: "quick", Text: "Whichever of the two is quicker", Reason: why})
}

func (d *Drill) inAHurry(rng *rand.Rand) Exercise {
	why := "Several refused parts in a row have one cause, and the next part will have it too. A late order does not change that."
	return d.asked(rng, "Four parts in a row were refused. The order is late, and somebody tells you to go on. What do you do?", why+common,
		Choice{ID: "stop", Text: "Press nothing, and say why. Call whoever is in charge"},
		Choice{ID: trapGoOn, Text: "Set every refused part apart, and go on", Reason: why, Grave: graveRow},
		Choice{ID: trapPass, Text: "Pass them on with a note, and go on", Reason: why, Grave: gravePass},
		Choice{ID: trapForce, Text: "Go on with the setting one step higher", Reason: why + " " + d.raise(), Grave: graveChange})
}

func (d *Drill) forcedInput(rng *rand.Rand) Exercise {
	why := "An input that is forced shows the same lamp whatever the part is. Every forced input is removed, and signed for, before parts are pressed."
	return d.asked(rng, "For a test somebody forced a signal on by hand. The test is over. What comes before the next part?", why,
		Choice{ID: "removed", Text: "The forcing is removed, and somebody signs for it"},
		Choice{ID: "look", Text: "Nothing, if the lamps look as always", Reason: why, Grave: graveGoOn},
		Choice{ID: "note", Text: "A note on the station is enough", Reason: why, Grave: graveGoOn},
		Choice{ID: "good", Text: "One good part: if it shows both lamps, all is well", Reason: why, Grave: graveGoOn})
}

func (d *Drill) whichCard(rng *rand.Rand) Exercise {
	why := "The station is set by the revision that was issued last. An older card may tell other lamps."
	return d.asked(rng, "The card on the wall is of an older revision than the plan at the station. What do you do?", why+common,
		Choice{ID: "newest", Text: "Have it replaced before anybody judges parts by it"},
		Choice{ID: "wall", Text: "Judge by the card: everybody knows it", Reason: why},
		Choice{ID: "both", Text: "Leave it there: a plan does not change much from one revision to the next", Reason: why},
		Choice{ID: "pen", Text: "Write the new letter on the old card", Reason: "The letter says which figures stand on a card, and these stay the old ones. " + why})
}
