package words

import "ramplan/press"

// faultRows name the rows of the fault catalogue and say what they are.
var faultRows = map[string]Term{
	press.RowNominal:         {"Nominal part", "A part with every length in the middle of its spread."},
	press.RowTallest:         {"Tallest accepted", "A part that reads just inside the window, on the tall side."},
	press.RowShortest:        {"Shortest accepted", "A part that reads just inside the window, on the short side."},
	press.RowLong:            {"Just refused, tall side", "A part that reads 0.001\u202fmm before the window, and is refused."},
	press.RowShort:           {"Just refused, short side", "A part that reads 0.001\u202fmm past the window, and is refused."},
	press.RowMissing:         {"Missing insert", "No insert was put in, and the ram goes on to whatever stops it."},
	press.RowTwoInserts:      {"Two inserts", "A second insert lies on the first."},
	press.RowAlreadyPressed:  {"Pressed before", "A finished part comes round again and is seated already."},
	press.RowTight:           {"Too tight", "One case of many, a fit that takes a fifth more than the strongest push: the insert sticks on its way. A fit that is only just too tight sticks close to its seat, and passes where the window reaches so far."},
	press.RowLoose:           {"Loose fit", "Hole and insert do not grip each other: the insert slides to its seat, and nothing holds it there."},
	press.RowChip:            {"Chip under the part", "A chip of the thickness in the plan lies on the seat; crushed, it reads thinner."},
	press.RowGap:             {"Not fully seated", "The insert stands off its seat by the gap in the plan."},
	press.RowSettingLow:      {"Setting one step low", "A nominal part, pushed one setting step more weakly than planned."},
	press.RowSettingHigh:     {"Setting one step high", "A nominal part, pushed one setting step harder than planned."},
	press.RowNestWorn:        {"Worn nest", "The nest has given way by the depth in the plan: the part is good, the station is wrong, and every reading is off by as much. The check with the master is there to find it."},
	press.RowArrivalStuckOn:  {"Arrival stuck on, no insert", "The arrival signal is always on while the insert is missing. Only the reading rule finds it: both signals seen off first."},
	press.RowArrivalStuckOff: {"Arrival stuck off", "The arrival signal never comes, on a nominal part."},
	press.RowZoneStuckOn:     {"Zone stuck on", "The zone signal is always on, and a part comes that should just be refused on the tall side. Only the reading rule finds it."},
	press.RowZoneStuckOff:    {"Zone stuck off", "The zone signal never comes, on a nominal part."},
}

// Fault names a row of the fault catalogue and says what it is. The user's own
// rows keep the name they were given.
func (say Printer) Fault(row press.FaultRow) Term {
	if t, ok := faultRows[row.Name]; ok && !row.Own {
		return t
	}
	return Term{row.Name, "A fault of your own."}
}

// FaultMeans says what a row of the fault catalogue is in a plan. Of a row at the edge of the
// window that is also how the edge lies to the drawing, which may be set by hand to anywhere.
func (say Printer) FaultMeans(p *press.Plan, r *press.Result, f press.FaultRow) string {
	s := say.Fault(f).Meaning
	if !f.Case().Edge || f.Own {
		return s
	}
	deep := f.Name == press.RowShortest || f.Name == press.RowShort
	if w := r.Window.Overlap; deep && w != nil && r.PastNest(w[1]) {
		return s + " There is no such part: the nest itself stops the ram before."
	}
	if f.Reading == nil { // past the push end: nothing stops the ram
		return s
	}
	switch edgeOf(p, r, f) {
	case edgeOutside:
		if accepted(f) {
			return s + " It is accepted although it lies outside the drawing."
		}
		return s + " It lies outside the drawing, and what lies between passes."
	case edgeGood:
		if !accepted(f) {
			return s + " It is refused although it is certain to be within the drawing."
		}
	case edgeDoubtful:
		if !accepted(f) {
			if say.Ruled(p) != "" {
				return s + " It may still be within the drawing: the window stays inside on purpose."
			}
			return s + " It may still be within the drawing: the guard band is kept on purpose."
		}
	}
	return s
}

// How a row at the edge of the window lies to the drawing.
type edge int

const (
	edgeDoubtful edge = iota // in or beside the guard band, where the edge belongs
	edgeOutside              // outside the drawing
	edgeGood                 // certain to be within it
)

// edgeOf tells how it lies; what one step of the controller can make of it is left aside.
func edgeOf(p *press.Plan, r *press.Result, f press.FaultRow) edge {
	step := p.Station.PositionStep + 0.001
	if offDrawing(r, *f.Reading) > step {
		return edgeOutside
	}
	if a := r.Window.Acceptance; a != nil && *f.Reading > a[0]+step && *f.Reading < a[1]-step {
		return edgeGood
	}
	return edgeDoubtful
}

// offDrawing is how far a reading lies outside those of good parts, mm; not above 0 inside.
func offDrawing(r *press.Result, reading float64) float64 {
	good := r.Window.GoodRange
	return max(good[0]-reading, reading-good[1])
}

// accepted tells whether a row is one of those that are accepted at the edge.
func accepted(f press.FaultRow) bool {
	return f.Name == press.RowTallest || f.Name == press.RowShortest
}
