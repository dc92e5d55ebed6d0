package words

import "ramplan/press"

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
