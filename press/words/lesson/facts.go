package lesson

func (say Words) TallerThanANominalPart() string { return " taller than a nominal part." }

func (say Words) ShorterThanANominalPart() string { return " shorter than a nominal part." }

func (say Words) ItStands(size float64, way string) string {
	return "It stands " + say.Length(size) + way
}

func (say Words) TheChipIsThick(chip float64) string {
	return "The chip is " + say.Length(chip) + " thick."
}

func (say Words) TheGapIs(gap float64) string { return "The gap is " + say.Length(gap) + "." }

func (say Words) TheNestHasGivenWay(nestWear float64) string {
	return "The nest has given way by " + say.Length(nestWear) + "."
}

func (say Words) TheRamWouldBeStopped(at string) string {
	return "The ram would be stopped at " + at + "."
}

func (say Words) TheToolWouldMeetIt(touch float64, start float64) string {
	return "The tool would meet it at " + say.At(touch) + "; the fast approach ends and the push begins at " + say.At(start) + "."
}

func (say Words) AReadingMayBeOff(unsure float64) string {
	return "A reading may be off by " + say.Length(unsure) + "."
}
