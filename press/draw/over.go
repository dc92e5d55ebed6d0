package draw

import (
	"math"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
)

// What the drawings of studies take from those of the plan, so that a study is drawn over
// the same lens, in the same hatches, as the plan it is held against.

// Fitting is the width that is asked for, between what a drawing needs and what makes sense;
// usual where none is asked for.
func (o Options) Fitting(usual, least float64) float64 { return o.width(usual, least) }

// Sentence is a drawing of which a sentence says why there is nothing to see.
func Sentence(kind, text string, o Options) *canvas.Picture {
	return stated(kind, text, o, chartWide, ChartLeast)
}

// A Lens is the magnified stretch of the decision strip, for drawings that put something of
// their own over it. Its rows take a box each, whose left and right edges are those of the
// scale.
type Lens struct {
	l lens
}

// NewLens lays the lens of a plan between two places, px. Its stretch is that of the strip,
// widened so far that the places given are in it too, but never to more than thrice.
func NewLens(p *press.Plan, r *press.Result, left, right float64, places ...float64) *Lens {
	m := newStripModel(p, r, *r.Traces())
	m.lens = widened(m.lens, places)
	return &Lens{lens{m: m, names: left, scale: canvas.NewScale(m.lens[0], m.lens[1], left, right)}}
}

// widened is a stretch with the places that lie within a width of it.
func widened(s press.Pair, places []float64) press.Pair {
	wide := s[1] - s[0]
	out := s
	for _, x := range places {
		if x >= s[0]-wide && x <= s[1]+wide {
			out[0], out[1] = math.Min(out[0], x-0.04*wide), math.Max(out[1], x+0.04*wide)
		}
	}
	return out
}

// Scale of the positions.
func (l *Lens) Scale() canvas.Scale { return l.l.scale }

// Overlap gives the readings that give both signals; nil where none does.
func (l *Lens) Overlap() *press.Pair { return l.l.m.overlap }

// Density is the spread of seated readings that the plan expects: mm, 1/mm.
func (l *Lens) Density() []press.Pair { return l.l.m.density }

// Edges are where the zone begins, where the push ends and where the zone ends.
func (l *Lens) Edges() []float64 {
	var out []float64
	for _, v := range []*float64{l.l.m.zoneStart, l.l.m.end, l.l.m.zoneEnd} {
		if v != nil {
			out = append(out, *v)
		}
	}
	return out
}

// Requirement draws which readings are good, with the guard bands, in a row 40 px high.
func (l *Lens) Requirement(p *canvas.Pen, box canvas.Rectangle) {
	l.l.requirement(p, lensRow{box: box})
}

// Ruler draws the positions, in a row 24 px high.
func (l *Lens) Ruler(p *canvas.Pen, box canvas.Rectangle) { l.l.ruler(p, lensRow{box: box}) }

// Zone draws the zone as a bracket and the push end as a stop, in a row 28 px high.
func (l *Lens) Zone(p *canvas.Pen, box canvas.Rectangle) { l.l.zone(p, lensRow{box: box}) }

// Verdicts draws what each stretch of readings means, in a row 34 px high.
func (l *Lens) Verdicts(p *canvas.Pen, box canvas.Rectangle) { l.l.verdicts(p, lensRow{box: box}) }

// HasVerdicts tells whether the plan has a window to judge by.
func (l *Lens) HasVerdicts() bool { return len(l.l.m.fields) > 0 }

// Guides carry the edges of the window from one height to another.
func (l *Lens) Guides(p *canvas.Pen, top, bottom float64) {
	l.l.top = top
	l.l.guides(p, bottom)
}

// Guided tells whether a guide runs between two places, px.
func (l *Lens) Guided(x0, x1 float64) bool { return l.l.guided(x0, x1) }

// Callouts name the positions to set, to stand under the lens.
func (l *Lens) Callouts() []typeset.Callout { return l.l.edgeLabels() }
