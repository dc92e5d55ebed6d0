package lesson

func (say Words) NobodyLookedWhy(again string) string {
	return "Nobody has judged this part, and no second push can do it. " + again
}

func (say Words) NobodyLooked() string {
	return "You were called away, and nobody has seen the lamps of this part. What happens to it?"
}

func (say Words) NobodyLookedHold() string { return "Hold it back: nobody knows what it is" }

func (say Words) NobodyLookedAgain() string { return "Press it again, and look this time" }

func (say Words) NobodyLookedBefore() string { return "Pass it on: the part before it was good" }

func (say Words) NobodyLookedBeforeWhy(why string) string {
	return "The part before says nothing about this one. " + why
}

func (say Words) NobodyLookedEye() string { return "Pass it on, if it looks right" }

func (say Words) NobodyLookedEyeWhy(heightHigh float64, why string) string {
	return "The drawing allows " + say.Length(heightHigh) + " from the shortest to the tallest part: measure it, do not guess. " + why
}

func (say Words) StoppedHalfwayWhy() string {
	return "The lamps judge a part at the end of a whole push, and this push had no end. The insert may have been moved already: what a second push shows is not sure."
}

func (say Words) StoppedHalfway() string {
	return "The station stopped in the middle of a push. Now it runs again. What happens to the part in the nest?"
}

func (say Words) StoppedHalfwayOut() string { return "It is not used before somebody has measured it" }

func (say Words) StoppedHalfwayAgain() string { return "It is pressed once more from the start" }

func (say Words) StoppedHalfwayLamps() string { return "It is passed on, if both lamps are on now" }

func (say Words) StoppedHalfwayHammer() string {
	return "The insert is knocked in by hand, and the part is passed on"
}

func (say Words) StoppedHalfwayHammerWhy(why string) string {
	return "Nobody could say afterwards how it was pressed. " + why
}

func (say Words) MixedUpWhy(again string) string {
	return "Nobody can tell any more which part it is. Only a measurement finds it. " + again
}

func (say Words) MixedUp() string {
	return "A refused part has fallen into the box of good parts. What do you do?"
}

func (say Words) MixedUpBox() string { return "Hold the whole box back, and ask who may sort it" }

func (say Words) MixedUpOne() string { return "Take any one part out, so that the number is right" }

func (say Words) MixedUpAgain() string { return "Press the whole box again: the lamps will find it" }

func (say Words) MixedUpLeave() string { return "Leave it: one part in a box does no harm" }

func (say Words) ChipFoundWhy() string {
	return "A chip lifts the next part as well. It is taken out when the station is stopped."
}

func (say Words) ChipFound() string { return "You see a chip in the nest. What do you do?" }

func (say Words) ChipFoundStop() string {
	return "Stop the station first, and only then remove the chip"
}

func (say Words) ChipFoundReach() string { return "Pick it out while the ram is on its way up" }

func (say Words) ChipFoundFlat() string { return "Leave it: the next push presses it flat" }

func (say Words) ChipFoundFlatWhy(why string) string {
	return why + " Pressed flat, it is only harder to find."
}

func (say Words) ChipFoundTell() string {
	return "Go on, and tell the next shift, who can remove it at their start"
}

func (say Words) PressedTwice() string {
	return "A refused part was pressed a second time by mistake. Now both lamps are on. What is it?"
}

func (say Words) PressedTwiceRefused() string { return "It stays a refused part" }

func (say Words) PressedTwicePass() string { return "A good part: the last push counts" }

func (say Words) PressedTwiceThird() string { return "Not known yet: a third push decides" }

func (say Words) PressedTwiceHalf() string {
	return "A good part that was only not pressed home the first time"
}

func (say Words) BeforeTheFirstWhy() string {
	return "The lamps judge parts only when they have been tested themselves: that is what the shift check does."
}

func (say Words) BeforeTheFirst() string {
	return "A shift begins. What comes before the first part that counts?"
}

