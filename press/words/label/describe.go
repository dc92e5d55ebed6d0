package label

import (
	"ramplan/press/words"
)

func (say Words) StripHeading(name string) string { return "Decision strip of " + name }

func (say Words) StrokeText(pos words.Positions, stroke float64, home float64, approachEnd float64, contact float64, seat float64) string {
	return "Stroke of " + pos.At(stroke) + ": approach from home " + pos.Bare(home) + " to " + pos.At(approachEnd) + ", slow contact at " + pos.At(contact) + ", the nominal part read at " + pos.At(seat)
}

func (say Words) GoodReadingsText(between string, pos words.Positions, guard float64) string {
	return "Good by the drawing: readings " + between + "; guard bands of " + pos.Length(guard)
}

func (say Words) NothingBetweenGuardBands() string { return "Nothing is left between the guard bands" }

func (say Words) InsideTheGuardBands(between string) string {
	return "Inside the guard bands: " + between
}

func (say Words) PushEndStands(pos words.Positions, end float64) string {
	return "Push end " + pos.At(end)
}

func (say Words) BothOnText(between string) string {
	return "Both signals are on from " + between
}

func (say Words) NeverBothOn() string { return "No reading gives both signals" }

func (say Words) MissingRestsAt(pos words.Positions, missing float64) string {
	return "Without an insert the ram rests at " + pos.At(missing)
}

// FirstLookText says what the probe asks for before the push.
func (say Words) FirstLookText(pos words.Positions, end float64, loosest *float64) string {
	s := "First look, in the probe, which ends at " + pos.At(end)
	if loosest != nil {
		s += "; the loosest sound part stalls it at " + pos.At(*loosest)
	}
	return s + ". With arrival on and zone off: go on; everything else is refused, without a push. Second look, in the push:"
}
