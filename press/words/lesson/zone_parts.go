package lesson

func (say Words) TooWideForExercise() string {
	return "The zone of this plan is so wide that a nest may be moved without it."
}

func (say Words) NoGoodReading(start float64, end float64) string {
	return "No good part reads between the approach end at " + say.At(start) + " and the push end at " + say.At(end) + ": no zone can be right."
}

func (say Words) NoPartPasses() string {
	return "No part passes with the zone of this plan, so no part can be asked to."
}

func (say Words) NoSurelyGoodPasses() string {
	return "The zone of this plan lets no part pass that is surely good, so none can be asked to."
}
