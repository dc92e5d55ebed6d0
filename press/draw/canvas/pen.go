package canvas

import (
	"math"
	"slices"

	"golang.org/x/text/unicode/bidi"
	"gonum.org/v1/plot/vg"
)

// A Pen draws on a canvas in px with y growing downward, and keeps the boxes of
// the texts it has written. Its own px may be smaller than those of the canvas:
// see [Pen.Within].
type Pen struct {
	c      vg.Canvas
	h      float64 // of the canvas
	x0, y0 float64 // where the pen's corner lies on the canvas
	shrunk float64 // px of the canvas for one of the pen; 0 stands for 1
	Texts  []Label
}

// NewPen makes a pen for a canvas of a height in px.
func NewPen(c vg.Canvas, height float64) *Pen { return &Pen{c: c, h: height} }

// Within draws with a pen whose corner lies at (x, y) and whose px are k of this
// one's: lines, texts and all.
func (p *Pen) Within(x, y, k float64, draw func(*Pen)) {
	q := *p
	q.x0, q.y0, q.shrunk = p.x0+p.k()*x, p.y0+p.k()*y, p.k()*k
	draw(&q)
	p.Texts = q.Texts
}

func (p *Pen) k() float64 {
	if p.shrunk == 0 {
		return 1
	}
	return p.shrunk
}

// A Label is a text that was written, and the box it takes.
type Label struct {
	Text           string
	Style          Style
	Clear          bool // stands on a ground of its own
	X0, Y0, X1, Y1 float64
}

func (p *Pen) at(x, y float64) vg.Point {
	return vg.Point{X: vg.Length(p.x0 + p.k()*x), Y: vg.Length(p.h - p.y0 - p.k()*y)}
}

func (p *Pen) path(points ...[2]float64) vg.Path {
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

func (p *Pen) stroke(k Ink, width float64, dash Dash, path vg.Path) {
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

// Line draws an open line.
func (p *Pen) Line(k Ink, width float64, dash Dash, points ...[2]float64) {
	if len(points) > 1 {
		p.stroke(k, width, dash, p.path(points...))
	}
}

// HLine and vline draw thin lines that fall on whole pixels.
func (p *Pen) HLine(k Ink, x0, x1, y float64) {
	y = Crisp(y)
	p.Line(k, ThinLine, Solid, [2]float64{x0, y}, [2]float64{x1, y})
}

// VLine: see [Pen.HLine].
func (p *Pen) VLine(k Ink, x, y0, y1 float64) {
	x = Crisp(x)
	p.Line(k, ThinLine, Solid, [2]float64{x, y0}, [2]float64{x, y1})
}

// Crisp puts a line of one px on whole pixels.
func Crisp(x float64) float64 { return math.Floor(x) + 0.5 }

// shape fills a path.
func (p *Pen) shape(k Ink, path vg.Path) {
	p.c.SetColor(k)
	p.c.Fill(path)
}

// Area fills a closed shape.
func (p *Pen) Area(k Ink, points ...[2]float64) {
	path := p.path(points...)
	path.Close()
	p.c.SetColor(k)
	p.c.Fill(path)
}

// Fill fills a rectangle; one of no size leaves nothing.
func (p *Pen) Fill(k Ink, r Rectangle) {
	if r.X1 > r.X0 && r.Y1 > r.Y0 {
		p.Area(k, r.corners()...)
	}
}

// Frame draws the edge of a rectangle.
func (p *Pen) Frame(k Ink, width float64, dash Dash, r Rectangle) {
	path := p.path(r.corners()...)
	path.Close()
	p.stroke(k, width, dash, path)
}

// Circle draws a disc with its outline.
func (p *Pen) Circle(fill, edge Ink, width, x, y, r float64) {
	var path vg.Path
	path.Arc(p.at(x, y), vg.Length(r*p.k()), 0, 2*math.Pi)
	path.Close()
	p.c.SetColor(fill)
	p.c.Fill(path)
	p.stroke(edge, width, Solid, path)
}

// Style of a text.
type Style struct {
	Ink  Ink
	Size float64
	Bold bool
}

// Plain is an upright style, Bold a bold one.
func Plain(k Ink, size float64) Style { return Style{k, size, false} }

// Bold: see [Plain].
func Bold(k Ink, size float64) Style { return Style{k, size, true} }

func (s Style) face() *face {
	if s.Bold {
		return bold()
	}
	return regular()
}

// Width of a text in this style, px.
func (s Style) Width(text string) float64 { return s.face().width(text, s.Size) }

// Clip shortens a text to a width, with an ellipsis.
func (s Style) Clip(text string, width float64) string { return s.face().clip(text, s.Size, width) }

// Wrap breaks a text into lines of at most a width; a word that is too long alone is clipped.
func (s Style) Wrap(text string, width float64) []string { return s.face().wrap(text, s.Size, width) }

// Text writes a line with its baseline at y.
func (p *Pen) Text(s Style, x, y float64, side Anchor, text string) {
	if text == "" {
		return
	}
	w := s.Width(text)
	left := x - []float64{0, w / 2, w}[side]
	k := p.k()
	p.Texts = append(p.Texts, Label{text, s, false, p.x0 + k*left, p.y0 + k*(y-0.76*s.Size), p.x0 + k*(left+w), p.y0 + k*(y+0.22*s.Size)})
	p.c.SetColor(s.Ink)
	f := s.face().at(s.Size * k)
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
			q.outlines(&path, func(gx, gy float64) vg.Point { return p.at(left+gx*s.Size, y+gy*s.Size) })
			p.c.Fill(path)
		}
		left += s.face().partWidth(q) * s.Size
	}
}

// OnPaper writes a line on a clear ground, over lines that pass there.
func (p *Pen) OnPaper(s Style, x, y float64, side Anchor, text string) {
	w := s.Width(text)
	left := x - []float64{0, w / 2, w}[side]
	p.Fill(Paper, Rectangle{left - 3, y - s.Size, left + w + 3, y + 4})
	p.Text(s, x, y, side, text)
	p.Cleared(1)
}

// Cleared says that the last n texts stand on a ground of their own, over lines
// that pass there.
func (p *Pen) Cleared(n int) {
	for i := max(0, len(p.Texts)-n); i < len(p.Texts); i++ {
		p.Texts[i].Clear = true
	}
}

// Lines writes lines under one another and gives the last baseline.
func (p *Pen) Lines(s Style, x, y float64, side Anchor, lines []string) float64 {
	for i, l := range lines {
		if i > 0 {
			y += Leading * s.Size
		}
		p.Text(s, x, y, side, l)
	}
	return y
}

// Arrow draws a slim closed head whose tip is at (x, y), pointing right for a
// positive length, left for a negative one.
func (p *Pen) Arrow(k Ink, x, y, length float64) {
	half := math.Abs(length) / 4.5
	p.Area(k, [2]float64{x, y}, [2]float64{x - length, y - half}, [2]float64{x - length, y + half})
}
