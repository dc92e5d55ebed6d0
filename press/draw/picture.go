package draw

import (
	"io"
	"math"
	"sync"

	"gonum.org/v1/plot/vg"
)

// Options of a drawing.
type Options struct {
	Width   float64 // px; 0: the default of the form
	Compact bool    // the narrow form, for less than 720 px
	Brief   bool    // of the strip: the title leaves out what a headline beside it says
	NoTitle bool    // leave the message away: what stands around the drawing says it
	Flat    bool    // less high, for a page that holds more
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
	width, height float64 // px, without a note
	fixed         bool    // a page, to which no note is added: it has its own place for that
	paint         func(*pen)

	once sync.Once
	note []string // about characters that the typeface lacks
}

// Title is the message of the drawing.
func (d *Picture) Title() string { return d.title }

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
	p := &pen{c: c, h: height}
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

// SVG writes the drawing as SVG.
func (d *Picture) SVG(w io.Writer) error {
	_, err := w.Write(d.svg())
	return err
}

func (d *Picture) svg() []byte { return d.written("", "") }

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
