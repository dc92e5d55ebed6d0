package draw

import (
	"math"

	"ramplan/press"
	"ramplan/press/draw/canvas"
)

// NewStrip makes the decision strip.
func NewStrip(p *press.Plan, r *press.Result, o Options) *canvas.Picture {
	if !r.Pressable() {
		return statement("strip", o, stripWide, StripLeast)
	}
	m := newStripModel(p, r, *r.Traces())
	m.simulated(o.Spread)
	return m.picture(o)
}

// Default widths of the strip, px, and the narrowest that each form can be drawn
// at.
const (
	stripWide         = 960
	StripLeast        = 720 // for who makes room for the wide form
	stripCompact      = 390
	stripCompactLeast = 340
)

func (m *stripModel) picture(o Options) *canvas.Picture {
	d := newStripDrawing(m, o)
	return canvas.NewPicture(canvas.Layout{Kind: "strip", Compact: o.Compact, ID: o.ID, Title: m.titleFor(o), Desc: m.desc, Width: d.width, Height: d.height, Paint: d.paint})
}

func (m *stripModel) titleFor(o Options) string {
	if o.Brief {
		return m.brief
	}
	return m.title
}

// stripDrawing is the strip laid out in px.
type stripDrawing struct {
	m             *stripModel
	compact       bool
	width, height float64

	title     []string
	ruler     strokeRuler
	lens      lens
	pairs     canvas.Rectangle
	pairsAt   []canvas.Rectangle // the rows
	pairsWide float64            // each
}

func newStripDrawing(m *stripModel, o Options) *stripDrawing {
	d := &stripDrawing{m: m, compact: o.Compact, width: o.width(stripWide, StripLeast)}
	if o.Compact {
		d.width = o.width(stripCompact, stripCompactLeast)
	}
	left, right := float64(canvas.Margin), d.width-canvas.Margin
	y := float64(canvas.Margin)
	if !o.NoTitle {
		d.title = canvas.Bold(canvas.Black, canvas.Heading).Wrap(m.titleFor(o), right-left)
		y += float64(len(d.title))*canvas.Leading*canvas.Heading + 6
	}
	d.ruler = layStrokeRuler(m, left, right, y)

	top := d.ruler.bottom + 34
	if o.Flat {
		top = d.ruler.bottom + 22
	}
	table := 264.0
	if o.Compact {
		d.lens = layLens(m, left, left, right, top, o)
		d.pairs = canvas.Rect(left, d.lens.bottom+22, right, 0)
	} else {
		d.pairs = canvas.Rect(right-table, top, right, 0)
		d.lens = layLens(m, left, left+gutter, d.pairs.X0-28, top, o)
	}
	d.layPairs()
	d.height = math.Ceil(math.Max(d.lens.bottom, d.pairs.Y1) + canvas.Margin)
	return d
}

// gutter is the width of the column that names the rows of the lens, px.
const gutter = 136

func (d *stripDrawing) paint(p *canvas.Pen) {
	p.Lines(canvas.Bold(canvas.Black, canvas.Heading), canvas.Margin, canvas.Margin+canvas.Heading, canvas.Start, d.title)
	d.project(p)
	d.ruler.paint(p)
	d.lens.paint(p)
	d.paintPairs(p)
}

// project joins the piece of the stroke under the lens to the lens.
func (d *stripDrawing) project(p *canvas.Pen) {
	r, l := d.ruler, d.lens
	x0, x1 := r.glass()
	from, to := r.numbers+4, l.top
	p.Area(canvas.Black.Tint(canvas.LensTint), [2]float64{x0, r.bar.Y1}, [2]float64{x1, r.bar.Y1}, [2]float64{x1, from},
		[2]float64{l.scale.X1, to}, [2]float64{l.scale.X0, to}, [2]float64{x0, from})
	p.Line(canvas.Quiet, canvas.ThinLine, canvas.Solid, [2]float64{x0, r.bar.Y1}, [2]float64{x0, from}, [2]float64{l.scale.X0, to})
	p.Line(canvas.Quiet, canvas.ThinLine, canvas.Solid, [2]float64{x1, r.bar.Y1}, [2]float64{x1, from}, [2]float64{l.scale.X1, to})
}