func (say Words) BeforeTheFirstCheck() string {
	return "The shift check: each push on its list, and each must show what is written there"
}

func (say Words) BeforeTheFirstWarm() string {
	return "Ten parts to warm up, which count if both lamps come on"
}

func (say Words) BeforeTheFirstWarmWhy(why string) string {
	return "Parts that are pressed before the check are judged by lamps that nobody has tested. " + why
}

func (say Words) BeforeTheFirstNone() string { return "Nothing, if the last shift had no trouble" }

func (say Words) BeforeTheFirstNoneWhy(why string) string {
	return "Nest, tool and set values may have changed since. " + why
}

func (say Words) BeforeTheFirstLast() string { return "A look at the last part of the shift before" }

func (say Words) BeforeTheFirstLastWhy(why string) string {
	return "One part from before says nothing about the station now. " + why
}

func (say Words) CheckFailsWhy() string {
	return "The lamps pass what they must refuse. What they show of parts cannot be trusted either."
}

func (say Words) CheckFails() string {
	return "In the shift check, a sample that must be refused shows both lamps. What do you do?"
}

func (say Words) CheckFailsStop() string { return "Stop. Press no part, and call the setter" }

func (say Words) CheckFailsOther() string {
	return "Take other samples until one is refused, and start"
}

func (say Words) CheckFailsNote() string { return "Write it down, and start" }

func (say Words) CheckFailsWiden() string {
	return "Move the zone a little until the sample is refused, and start"
}

func (say Words) SinceWhenWhy() string {
	return "Nobody knows when the fault began. It may have been there right after the last check that was right, so all parts since then are in question: the lamps that passed them may have been wrong."
}

func (say Words) SinceWhen() string { return "A shift check fails. Which parts may be bad?" }

func (say Words) SinceWhenSince() string {
	return "All that were pressed since the last check that was right"
}

func (say Words) SinceWhenNext() string { return "The next ones, which are not pressed yet" }

func (say Words) SinceWhenTen() string { return "Only the last ten" }

func (say Words) SinceWhenRefused() string { return "Those that were refused and set apart since then" }

func (say Words) AfterAChangeWhy() string {
	return "After a change of tool, nest or lot the lamps are tested first: until then a part with both lamps is not sure."
}

func (say Words) AfterAChange() string {
	return "The tool was changed. The first part after that shows both lamps. What happens to it?"
}

func (say Words) AfterAChangeKeep() string {
	return "Keep it back until the checks after a change have passed"
}

func (say Words) AfterAChangePass() string { return "Pass it on: both lamps are on" }

func (say Words) AfterAChangeAgain() string { return "Press it again, to see the same lamps twice" }

func (say Words) AfterAChangeAgree() string {
	return "Press three more, and pass all four on if they agree with one another"
}

func (say Words) AfterAChangeAgreeWhy(why string) string {
	return "Parts that agree may all be wrong in the same way. " + why
}

func (say Words) EmptyPassesWhy() string {
	return "Without an insert one lamp at least must stay off. With both on, the station would pass a part that has no insert."
}

func (say Words) EmptyPasses() string {
	return "The shift check has a push without an insert, and both lamps come on. What does it mean?"
}

func (say Words) EmptyPassesStop() string {
	return "The station would pass a part without an insert: stop"
}

func (say Words) EmptyPassesWell() string { return "All is well: both lamps are on, so start" }

func (say Words) EmptyPassesCount() string {
	return "Nothing: without an insert the lamps do not count, so start"
}

func (say Words) EmptyPassesOnce() string {
	return "It can happen once: start, and look again tomorrow"
}

func (say Words) MayRaise() string {
	return "Some inserts stop before their seat. May you raise the setting by one step?"
}

func (say Words) MayRaiseNo() string { return "No: it is part of the plan" }

func (say Words) MayRaiseStep() string { return "Yes: one step is little" }

