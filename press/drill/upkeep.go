package drill

import (
	"math/rand/v2"
	"slices"

	"ramplan/press"
	"ramplan/press/words"
)

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
	why := d.say.NobodyLookedWhy(d.again())
	return d.asked(rng, d.say.NobodyLooked(), why+d.say.Common(),
		Choice{ID: "hold", Text: d.say.NobodyLookedHold()},
		Choice{ID: trapAgain, Text: d.say.NobodyLookedAgain(), Reason: why, Grave: graveAgain},
		Choice{ID: "before", Text: d.say.NobodyLookedBefore(), Reason: d.say.NobodyLookedBeforeWhy(why), Grave: graveUnseen},
		Choice{ID: "eye", Text: d.say.NobodyLookedEye(), Reason: d.say.NobodyLookedEyeWhy(d.p.Requirement.HeightHigh-d.p.Requirement.HeightLow, why), Grave: graveUnseen})
}

func (d *Drill) stoppedHalfway(rng *rand.Rand) Exercise {
	why := d.say.StoppedHalfwayWhy()
	return d.asked(rng, d.say.StoppedHalfway(), why+d.say.Common(),
		Choice{ID: "out", Text: d.say.StoppedHalfwayOut()},
		Choice{ID: trapAgain, Text: d.say.StoppedHalfwayAgain(), Reason: why, Grave: graveAgain},
		Choice{ID: "lamps", Text: d.say.StoppedHalfwayLamps(), Reason: why, Grave: graveUnseen},
		Choice{ID: "hammer", Text: d.say.StoppedHalfwayHammer(), Reason: d.say.StoppedHalfwayHammerWhy(why), Grave: graveUnseen})
}

func (d *Drill) mixedUp(rng *rand.Rand) Exercise {
	why := d.say.MixedUpWhy(d.again())
	return d.asked(rng, d.say.MixedUp(), why+d.say.Common(),
		Choice{ID: "box", Text: d.say.MixedUpBox()},
		Choice{ID: "one", Text: d.say.MixedUpOne(), Reason: why, Grave: gravePass},
		Choice{ID: trapAgain, Text: d.say.MixedUpAgain(), Reason: why, Grave: graveAgain},
		Choice{ID: "leave", Text: d.say.MixedUpLeave(), Reason: why, Grave: gravePass})
}

func (d *Drill) chipFound(rng *rand.Rand) Exercise {
	why := d.say.ChipFoundWhy()
	return d.asked(rng, d.say.ChipFound(), why+d.say.Common(),
		Choice{ID: "stop", Text: d.say.ChipFoundStop()},
		Choice{ID: "reach", Text: d.say.ChipFoundReach(), Reason: why + " " + d.byHand(), Grave: graveHand},
		Choice{ID: "flat", Text: d.say.ChipFoundFlat(), Reason: d.say.ChipFoundFlatWhy(why), Grave: graveGoOn},
		Choice{ID: "tell", Text: d.say.ChipFoundTell(), Reason: why, Grave: graveGoOn})
}

// againIsGood tells whether a part that was pressed before shows both lamps.
func (d *Drill) againIsGood() bool {
	i := slices.IndexFunc(d.r.Faults, func(f press.FaultRow) bool { return !f.Own && f.Name == press.RowAlreadyPressed && f.Arrival != nil })
	return i >= 0 && d.shows(d.eventOf(i)) == words.Pair{Arrival: true, Zone: true}
}

