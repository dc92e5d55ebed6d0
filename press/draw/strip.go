package draw

import (
	"io"
	"math"

	"ramplan/press"
)

// Strip draws the decision strip of a plan as SVG.
func Strip(w io.Writer, p *press.Plan, r *press.Result) error {
	return NewStrip(p, r, Options{}).SVG(w)
}

// NewStrip makes the decision strip.
func NewStrip(p *press.Plan, r *press.Result, o Options) *Picture {
	if !r.Pressable() {
		return statement("strip", o, stripWide, stripWideLeast)
	}
	return newStripModel(p, r, *r.Traces()).picture(o)
}

// Default widths of the strip, px, and the narrowest that each form can be drawn
// at.
const (
	stripWide         = 960
	stripWideLeast    = 720
	stripCompact      = 390
	stripCompactLeast = 340
)

func (m *stripModel) picture(o Options) *Picture {
	d := newStripDrawing(m, o)
	return newPicture(layout{kind: "strip", compact: o.Compact, id: o.ID, title: m.titleFor(o), desc: m.desc, width: d.width, height: d.height, paint: d.paint})
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
	pairs     rect
	pairsAt   []rect  // the rows
	pairsWide float64 // each
}

func newStripDrawing(m *stripModel, o Options) *stripDrawing {
	d := &stripDrawing{m: m, compact: o.Compact, width: o.width(stripWide, stripWideLeast)}
	if o.Compact {
		d.width = o.width(stripCompact, stripCompactLeast)
	}
	left, right := float64(margin), d.width-margin
	y := float64(margin)
	if !o.NoTitle {
		d.title = style{black, heading, true}.wrap(m.titleFor(o), right-left)
		y += float64(len(d.title))*leading*heading + 6
	}
	d.ruler = layStrokeRuler(m, left, right, y)

	top := d.ruler.bottom + 34
	if o.Flat {
		top = d.ruler.bottom + 22
	}
	table := 264.0
	if o.Compact {
		d.lens = layLens(m, left, left, right, top, o)
		d.pairs = rect{left, d.lens.bottom + 22, right, 0}
	} else {
		d.pairs = rect{right - table, top, right, 0}
		d.lens = layLens(m, left, left+gutter, d.pairs.x0-28, top, o)
	}
	d.layPairs()
	d.height = math.Ceil(math.Max(d.lens.bottom, d.pairs.y1) + margin)
	return d
}

// gutter is the width of the column that names the rows of the lens, px.
const gutter = 136

func (d *stripDrawing) paint(p *pen) {
	p.lines(style{black, heading, true}, margin, margin+heading, start, d.title)
	d.project(p)
	d.ruler.paint(p)
	d.lens.paint(p)
	d.paintPairs(p)
}

// project joins the piece of the stroke under the lens to the lens.
func (d *stripDrawing) project(p *pen) {
	r, l := d.ruler, d.lens
	x0, x1 := r.glass()
	from, to := r.numbers+4, l.top
	p.area(black.tint(lensTint), [2]float64{x0, r.bar.y1}, [2]float64{x1, r.bar.y1}, [2]float64{x1, from},
		[2]float64{l.scale.x1, to}, [2]float64{l.scale.x0, to}, [2]float64{x0, from})
	p.line(quiet, thinLine, solid, [2]float64{x0, r.bar.y1}, [2]float64{x0, from}, [2]float64{l.scale.x0, to})
	p.line(quiet, thinLine, solid, [2]float64{x1, r.bar.y1}, [2]float64{x1, from}, [2]float64{l.scale.x1, to})
}
