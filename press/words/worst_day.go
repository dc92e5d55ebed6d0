package words

import (
	"math"
	"strings"

	"ramplan/press"
)

// ShiftTitle is the message of what a mean that is off does.
func (say Printer) ShiftTitle(p *press.Plan, d *press.WorstDay) string {
	if d.Kept == nil {
		return "A target is missed with the mean height as it is"
	}
	pos := say.Positions(p).Fine()
	low, high := KeptLength(d.Kept.Lower), KeptLength(d.Kept.Taller)
	up := func(x float64) string {
		if x == 0 {
			return "less than " + pos.Length(keptStep)
		}
		return "up to " + pos.Length(x)
	}
	switch {
	case low == 0 && high == 0:
		return "Both targets are kept as it is, and not with the mean height off by " + pos.Length(keptStep)
	case low == high:
		return "Both targets are kept with the mean height off by " + up(low) + " to either side"
	}
	both := up(high)
	if low > 0 {
		both = strings.TrimPrefix(both, "up to ")
	}
	return "Both targets are kept with parts " + up(low) + " lower or " + both + " taller on average"
}

// SpreadTitle is the message of what wider parts do.
func (say Printer) SpreadTitle(_ *press.Plan, d *press.WorstDay) string {
	if d.Kept == nil {
		return "A target is missed with the tolerances as they are"
	}
	wider := KeptFactor(d.Kept.Wider)
	if wider <= 1 {
		return "Both targets are kept as it is, and not with tolerances 1.01 times as wide"
	}
	return "Both targets are kept with tolerances up to " + Fixed(wider, 2) + " times as wide"
}

// KeptFactor is a factor that keeps the targets as it is told: never more than it is.
func KeptFactor(x float64) float64 { return math.Floor(100*x+1e-6) / 100 }

// keptStep is what a length that keeps the targets is told to, mm.
const keptStep = 0.001

// KeptLength is a length that keeps the targets as it is told, mm: never more than it is.
func KeptLength(x float64) float64 { return math.Floor(x/keptStep+1e-6) * keptStep }

// WearTitle is the message of what a worn nest does: which target is missed first.
func (say Printer) WearTitle(p *press.Plan, d *press.WorstDay) string {
	pos := say.Positions(p).Fine()
	accept, reject := d.Wear.FalseAccept, d.Wear.FalseReject
	switch {
	case accept == nil && reject == nil:
		return "No wear of the nest looked at makes a target missed"
	case accept != nil && *accept == 0 || reject != nil && *reject == 0:
		return "A target is missed without any wear"
	case accept == nil || reject != nil && *reject <= *accept:
		return "From " + pos.Length(*reject) + " of nest wear on, good parts are refused over target"
	}
	return "From " + pos.Length(*accept) + " of nest wear on, wrong heights are accepted over target"
}

// ShiftText says the figures of what a mean that is off does.
func (say Printer) ShiftText(p *press.Plan, d *press.WorstDay) string {
	pos := say.Positions(p).Fine()
	return say.dayText(d.Shift, 2, func(x float64) string {
		switch {
		case math.Abs(x) < 1e-9:
			return "mean as it is"
		case x < 0:
			return pos.Length(-x) + " lower"
		}
		return pos.Length(x) + " taller"
	})
}

// SpreadText says the figures of what wider parts do.
func (say Printer) SpreadText(d *press.WorstDay) string {
	return say.dayText(d.Spread, 1, func(x float64) string { return "tolerances times " + Fixed(x, 1) })
}

// WearText says the figures of what a worn nest does.
func (say Printer) WearText(p *press.Plan, d *press.WorstDay) string {
	pos := say.Positions(p).Fine()
	return say.dayText(d.WearCurve, 6, func(x float64) string { return "worn by " + pos.Length(x) })
}

// dayText says every so-manieth row.
func (say Printer) dayText(rows [][3]float64, every int, name func(x float64) string) string {
	var s []string
	for i := 0; i < len(rows); i += every {
		s = append(s, name(rows[i][0])+": "+say.PPM(rows[i][1])+" of wrong height accepted, "+say.PPM(rows[i][2])+" good refused")
	}
	return strings.Join(s, "; ") + "."
}

// A DayLine is a line about the worst day: what it is of, the two shares, and a note.
type DayLine struct{ Label, Accept, Reject, Note string }

// dayTerms name what is the same for every part of a day.
var dayTerms = map[string]string{
	"nest_drift": "Nest drift alone at its limit", "reference": "Reference alone at its limit", "stiffness": "Stiffness alone at its limit", "curve": "Push force alone at its limit",
}

// WorstDay puts the average, the worst day and each term at its limit into lines; none
// where nothing is known of it.
func (say Printer) WorstDay(p *press.Plan, d *press.WorstDay) []DayLine {
	if d == nil || d.Average == nil {
		return nil
	}
	pos := say.Positions(p).Fine()
	out := []DayLine{
		{"Average", say.PPM(d.Average.ConsumerPPM), say.PPM(d.Average.ProducerPPM), "stations and days mixed"},
		{"Worst day", say.PPM(d.Worst.ConsumerPPM), say.PPM(d.Worst.ProducerPPM), "all readings off by " + pos.Length(d.Limit) + " to the worse side; beside it only what differs from part to part"},
	}
	for _, t := range d.Terms {
		if t.Limit > 0 {
			out = append(out, DayLine{dayTerms[t.Name], say.PPM(*t.ConsumerPPM), say.PPM(*t.ProducerPPM), "readings off by " + pos.Length(t.Limit) + ", the others spread as on average"})
		}
	}
	return out
}

// WorstDayLead says what the worst day is.
func (say Printer) WorstDayLead() string {
	return "What is the same for every part of a day adds up to an error of the readings that is passed on at most about one day in twenty (the root sum of squares of its limits). Shares are of all parts, by their heights alone; they do not hang on a probe."
}

// WeakDay says how many parts a weak ram leaves unseated; empty where nothing is known.
func (say Printer) WeakDay(d *press.WorstDay) string {
	if d == nil {
		return ""
	}
	return "On a day on which the ram pushes at the lower end of its tolerance, " + say.PPM(d.UnseatedWeakDayPPM) + " of the parts do not reach their seat."
}

// DaysUnknown is said where a plan has no risks to follow.
func (say Printer) DaysUnknown() string {
	return "Not known: no window, or the nominal part stalls"
}
