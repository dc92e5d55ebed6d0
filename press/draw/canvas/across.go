package canvas

import (
	"math"

	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
	"gonum.org/v1/plot/vg"
)

// Across draws a word across a page, as hollow letters so light that every figure over
// them can be read, in colour or grey.
func (p *Pen) Across(f Rectangle, word string) {
	letters := bold()
	diagonal := math.Hypot(f.Width(), f.Height())
	size := 0.62 * diagonal / letters.width(word, 1)
	sin, cos := math.Sincos(math.Atan2(f.Height(), f.Width()))
	width := letters.width(word, size)
	// From the corner of the word to its place on the page.
	place := func(x, y float64) vg.Point {
		x, y = x-width/2, y+capitals*size/2
		return p.at((f.X0+f.X1)/2+x*cos+y*sin, (f.Y0+f.Y1)/2-x*sin+y*cos)
	}
	var path vg.Path
	x := 0.0
	for _, c := range word {
		letters.outline(&path, c, func(gx, gy float64) vg.Point { return place(x+gx*size, gy*size) })
		x += letters.width(string(c), size)
	}
	p.shape(Ground, path)
	p.stroke(Faint.Tint(0.7), ThinLine, Solid, path)
}

// outline adds the contours of a character, whose points are given in em, y
// growing downward.
func (f *face) outline(path *vg.Path, c rune, place func(x, y float64) vg.Point) {
	f.mu.Lock()
	defer f.mu.Unlock()
	i, _ := f.font.GlyphIndex(&f.buf, c)
	units := fixed.Int26_6(f.font.UnitsPerEm())
	segments, err := f.font.LoadGlyph(&f.buf, i, units<<6, nil)
	if err != nil {
		return
	}
	at := func(q fixed.Point26_6) vg.Point {
		return place(float64(q.X)/64/f.perEm, float64(q.Y)/64/f.perEm)
	}
	open := false
	for _, s := range segments {
		switch s.Op {
		case sfnt.SegmentOpMoveTo:
			if open {
				path.Close()
			}
			path.Move(at(s.Args[0]))
			open = true
		case sfnt.SegmentOpLineTo:
			path.Line(at(s.Args[0]))
		case sfnt.SegmentOpQuadTo:
			path.QuadTo(at(s.Args[0]), at(s.Args[1]))
		case sfnt.SegmentOpCubeTo:
			path.CubeTo(at(s.Args[0]), at(s.Args[1]), at(s.Args[2]))
		}
	}
	if open {
		path.Close()
	}
}
