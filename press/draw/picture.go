package draw

import (
	"io"
	"math"

	"gonum.org/v1/plot/vg"
)

// Options of a drawing.
type Options struct {
	Width   float64 // px; 0: the default of the form
	Compact bool    // the narrow form, for less than 720 px
	Brief   bool    // of the strip: the title leaves out what a headline beside it says
	ID      string  // starts the ids inside an SVG; give each of several in one page its own
}

// width gives the width asked for, between what the drawing needs and what makes
// sense.
func (o Options) width(usual, least float64) float64 {
	if o.Width > 0 {
		usual = o.Width
	}
	return math.Min(math.Max(usual, least), 4096)
}

// A Picture is a drawing that is laid out and can be written in any format.
type Picture struct {
	kind          string // its class, such as strip
	compact       bool
	id            string
	title, desc   string
	width, height float64 // px
	paint         func(*pen)
}

// Title is the message of the drawing.
func (d *Picture) Title() string { return d.title }

// Description is its text equivalent: the same figures in sentences.
func (d *Picture) Description() string { return d.desc }

// Size of the drawing, px.
func (d *Picture) Size() (width, height float64) { return d.width, d.height }

// on draws on a canvas and gives the boxes of the texts.
func (d *Picture) on(c vg.Canvas) []label {
	p := &pen{c: c, h: d.height}
	p.fill(paper, rect{0, 0, d.width, d.height})
	d.paint(p)
	return p.texts
}

// SVG writes the drawing as SVG.
func (d *Picture) SVG(w io.Writer) error {
	_, err := w.Write(d.svg())
	return err
}

func (d *Picture) svg() []byte {
	c := newSVG(d.width, d.height)
	d.on(c)
	class, id := d.kind, d.id
	if d.compact {
		class += " compact"
	}
	if id == "" {
		id = d.kind
	}
	return c.document(class, id, d.title, d.desc)
}
