package label

import (
	"math"

	"ramplan/press"
	"ramplan/press/words"
)

// MasterTitle is the message of a run chart of a master.
func (say Words) MasterTitle(pos words.Positions, bias, allowed float64) string {
	if math.Abs(bias) <= allowed {
		return "The master reads " + signed(pos, bias) + " from where the plan puts it; " + pos.At(allowed) + " is allowed"
	}
	return "The master reads " + signed(pos, bias) + " from where the plan puts it, more than the " + pos.At(allowed) + " allowed"
}

func (say Words) TwoSD(over bool) string {
	if over {
		return "mean + 2 sd"
	}
	return "mean − 2 sd"
}

func (say Words) AllowedBias(pos words.Positions, allowed float64) string {
	return "allowed: predicted ±\u202f" + pos.At(allowed)
}

func (say Words) MasterText(pos words.Positions, n int, mean, predicted, bias, allowed float64) string {
	return words.UpperFirst(counting(n, "reading", "readings")) + ": mean " + pos.At(mean) + ", predicted " + pos.At(predicted) + ", bias " + signed(pos, bias) + ", allowed ±\u202f" + pos.At(allowed) + "."
}

func (say Words) SpreadText2(pos words.Positions, sd, planned float64) string {
	return "Standard deviation " + pos.With(4).At(sd) + ", planned " + pos.With(4).At(planned) + "."
}

// StartsTitle is the message of starts beside one another.
func (say Words) StartsTitle(pos words.Positions, supported *float64, planned float64) string {
	if supported == nil {
		return "What a new start moves cannot be told from these starts"
	}
	return "A new start is shown to keep within ±\u202f" + pos.At(*supported) + "; the plan has ±\u202f" + pos.At(planned)
}

func (say Words) StartAxis(n int) string { return counting(n, "start", "starts") + ", in their order" }

func (say Words) StartPlanned() string { return "plan's ±" }

func (say Words) PlanOfStarts(pos words.Positions, planned float64) string {
	return "plan: ±\u202f" + pos.At(planned)
}

func (say Words) StartShown() string { return "shown ±" }

func (say Words) MeanOfStart() string { return "mean of a start" }

func (say Words) StartsReach(n, starts int) string {
	return whole(n) + " pushes of " + counting(starts, "start", "starts") + ", each start from lowest to highest"
}

func (say Words) StartsText(pos words.Positions, n, starts int, mean, planned float64, supported *float64) string {
	s := words.UpperFirst(counting(n, "push", "pushes")) + " of " + counting(starts, "start", "starts") + ": mean of the starts " + pos.At(mean) + ", plan ±\u202f" + pos.At(planned)
	if supported != nil {
		s += ", shown ±\u202f" + pos.At(*supported)
	}
	return s + "."
}

func (say Words) StartText(pos words.Positions, start float64, n int, mean float64) string {
	return "Start " + words.Fixed(start, 0) + ": " + counting(n, "push", "pushes") + ", mean " + pos.At(mean) + "."
}

func (say Words) MoreStarts(n int) string {
	return "And " + counting(n, "more start", "more starts") + "."
}

func (say Words) ColdWarmText(pos words.Positions, difference float64, limits *press.Pair) string {
	s := "Cold starts read " + signed(pos, difference) + " from warm ones"
	if limits != nil {
		s += " (" + pos.Bare(limits[0]) + " to " + pos.At(limits[1]) + ")"
	}
	return s + "."
}
