package draw

import (
	"io"
	"sync"

	"gonum.org/v1/plot/vg"
)

// A layout is a drawing that is laid out: what a [Picture] is made of.
type layout struct {
	kind          string // its class, such as strip
	compact       bool   // the narrow form
	id            string // starts the ids inside an SVG; empty: the kind
	title, desc   string
	width, height float64    // px, without a note
	fixed         bool       // a page, to which no note is added: it has its own place for that
	paint         func(*pen) // draws it, from its upper left corner
}

// A Picture is a drawing that is laid out and can be written in any format.
type Picture struct {
	layout

	once sync.Once
	note []string // about characters that the typeface lacks
}

// newPicture makes a picture of what is laid out.
func newPicture(l layout) *Picture { return &Picture{layout: l} }

// Title is the message of the drawing.
func (d *Picture) Title() string { return d.layout.title }

// Description is its text equivalent: the same figures in sentences.
func (d *Picture) Description() string { return d.desc }

// Size of the drawing, px.
func (d *Picture) Size() (width, height float64) {
	d.annotate(nil)
	return d.width, d.height + noteHeight(d.note)
}

// annotate finds what has to be said under the drawing, from the texts that it
// draws where these are known already.
func (d *Picture) annotate(texts []label) {
	d.once.Do(func() {
		if d.fixed {
			return
		}
		if texts == nil {
			texts = d.draw(blank{}, d.height)
		}
		d.note = noteOf(texts, d.width)
	})
}

// on draws on a canvas of the size of the drawing and gives the boxes of the
// texts.
func (d *Picture) on(c vg.Canvas) []label {
	_, height := d.Size()
	return d.draw(c, height)
}

// draw draws on a canvas of this height: the drawing, and the note below it.
func (d *Picture) draw(c vg.Canvas, height float64) []label {
	p := newPen(c, height)
	// A picture of dots begins white, and painting every dot anew takes its time.
	if _, white := c.(*raster); !white {
		p.fill(paper, rect{0, 0, d.width, height})
	}
	d.paint(p)
	if height > d.height {
		p.lines(style{quiet, small, false}, margin, d.height+small, start, d.note)
	}
	return p.texts
}

// Texts gives the texts that the drawing writes, and the boxes that they take.
func (d *Picture) Texts() []label { return d.on(blank{}) }

// SVG writes the drawing as SVG.
func (d *Picture) SVG(w io.Writer) error {
	_, err := w.Write(d.svg())
	return err
}

func (d *Picture) svg() []byte { return d.written("", "") }

// svgCarrying writes the drawing as a file of its own: SVG in the size of the paper, with its
// typeface and an element that it carries inside.
func (d *Picture) svgCarrying(w io.Writer, element string) error {
	_, err := w.Write(d.exported(element))
	return err
}

// exported is the drawing as a file of its own: in the size of the paper, with its
// typeface and what it carries inside.
func (d *Picture) exported(carried string) []byte {
	return d.written("mm", carried)
}

func (d *Picture) written(unit, carried string) []byte {
	c := newSVG(d.width, d.height)
	c.paper = unit == "mm"
	d.annotate(d.draw(c, d.height))
	if len(d.note) > 0 {
		c = newSVG(d.Size())
		c.paper = unit == "mm"
		d.on(c)
	}
	class, id := d.kind, d.id
	if d.compact {
		class += " compact"
	}
	if id == "" {
		id = d.kind
	}
	return c.document(class, id, d.title, d.desc, unit, carried)
}