func (d *Drill) pressedTwice(rng *rand.Rand) Exercise {
	return d.asked(rng, d.say.PressedTwice(), d.again(),
		Choice{ID: "refused", Text: d.say.PressedTwiceRefused()},
		Choice{ID: trapPass, Text: d.say.PressedTwicePass(), Reason: d.again(), Grave: gravePass},
		Choice{ID: "third", Text: d.say.PressedTwiceThird(), Reason: d.again(), Grave: graveAgain},
		Choice{ID: "half", Text: d.say.PressedTwiceHalf(), Reason: d.again(), Grave: gravePass})
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
	why := d.say.BeforeTheFirstWhy()
	return d.asked(rng, d.say.BeforeTheFirst(), why+d.say.Common(),
		Choice{ID: "check", Text: d.say.BeforeTheFirstCheck()},
		Choice{ID: "warm", Text: d.say.BeforeTheFirstWarm(), Reason: d.say.BeforeTheFirstWarmWhy(why), Grave: graveUnseen},
		Choice{ID: "none", Text: d.say.BeforeTheFirstNone(), Reason: d.say.BeforeTheFirstNoneWhy(why), Grave: graveUnseen},
		Choice{ID: "last", Text: d.say.BeforeTheFirstLast(), Reason: d.say.BeforeTheFirstLastWhy(why), Grave: graveUnseen})
}

func (d *Drill) checkFails(rng *rand.Rand) Exercise {
	why := d.say.CheckFailsWhy()
	return d.asked(rng, d.say.CheckFails(), why+d.say.Common(),
		Choice{ID: "stop", Text: d.say.CheckFailsStop()},
		Choice{ID: "other", Text: d.say.CheckFailsOther(), Reason: why, Grave: graveGoOn},
		Choice{ID: "note", Text: d.say.CheckFailsNote(), Reason: why, Grave: graveGoOn},
		Choice{ID: trapWiden, Text: d.say.CheckFailsWiden(), Reason: why + " " + d.widen(), Grave: graveChange})
}

func (d *Drill) sinceWhen(rng *rand.Rand) Exercise {
	why := d.say.SinceWhenWhy()
	return d.asked(rng, d.say.SinceWhen(), why+d.say.Common(),
		Choice{ID: "since", Text: d.say.SinceWhenSince()},
		Choice{ID: "next", Text: d.say.SinceWhenNext(), Reason: why},
		Choice{ID: "ten", Text: d.say.SinceWhenTen(), Reason: why},
		Choice{ID: "refused", Text: d.say.SinceWhenRefused(), Reason: why})
}

func (d *Drill) afterAChange(rng *rand.Rand) Exercise {
	why := d.say.AfterAChangeWhy()
	return d.asked(rng, d.say.AfterAChange(), why+d.say.Common(),
		Choice{ID: "keep", Text: d.say.AfterAChangeKeep()},
		Choice{ID: "pass", Text: d.say.AfterAChangePass(), Reason: why, Grave: graveUnseen},
		Choice{ID: trapAgain, Text: d.say.AfterAChangeAgain(), Reason: d.again(), Grave: graveAgain},
		Choice{ID: "agree", Text: d.say.AfterAChangeAgree(), Reason: d.say.AfterAChangeAgreeWhy(why), Grave: graveUnseen})
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
	why := d.say.EmptyPassesWhy()
	return d.asked(rng, d.say.EmptyPasses(), why,
		Choice{ID: "stop", Text: d.say.EmptyPassesStop()},
		Choice{ID: "well", Text: d.say.EmptyPassesWell(), Reason: why, Grave: graveGoOn},
		Choice{ID: "count", Text: d.say.EmptyPassesCount(), Reason: why, Grave: graveGoOn},
		Choice{ID: "once", Text: d.say.EmptyPassesOnce(), Reason: why, Grave: graveGoOn})
}

// changeTopic is that only one person changes what the plan says.
const changeTopic = "change"

func (d *Drill) changeItems() {
	d.add(Act, 1, "change/setting", d.mayRaise, changeTopic)
	d.add(Act, 1, "change/zone", d.mayWiden, changeTopic)
	d.add(Act, 1, "change/found", d.foundChanged, sinceTopic)
}

