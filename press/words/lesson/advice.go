package lesson

import (
	"ramplan/press/words"
)

func (say Words) ReadsAtAnEdge(typed string, shows words.Pair, positionStep float64, agree string) string {
	return "It reads at the edge: at " + typed + " itself this plan shows " + shows.String() + ", but the position is shown in steps of " + say.Length(positionStep) + ". " + agree
}

// BeyondTheEdge says on which side of an edge the ram rests where lamps and reading differ by less than a step.
func (say Words) BeyondTheEdge() string {
	return "By the lamps the ram rests on the other side of the edge, less than half a step away."
}

func (say Words) NoPartOfPlanShowsThese() string { return "No part of this plan leads to these lamps." }

// HeightTypedForReading asks whether a height was typed where a ram position is wanted.
func (say Words) HeightTypedForReading(typed string, nominal float64) string {
	return "Is " + typed + " the height of the part? The reading is the position of the ram, near " + say.At(nominal) + "."
}

func (say Words) ReadPositionAgain() string {
	return "Read the ram position again, and type it in here."
}

func (say Words) IfReadSo(lower string) string { return "If it does read so: " + lower }

func (say Words) TestEachLamp() string {
	return "Test each lamp by itself: both must be off before the push."
}

func (say Words) SetApartUntilClear() string {
	return "Set the part apart until the reading is clear."
}

func (say Words) ReadingDoesNotFit() string { return "Lamps and reading do not fit: " }

func (say Words) BeyondThePushEnd(end float64, typed string) string {
	return "the push ends at " + say.At(end) + ", and no ram can be stopped at " + typed + "."
}

func (say Words) MustStandAtPushEnd(end float64, inZone bool) string {
	return "without arrival the ram must stand at the push end, " + say.At(end) + ", with zone " + words.OnOff(inZone) + "."
}

func (say Words) MayBeSeatedLate() string {
	return " It may be a part that is seated, whose force was not reported in time."
}

func (say Words) PlanShowsAt(typed string, shows words.Pair) string {
	return "at " + typed + " this plan shows " + shows.String() + "."
}

func (say Words) StationOrSignal(agree string) string {
	return " " + agree + " Either the station is not set as the plan says, or a signal is at fault."
}

func (say Words) BeforeTheNextCounts(freshGood string) string {
	return freshGood + " before the next one counts."
}

func (say Words) SetApartUnjudged() string {
	return "Set the part apart: do not judge it by these lamps."
}

func (say Words) CompareWithPlan(lower string) string {
	return "Compare what is set with the plan: " + lower
}

func (say Words) ReadingMustAgree(positionStep float64) string {
	return "Lamps and reading tell of one and the same position of the ram, so they must agree within half a step of the reading, " + say.Length(positionStep) + "."
}

func (say Words) NoHeightInReading(typed string) string {
	return "At " + typed + " the ram was not stopped by a part, so the reading says nothing of its height."
}

func (say Words) HeightByReading(typed string, h float64, u float64) string {
	return "A part that stops the ram at " + typed + " is about " + say.At(h) + " high, ± " + say.Length(u)
}

// HeightVerdict says what the drawing makes of the height that a reading tells of.
func (say Words) HeightVerdict(is string) string {
	return "; by the drawing that is " + words.Say(is)
}

func (say Words) VerdictUnknown(s string) string {
	return s + "; whether it is good by the drawing cannot be told from the reading"
}

func (say Words) MeasureHeight(heightLow float64, heightHigh float64) string {
	return "Measure its height: from " + say.Bare(heightLow) + " to " + say.At(heightHigh) + " it is good by the drawing."
}

// YetRefused says why a part within the drawing, where that can be told, is refused; ruled:
// the window stays inside the drawing by another rule than a guard band.
func (say Words) YetRefused(told, ruled bool) string {
	switch {
	case told && ruled:
		return ", yet it is refused: the window stays inside the drawing"
	case told:
		return ", yet it is refused: it lies within the guard band"
	}
	return ", and it is refused: it lies so near to a limit"
}

// RefusedNear is what such a refusal means.
func (say Words) RefusedNear(ruled bool) string {
	if ruled {
		return "Refused near a limit of the drawing: measure it."
	}
	return "Refused within the guard band: measure it."
}
