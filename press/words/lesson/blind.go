package lesson

func (say Words) NoFaultIsJudged() string {
	return "The fault catalogue of this plan has nothing that the lamps judge."
}

func (say Words) WouldLampsFind(word string) string {
	return "Would the two lamps find this fault: " + word + "?"
}

func (say Words) WouldLampsRefuse(word string) string {
	return "Fault: " + word + ". Would the lamps refuse what is in the nest, and so show that something is wrong?"
}

func (say Words) BlindFound() string { return "Yes, always or nearly always" }

func (say Words) BlindLuck() string { return "Now and then: some are found, and some pass" }

func (say Words) BlindUnfound() string { return "Never, or nearly never" }

func (say Words) RefusedAsOftenAsGood(story string, detection float64) string {
	return story + " It is refused in " + say.OneIn(detection) + ". A good part is refused as often, so that does not find the fault."
}

func (say Words) LooseRestsAsTight() string {
	return " A loose insert comes to rest where a tight one does"
}

func (say Words) AlikeButProbeMay(s string, highestSetting float64) string {
	return s + ": these lamps cannot tell them apart. " + say.ProbeMay(highestSetting)
}

func (say Words) AlikeToTheLamps(s string) string {
	return s + ": these lamps cannot tell them apart."
}

func (say Words) StuckLampIsSeenBefore() string {
	return " A lamp that is stuck on is found by looking before the push: it must be off then."
}

func (say Words) GapIsSmall(gap float64) string {
	return " A gap of " + say.Length(gap) + " is small beside what the window lets pass."
}

func (say Words) WhichAreNeverFound() string {
	return "Which of these do the two lamps never find, or nearly never?"
}

func (say Words) StoppedRamAt(word string, at string) string {
	return word + ", the ram stopped at " + at
}