func (d *Drill) mayRaise(rng *rand.Rand) Exercise {
	return d.asked(rng, d.say.MayRaise(), d.raise(),
		Choice{ID: "no", Text: d.say.MayRaiseNo()},
		Choice{ID: "step", Text: d.say.MayRaiseStep(), Reason: d.raise(), Grave: graveChange},
		Choice{ID: "good", Text: d.say.MayRaiseGood(), Reason: d.raise(), Grave: graveChange},
		Choice{ID: "back", Text: d.say.MayRaiseBack(), Reason: d.raise(), Grave: graveChange})
}

func (d *Drill) mayWiden(rng *rand.Rand) Exercise {
	return d.asked(rng, d.say.MayWiden(), d.widen(),
		Choice{ID: "no", Text: d.say.MayWidenNo()},
		Choice{ID: "little", Text: d.say.MayWidenLittle(), Reason: d.widen(), Grave: graveChange},
		Choice{ID: "look", Text: d.say.MayWidenLook(), Reason: d.widen(), Grave: graveChange},
		Choice{ID: "tell", Text: d.say.MayWidenTell(), Reason: d.widen(), Grave: graveChange})
}

func (d *Drill) foundChanged(rng *rand.Rand) Exercise {
	why := d.say.FoundChangedWhy()
	return d.asked(rng, d.say.FoundChanged(), why+d.say.Common(),
		Choice{ID: "stop", Text: d.say.FoundChangedStop()},
		Choice{ID: "right", Text: d.say.FoundChangedRight(), Reason: why, Grave: graveGoOn},
		Choice{ID: "leave", Text: d.say.FoundChangedLeave(), Reason: why, Grave: graveGoOn},
		Choice{ID: "plan", Text: d.say.FoundChangedPlan(), Reason: d.widen()})
}

func (d *Drill) whoseWord(rng *rand.Rand) Exercise {
	why := d.say.WhoseWordWhy()
	return d.asked(rng, d.say.WhoseWord(), why,
		Choice{ID: "works", Text: d.say.WhoseWordWorks()},
		Choice{ID: "drill", Text: d.say.WhoseWordDrill(), Reason: why},
		Choice{ID: "last", Text: d.say.WhoseWordLast(), Reason: why},
		Choice{ID: "quick", Text: d.say.WhoseWordQuick(), Reason: why})
}

func (d *Drill) inAHurry(rng *rand.Rand) Exercise {
	why := d.say.InAHurryWhy()
	return d.asked(rng, d.say.InAHurry(), why+d.say.Common(),
		Choice{ID: "stop", Text: d.say.InAHurryStop()},
		Choice{ID: trapGoOn, Text: d.say.InAHurryGoOn(), Reason: why, Grave: graveRow},
		Choice{ID: trapPass, Text: d.say.InAHurryPass(), Reason: why, Grave: gravePass},
		Choice{ID: trapForce, Text: d.say.InAHurryForce(), Reason: why + " " + d.raise(), Grave: graveChange})
}

func (d *Drill) forcedInput(rng *rand.Rand) Exercise {
	why := d.say.ForcedInputWhy()
	return d.asked(rng, d.say.ForcedInput(), why,
		Choice{ID: "removed", Text: d.say.ForcedInputRemoved()},
		Choice{ID: "look", Text: d.say.ForcedInputLook(), Reason: why, Grave: graveGoOn},
		Choice{ID: "note", Text: d.say.ForcedInputNote(), Reason: why, Grave: graveGoOn},
		Choice{ID: "good", Text: d.say.ForcedInputGood(), Reason: why, Grave: graveGoOn})
}

func (d *Drill) whichCard(rng *rand.Rand) Exercise {
	why := d.say.WhichCardWhy()
	return d.asked(rng, d.say.WhichCard(), why+d.say.Common(),
		Choice{ID: "newest", Text: d.say.WhichCardNewest()},
		Choice{ID: "wall", Text: d.say.WhichCardWall(), Reason: why},
		Choice{ID: "both", Text: d.say.WhichCardBoth(), Reason: why},
		Choice{ID: "pen", Text: d.say.WhichCardPen(), Reason: d.say.WhichCardPenWhy(why)})
}