func (say Words) MayRaiseGood() string { return "If the next part then shows both lamps" }

func (say Words) MayRaiseBack() string { return "And set it back at the end of the shift" }

func (say Words) MayWiden() string {
	return "Every tenth part is refused, just outside the zone. May you make the zone a little wider?"
}

func (say Words) MayWidenNo() string { return "No: the zone is part of the plan" }

func (say Words) MayWidenLittle() string { return "Yes, if it is only a little" }

func (say Words) MayWidenLook() string { return "If the refused parts look good" }

func (say Words) MayWidenTell() string { return "And write it into the shift book" }

func (say Words) FoundChangedWhy() string {
	return "The parts since then were judged by another zone than that of the plan. Setting it right does not judge them anew."
}

func (say Words) FoundChanged() string {
	return "The zone is not set as the plan says, and nobody knows since when. What do you do?"
}

func (say Words) FoundChangedStop() string {
	return "Stop, hold back the parts of that time, and report it"
}

func (say Words) FoundChangedRight() string { return "Set it right, and go on" }

func (say Words) FoundChangedLeave() string { return "Leave it and go on: the parts were good with it" }

func (say Words) FoundChangedPlan() string { return "Write into the plan what is set" }

func (say Words) WhoseWordWhy() string {
	return "What your own works instruct goes before this drill, and the two should not differ for long."
}

func (say Words) WhoseWord() string {
	return "This drill and the instructions of your works say different things. What do you follow at the station?"
}

func (say Words) WhoseWordWorks() string {
	return "The instructions of the works. You report that the two differ"
}

func (say Words) WhoseWordDrill() string { return "This drill: it was computed" }

func (say Words) WhoseWordLast() string { return "What the last shift did" }

func (say Words) WhoseWordQuick() string { return "Whichever of the two is quicker" }

func (say Words) InAHurryWhy() string {
	return "Several refused parts in a row have one cause, and the next part will have it too. A late order does not change that."
}

func (say Words) InAHurry() string {
	return "Four parts in a row were refused. The order is late, and somebody tells you to go on. What do you do?"
}

func (say Words) InAHurryStop() string {
	return "Press nothing, and say why. Call whoever is in charge"
}

func (say Words) InAHurryGoOn() string { return "Set every refused part apart, and go on" }

func (say Words) InAHurryPass() string { return "Pass them on with a note, and go on" }

func (say Words) InAHurryForce() string { return "Go on with the setting one step higher" }

func (say Words) ForcedInputWhy() string {
	return "An input that is forced shows the same lamp whatever the part is. Every forced input is removed, and signed for, before parts are pressed."
}

func (say Words) ForcedInput() string {
	return "For a test somebody forced a signal on by hand. The test is over. What comes before the next part?"
}

func (say Words) ForcedInputRemoved() string {
	return "The forcing is removed, and somebody signs for it"
}

func (say Words) ForcedInputLook() string { return "Nothing, if the lamps look as always" }

func (say Words) ForcedInputNote() string { return "A note on the station is enough" }

func (say Words) ForcedInputGood() string {
	return "One good part: if it shows both lamps, all is well"
}

func (say Words) WhichCardWhy() string {
	return "The station is set by the revision that was issued last. An older card may tell other lamps."
}

func (say Words) WhichCard() string {
	return "The card on the wall is of an older revision than the plan at the station. What do you do?"
}

func (say Words) WhichCardNewest() string {
	return "Have it replaced before anybody judges parts by it"
}

func (say Words) WhichCardWall() string { return "Judge by the card: everybody knows it" }

func (say Words) WhichCardBoth() string {
	return "Leave it there: a plan does not change much from one revision to the next"
}

func (say Words) WhichCardPen() string { return "Write the new letter on the old card" }

func (say Words) WhichCardPenWhy(why string) string {
	return "The letter says which figures stand on a card, and these stay the old ones. " + why
}
