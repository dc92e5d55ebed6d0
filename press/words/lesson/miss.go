package lesson

func (say Words) AskedOfParts(question string, join string) string {
	return question + " The parts: " + join + "."
}

func (say Words) ZoneFromTo(typed string, typed2 string) string {
	return "zone from " + typed + " to " + typed2
}

func (say Words) NoAnswer() string { return "no answer" }

func (say Words) ZoneForExample(from, to float64) string {
	return "for example zone from " + say.Set(from) + " to " + say.SetAt(to)
}
