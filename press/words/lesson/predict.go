package lesson

import (
	"ramplan/press"
)

func (say Words) TooUnsureToAsk(unsure float64) string {
	return "A reading may be off by " + say.Length(unsure) + ": no part shows the same lamps surely enough to be asked for."
}

func (say Words) PredictHeight(high string, p *press.Plan) string {
	return "This part is " + high + " high above " + say.Datum(p) + ". What will the lamps show?"
}

func (say Words) DrawingAsksFor(heightLow float64, heightHigh float64) string {
	return "The drawing asks for " + say.Bare(heightLow) + " to " + say.At(heightHigh) + "."
}

func (say Words) WouldStopAt(at string) string {
	return "It would stop the ram at " + at + ", if the push went so far."
}

func (say Words) PartStopsAt(high string, at string) string {
	return "A part of " + high + " stops the ram at " + at + "."
}

func (say Words) SetPositions(end float64, zoneStart float64, zoneEnd float64) string {
	return "Push end " + say.At(end) + ", zone " + say.Bare(zoneStart) + " to " + say.At(zoneEnd) + "."
}

func (say Words) PredictCase(word string) string {
	return "Case: " + word + ". What will the lamps show?"
}

func (say Words) PredictEarly() string {
	return "None of these: the fast approach strikes it before the push begins, when no lamp counts"
}

func (say Words) MeetsNothingBefore(start float64, story string) string {
	return "The tool meets nothing before the push begins at " + say.At(start) + ". " + story
}

func (say Words) NothingStopsBefore(start float64, at string, story string) string {
	return "The push begins at " + say.At(start) + ". Nothing stops the ram before " + at + ". " + story
}

func (say Words) ShownInShare(unsure float64, share float64) string {
	return " A reading may be off by " + say.Length(unsure) + ". The lamps show this in " + say.OneIn(share) + "."
}
