package draw

import (
	"io"
	"math"

	"gonum.org/v1/plot/vg"

	"ramplan/press"
)

// Options of a drawing.
type Options struct {
	Width   float64 // px; 0: the default of the form
	Compact bool    // the narrow form, for less than 720 px
	ID      string  // starts the ids inside an SVG; give each of several in one page its own
}

// Default widths, px, and the narrowest that each form can be drawn at.
const (
	wideWidth    = 960
	wideLeast    = 720
	compactWidth = 390
	compactLeast = 340
)

func (o Options) width() float64 {
	width, least := float64(wideWidth), float64(wideLeast)
	if o.Compact {
		width, least = compactWidth, compactLeast
	}
	if o.Width > 0 {
		width = o.Width
	}
	return math.Min(math.Max(width, least), 4096)
}

func (o Options) id() string {
	if o.ID == "" {
		return "strip"
	}
	return o.ID
}

// Strip draws the decision strip of a plan as SVG.
func Strip(w io.Writer, p *press.Plan, r *press.Result) error {
	return StripWith(w, p, r, Options{})
}

// StripWith draws the decision strip as SVG, in another size or form.
func StripWith(w io.Writer, p *press.Plan, r *press.Result, o Options) error {
	m := newStripModel(p, r, press.Trace(p))
	_, err := w.Write(m.svg(o))
	return err
}

func (m *stripModel) svg(o Options) []byte {
	d := newStripDrawing(m, o)
	c := newSVG(d.width, d.height)
	d.paint(c)
	class := "strip"
	if o.Compact {
		class += " compact"
	}
	return c.document(class, o.id(), m.title, m.desc)
}

// stripDrawing is the strip laid out in px.
type stripDrawing struct {
	m             *stripModel
	compact       bool
	width, height float64

	title  []string
	ruler  strokeRuler
	lens   lens
	pairs  rect
	pairsH []float64 // heights of the rows
}

func newStripDrawing(m *stripModel, o Options) *stripDrawing {
	d := &stripDrawing{m: m, compact: o.Compact, width: o.width()}
	left, right := float64(margin), d.width-margin
	d.title = bold().wrap(m.title, heading, right-left)
	y := margin + float64(len(d.title))*leading*heading
	d.ruler = layStrokeRuler(m, left, right, y+6)

	top := d.ruler.bottom + 34
	table := 264.0
	if o.Compact {
		d.lens = layLens(m, left, left, right, top, true)
		d.pairs = rect{left, d.lens.bottom + 22, right, 0}
	} else {
		d.pairs = rect{right - table, top, right, 0}
		d.lens = layLens(m, left, left+gutter, d.pairs.x0-28, top, false)
	}
	d.layPairs()
	d.height = math.Ceil(math.Max(d.lens.bottom, d.pairs.y1) + margin)
	return d
}

// gutter is the width of the column that names the rows of the lens, px.
const gutter = 136

// paint draws the strip and gives the boxes of its texts.
func (d *stripDrawing) paint(c vg.Canvas) []label {
	p := &pen{c: c, h: d.height}
	p.fill(paper, rect{0, 0, d.width, d.height})
	p.lines(style{black, heading, true}, margin, margin+heading, start, d.title)
	d.project(p)
	d.ruler.paint(p)
	d.lens.paint(p)
	d.paintPairs(p)
	return p.texts
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
