package words

import (
	"math"

	"ramplan/press"
)

// mastered tells whether there can be a master: a nominal part is accepted.
func (say Printer) mastered(p *press.Plan, r *press.Result) bool {
	sig, ok := r.Signals()
	if !ok || sig.Early(r.Nominal()) {
		return false
	}
	arrival, zone := sig.At(r.Nominal())
	low, high := say.masterRange(p, r)
	return arrival && zone && low < high
}

// masterRange is from which height to which a master is made: within one step of the
// station's positions of a nominal part, so that the reading that is asked of it holds
// for every master as well as the station can tell. Common practice, no source.
func (say Printer) masterRange(p *press.Plan, r *press.Result) (low, high float64) {
	pos, at, step := say.Positions(p).Fine(), r.HeightOf(r.Nominal()), p.Station.PositionStep
	q := p.Requirement
	return pos.up(math.Max(at-step, q.HeightLow)), pos.down(math.Min(at+step, q.HeightHigh))
}

func (say Printer) masterHeight(p *press.Plan, r *press.Result) string {
	return say.Positions(p).Fine().between(say.masterRange(p, r))
}

// masterNote says what a master is.
func (say Printer) masterNote(p *press.Plan) string {
	locked := ""
	if p.Joint.Kind != press.Touch {
		locked = ", solid or locked"
	}
	return "The master is one good assembly" + locked + ", with a number of its own, made to within one step of the station's positions (" + say.Positions(p).Length(p.Station.PositionStep) +
		") of the nominal height. Write its number, its measured height and the day of that into its box. One that is taller than nominal reads as much less, one that is shorter as much more."
}

// bandNotes say how well a sample must be measured, and why good samples stand far
// inside the drawing.
func (say Printer) bandNotes(p *press.Plan, r *press.Result) []string {
	pos := say.Positions(p).Fine()
	narrow, good := math.Inf(1), false
	for _, x := range made(say.LimitSamples(p, r)) {
		narrow, good = math.Min(narrow, x.To-x.From), good || x.Good
	}
	var out []string
	if half := pos.down(narrow / 2); half > 0 && !math.IsInf(narrow, 1) {
		out = append(out, "A measured height lies in its band with all of its uncertainty: the narrowest band is "+pos.At(narrow)+" wide, so the measurement may be uncertain by ±\u202f"+pos.At(half)+
			" at most, and by less where the sample is off the middle of the band.")
	} else if !math.IsInf(narrow, 1) {
		out = append(out, "A measured height lies in its band with all of its uncertainty. The narrowest band is "+pos.At(narrow)+" wide: have that sample measured as finely as that, or widen the window.")
	}
	if good && say.Ruled(p) != "" {
		out = append(out, "The good samples stand well inside the drawing: nearer to its limits the edges of the window and the uncertainty of the reading make the station refuse good parts now and then.")
	} else if good {
		out = append(out, "The good samples stand well inside the drawing: nearer to its limits lie the guard bands and the uncertainty of the reading, where the station refuses good parts now and then.")
	}
	return out
}
