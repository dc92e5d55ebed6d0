package canvas

import (
	"io"
	"sync"

	"gonum.org/v1/plot/vg"
)

// A Layout is a drawing that is laid out: what a [Picture] is made of.
type Layout struct {
	Kind          string // its class, such as strip
	Compact       bool   // the narrow form
	ID            string // starts the ids inside an SVG; empty: the kind
	Title, Desc   string
	Width, Height float64    // px, without a note
	Fixed         bool       // a page, to which no note is added: it has its own place for that
	Paint         func(*Pen) // draws it, from its upper left corner
}

// A Picture is a drawing that is laid out and can be written in any format.
type Picture struct {
	Layout

	once sync.Once
	note []string // about characters that the typeface lacks
}

// NewPicture makes a picture of what is laid out.
func NewPicture(l Layout) *Picture { return &Picture{Layout: l} }

// Title is the message of the drawing.
func (d *Picture) Title() string { return d.Layout.Title }

// Description is its text equivalent: the same figures in sentences.
func (d *Picture) Description() string { return d.Desc }

// Size of the drawing, px.
func (d *Picture) Size() (width, height float64) {
	d.annotate(nil)
	return d.Width, d.Height + noteHeight(d.note)
}

// annotate finds what has to be said under the drawing, from the texts that it
// draws where these are known already.
func (d *Picture) annotate(texts []Label) {
	d.once.Do(func() {
		if d.Fixed {
			return
		}
		if texts == nil {
			texts = d.draw(Blank{}, d.Height)
		}
		d.note = noteOf(texts, d.Width)
	})
}

// On draws on a canvas of the size of the drawing and gives the boxes of the
// texts.
func (d *Picture) On(c vg.Canvas) []Label {
	_, height := d.Size()
	return d.draw(c, height)
}

// draw draws on a canvas of this height: the drawing, and the note below it.
func (d *Picture) draw(c vg.Canvas, height float64) []Label {
	p := NewPen(c, height)
	// A picture of dots begins white, and painting every dot anew takes its time.
	if _, white := c.(*raster); !white {
		p.Fill(Paper, Rectangle{0, 0, d.Width, height})
	}
	d.Paint(p)
	if height > d.Height {
		p.Lines(Style{Quiet, Small, false}, Margin, d.Height+Small, Start, d.note)
	}
	return p.Texts
}

// Texts gives the texts that the drawing writes, and the boxes that they take.
func (d *Picture) Texts() []Label { return d.On(Blank{}) }

// SVG writes the drawing as SVG.
func (d *Picture) SVG(w io.Writer) error {
	_, err := w.Write(d.svg())
	return err
}

func (d *Picture) svg() []byte { return d.written("", "") }

// SVGCarrying writes the drawing as a file of its own: SVG in the size of the paper, with its
// typeface and an element that it carries inside.
func (d *Picture) SVGCarrying(w io.Writer, element string) error {
	_, err := w.Write(d.exported(element))
	return err
}

// exported is the drawing as a file of its own: in the size of the paper, with its
// typeface and what it carries inside.
func (d *Picture) exported(carried string) []byte {
	return d.written("mm", carried)
}

func (d *Picture) written(unit, carried string) []byte {
	c := newSVG(d.Width, d.Height)
	c.paper = unit == "mm"
	d.annotate(d.draw(c, d.Height))
	if len(d.note) > 0 {
		c = newSVG(d.Size())
		c.paper = unit == "mm"
		d.On(c)
	}
	class, id := d.Kind, d.ID
	if d.Compact {
		class += " compact"
	}
	if id == "" {
		id = d.Kind
	}
	return c.document(class, id, d.Layout.Title, d.Desc, unit, carried)
}
