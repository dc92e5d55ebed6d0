package draw

import (
	"math"
	"slices"

	"golang.org/x/text/unicode/bidi"
	"gonum.org/v1/plot/vg"
)

// A pen draws on a canvas in px with y growing downward, and keeps the boxes of
// the texts it has written. Its own px may be smaller than those of the canvas:
// see [pen.within].
type pen struct {
	c      vg.Canvas
	h      float64 // of the canvas
	x0, y0 float64 // where the pen's corner lies on the canvas
	shrunk float64 // px of the canvas for one of the pen; 0 stands for 1
	texts  []label
}

// newPen makes a pen for a canvas of a height in px.
func newPen(c vg.Canvas, height float64) *pen { return &pen{c: c, h: height} }

// within draws with a pen whose corner lies at (x, y) and whose px are k of this
// one's: lines, texts and all.
func (p *pen) within(x, y, k float64, draw func(*pen)) {
	q := *p
	q.x0, q.y0, q.shrunk = p.x0+p.k()*x, p.y0+p.k()*y, p.k()*k
	draw(&q)
	p.texts = q.texts
}

func (p *pen) k() float64 {
	if p.shrunk == 0 {
		return 1
	}
	return p.shrunk
}

// A label is a text that was written, and the box it takes.
type label struct {
	text           string
	style          style
	clear          bool // stands on a ground of its own
	x0, y0, x1, y1 float64
}

func (p *pen) at(x, y float64) vg.Point {
	return vg.Point{X: vg.Length(p.x0 + p.k()*x), Y: vg.Length(p.h - p.y0 - p.k()*y)}
}

func (p *pen) path(points ...[2]float64) vg.Path {
	path := make(vg.Path, 0, len(points)+1) // room to close it
	for i, q := range points {
		if i == 0 {
			path.Move(p.at(q[0], q[1]))
		} else {
			path.Line(p.at(q[0], q[1]))
		}
	}
	return path
}

func (p *pen) stroke(k ink, width float64, dash []vg.Length, path vg.Path) {
	p.c.SetColor(k)
	p.c.SetLineWidth(vg.Length(width * p.k()))
	if p.k() != 1 {
		dash = slices.Clone(dash)
		for i := range dash {
			dash[i] *= vg.Length(p.k())
		}
	}
	p.c.SetLineDash(dash, 0)
	p.c.Stroke(path)
}

// line draws an open line.
func (p *pen) line(k ink, width float64, dash []vg.Length, points ...[2]float64) {
	if len(points) > 1 {
		p.stroke(k, width, dash, p.path(points...))
	}
}

// hline and vline draw thin lines that fall on whole pixels.
func (p *pen) hline(k ink, x0, x1, y float64) {
	y = crisp(y)
	p.line(k, thinLine, solid, [2]float64{x0, y}, [2]float64{x1, y})
}

func (p *pen) vline(k ink, x, y0, y1 float64) {
	x = crisp(x)
	p.line(k, thinLine, solid, [2]float64{x, y0}, [2]float64{x, y1})
}

func crisp(x float64) float64 { return math.Floor(x) + 0.5 }

// shape fills a path.
func (p *pen) shape(k ink, path vg.Path) {
	p.c.SetColor(k)
	p.c.Fill(path)
}

// area fills a closed shape.
func (p *pen) area(k ink, points ...[2]float64) {
	path := p.path(points...)
	path.Close()
	p.c.SetColor(k)
	p.c.Fill(path)
}

func (p *pen) fill(k ink, r rect) {
	if r.x1 > r.x0 && r.y1 > r.y0 {
		p.area(k, r.corners()...)
	}
}

func (p *pen) frame(k ink, width float64, dash []vg.Length, r rect) {
	path := p.path(r.corners()...)
	path.Close()
	p.stroke(k, width, dash, path)
}

// circle draws a disc with its outline.
func (p *pen) circle(fill, edge ink, width, x, y, r float64) {
	var path vg.Path
	path.Arc(p.at(x, y), vg.Length(r*p.k()), 0, 2*math.Pi)
	path.Close()
	p.c.SetColor(fill)
	p.c.Fill(path)
	p.stroke(edge, width, solid, path)
}

// style of a text.
type style struct {
	ink  ink
	size float64
	bold bool
}

// Plain is an upright style, Bold a bold one.
func Plain(k ink, size float64) style { return style{k, size, false} }

// Bold: see [Plain].
func Bold(k ink, size float64) style { return style{k, size, true} }

func (s style) face() *face {
	if s.bold {
		return bold()
	}
	return regular()
}

// width of a text in this style, px.
func (s style) width(text string) float64 { return s.face().width(text, s.size) }

// clip shortens a text to a width, with an ellipsis.
func (s style) clip(text string, width float64) string { return s.face().clip(text, s.size, width) }

// wrap breaks a text into lines of at most a width; a word that is too long alone is clipped.
func (s style) wrap(text string, width float64) []string { return s.face().wrap(text, s.size, width) }

// text writes a line with its baseline at y.
func (p *pen) text(s style, x, y float64, side anchor, text string) {
	if text == "" {
		return
	}
	w := s.width(text)
	left := x - []float64{0, w / 2, w}[side]
	k := p.k()
	p.texts = append(p.texts, label{text, s, false, p.x0 + k*left, p.y0 + k*(y-0.76*s.size), p.x0 + k*(left+w), p.y0 + k*(y+0.22*s.size)})
	p.c.SetColor(s.ink)
	f := s.face().at(s.size * k)
	parts := s.face().parts(text)
	if c, ok := p.c.(anchored); ok && (parts == nil || !c.outlined()) {
		c.fillAnchored(f, p.at(x, y), side, text)
		return
	}
	if parts == nil {
		p.c.FillString(f, p.at(left, y), visual(s.face().boxed(text)))
		return
	}
	_, orders := p.c.(anchored)
	for _, q := range parts {
		if q.other == nil {
			own := s.face().boxed(q.text)
			if q.back && !orders {
				own = bidi.ReverseString(own)
			}
			p.c.FillString(f, p.at(left, y), own)
		} else {
			var path vg.Path
			q.outlines(&path, func(gx, gy float64) vg.Point { return p.at(left+gx*s.size, y+gy*s.size) })
			p.c.Fill(path)
		}
		left += s.face().partWidth(q) * s.size
	}
}

// onPaper writes a line on a clear ground, over lines that pass there.
func (p *pen) onPaper(s style, x, y float64, side anchor, text string) {
	w := s.width(text)
	left := x - []float64{0, w / 2, w}[side]
	p.fill(paper, rect{left - 3, y - s.size, left + w + 3, y + 4})
	p.text(s, x, y, side, text)
	p.cleared(1)
}

// cleared says that the last n texts stand on a ground of their own, over lines
// that pass there.
func (p *pen) cleared(n int) {
	for i := max(0, len(p.texts)-n); i < len(p.texts); i++ {
		p.texts[i].clear = true
	}
}

// lines writes lines under one another and gives the last baseline.
func (p *pen) lines(s style, x, y float64, side anchor, lines []string) float64 {
	for i, l := range lines {
		if i > 0 {
			y += leading * s.size
		}
		p.text(s, x, y, side, l)
	}
	return y
}

// arrow draws a slim closed head whose tip is at (x, y), pointing right for a
// positive length, left for a negative one.
func (p *pen) arrow(k ink, x, y, length float64) {
	half := math.Abs(length) / 4.5
	p.area(k, [2]float64{x, y}, [2]float64{x - length, y - half}, [2]float64{x - length, y + half})
}
