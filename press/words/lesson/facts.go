package lesson

func (say Words) TallerThanNominal() string { return " taller than a nominal part." }

func (say Words) ShorterThanNominal() string { return " shorter than a nominal part." }

func (say Words) StandsBy(size float64, way string) string {
	return "It stands " + say.Length(size) + way
}

func (say Words) RamWouldStopAt(at string) string {
	return "The ram would be stopped at " + at + "."
}

func (say Words) ToolWouldMeetAt(touch float64, start float64) string {
	return "The tool would meet it at " + say.At(touch) + "; the fast approach ends and the push begins at " + say.At(start) + "."
}

func (say Words) ReadingUnsure(unsure float64) string {
	return "A reading may be off by " + say.Length(unsure) + "."
}
