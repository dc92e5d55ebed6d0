package draw

import (
	"bytes"
	"fmt"
	"html"
	"image"
	"image/color"
	"math"
	"strconv"

	xfont "golang.org/x/image/font"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/vg"
)

// svg is a vg.Canvas that writes SVG with presentation attributes and classes
// instead of style attributes, and real text. Coordinates are px; the same
// drawing gives the same bytes.
type svg struct {
	w, h  float64
	body  bytes.Buffer
	stack []state
}

// state is what Push saves.
type state struct {
	colour color.Color
	width  float64
	dash   []vg.Length
	a      [6]float64 // x' = a0·x + a2·y + a4, y' = a1·x + a3·y + a5
}

var _ vg.CanvasSizer = (*svg)(nil)

func newSVG(w, h float64) *svg {
	return &svg{w: w, h: h, stack: []state{{colour: black, width: 1, a: [6]float64{1, 0, 0, 1, 0, 0}}}}
}

func (c *svg) now() *state { return &c.stack[len(c.stack)-1] }

// Size: see vg.CanvasSizer; the other methods are those of vg.Canvas.
func (c *svg) Size() (x, y vg.Length) { return vg.Length(c.w), vg.Length(c.h) }

// SetLineWidth sets the width of strokes.
func (c *svg) SetLineWidth(w vg.Length) { c.now().width = w.Points() }

// SetLineDash sets the dashes of strokes; an offset is not used here.
func (c *svg) SetLineDash(pattern []vg.Length, _ vg.Length) { c.now().dash = pattern }

// SetColor sets the colour of fills and strokes.
func (c *svg) SetColor(k color.Color) {
	if k == nil {
		k = black
	}
	c.now().colour = k
}

// Rotate turns what follows.
func (c *svg) Rotate(rad float64) {
	sin, cos := math.Sincos(rad)
	c.transform([6]float64{cos, sin, -sin, cos, 0, 0})
}

// Translate moves what follows.
func (c *svg) Translate(p vg.Point) { c.transform([6]float64{1, 0, 0, 1, p.X.Points(), p.Y.Points()}) }

// Scale scales what follows.
func (c *svg) Scale(x, y float64) { c.transform([6]float64{x, 0, 0, y, 0, 0}) }

func (c *svg) transform(b [6]float64) {
	a := c.now().a
	c.now().a = [6]float64{
		a[0]*b[0] + a[2]*b[1], a[1]*b[0] + a[3]*b[1],
		a[0]*b[2] + a[2]*b[3], a[1]*b[2] + a[3]*b[3],
		a[0]*b[4] + a[2]*b[5] + a[4], a[1]*b[4] + a[3]*b[5] + a[5],
	}
}

// Push saves the state, Pop restores it.
func (c *svg) Push() { c.stack = append(c.stack, *c.now()) }

// Pop: see Push.
func (c *svg) Pop() { c.stack = c.stack[:len(c.stack)-1] }

// place gives the SVG coordinates of a point: the origin of vg is bottom left.
func (c *svg) place(p vg.Point) (x, y float64) {
	a, px, py := c.now().a, p.X.Points(), p.Y.Points()
	return a[0]*px + a[2]*py + a[4], c.h - (a[1]*px + a[3]*py + a[5])
}

// Stroke draws the line of a path.
func (c *svg) Stroke(path vg.Path) {
	s := c.now()
	if s.width <= 0 {
		return
	}
	c.shape(path)
	c.body.WriteString(` fill="none"`)
	c.paint("line", "stroke")
	if s.width != 1 {
		fmt.Fprintf(&c.body, ` stroke-width="%s"`, number(s.width))
	}
	for i, d := range s.dash {
		if i == 0 {
			c.body.WriteString(` stroke-dasharray="`)
		} else {
			c.body.WriteByte(' ')
		}
		c.body.WriteString(number(d.Points()))
	}
	if len(s.dash) > 0 {
		c.body.WriteByte('"')
	}
	c.body.WriteString("/>\n")
}

// Fill fills a path.
func (c *svg) Fill(path vg.Path) {
	c.shape(path)
	c.paint("fill", "fill")
	c.body.WriteString("/>\n")
}

// paint writes the colour as class and attributes.
func (c *svg) paint(class, attribute string) {
	k := c.now().colour
	opacity := 1.0
	hex := color.NRGBAModel.Convert(k).(color.NRGBA)
	if named, ok := k.(ink); ok {
		fmt.Fprintf(&c.body, ` class="%s-%s"`, class, named.name)
		opacity, hex = named.opacity, named.light
	} else {
		opacity = float64(hex.A) / 255
	}
	fmt.Fprintf(&c.body, ` %s="#%02X%02X%02X"`, attribute, hex.R, hex.G, hex.B)
	if opacity < 1 {
		fmt.Fprintf(&c.body, ` %s-opacity="%s"`, attribute, number(opacity))
	}
}

func (c *svg) shape(path vg.Path) {
	c.body.WriteString(`<path d="`)
	for _, p := range path {
		x, y := c.place(p.Pos)
		switch p.Type {
		case vg.MoveComp:
			c.point('M', x, y)
		case vg.LineComp:
			c.point('L', x, y)
		case vg.ArcComp:
			c.arc(p)
		case vg.CurveComp:
			letter := byte("QC"[len(p.Control)-1])
			for _, control := range p.Control {
				cx, cy := c.place(control)
				c.point(letter, cx, cy)
				letter = ' '
			}
			c.point(' ', x, y)
		case vg.CloseComp:
			c.body.WriteByte('Z')
		}
	}
	c.body.WriteByte('"')
}

func (c *svg) point(letter byte, x, y float64) {
	c.body.WriteByte(letter)
	c.body.WriteString(number(x))
	c.body.WriteByte(' ')
	c.body.WriteString(number(y))
}

// arc writes an arc of up to a full circle, in halves.
func (c *svg) arc(p vg.PathComp) {
	at := func(angle float64) (x, y float64) {
		sin, cos := math.Sincos(angle)
		return c.place(vg.Point{X: p.Pos.X + p.Radius*vg.Length(cos), Y: p.Pos.Y + p.Radius*vg.Length(sin)})
	}
	x, y := at(p.Start)
	letter := byte('L')
	if b := c.body.Bytes(); b[len(b)-1] == '"' {
		letter = 'M'
	}
	c.point(letter, x, y)
	sweep := 0
	if p.Angle < 0 {
		sweep = 1
	}
	r := number(p.Radius.Points())
	for _, share := range []float64{0.5, 1} {
		x, y = at(p.Start + share*p.Angle)
		fmt.Fprintf(&c.body, "A%s %s 0 0 %d %s %s", r, r, sweep, number(x), number(y))
	}
}

// anchor is the side of a text that stands at its point.
type anchor int

const (
	start anchor = iota
	middle
	end
)

// FillString writes a text from its point to the right.
func (c *svg) FillString(f font.Face, pt vg.Point, s string) { c.fillAnchored(f, pt, start, s) }

// fillAnchored writes a text so that it stays centred or ends at its point even
// where another typeface stands in.
func (c *svg) fillAnchored(f font.Face, pt vg.Point, side anchor, s string) {
	x, y := c.place(pt)
	fmt.Fprintf(&c.body, `<text x="%s" y="%s" font-size="%s"`, number(x), number(y), number(f.Font.Size.Points()))
	if a := c.now().a; a[1] != 0 || a[2] != 0 {
		fmt.Fprintf(&c.body, ` transform="rotate(%s %s %s)"`, number(-math.Atan2(a[1], a[0])*180/math.Pi), number(x), number(y))
	}
	if f.Font.Weight == xfont.WeightBold {
		c.body.WriteString(` font-weight="700"`)
	}
	switch side {
	case middle:
		c.body.WriteString(` text-anchor="middle"`)
	case end:
		c.body.WriteString(` text-anchor="end"`)
	}
	c.paint("fill", "fill")
	c.body.WriteString(">" + html.EscapeString(s) + "</text>\n")
}

// DrawImage is not used by any drawing.
func (c *svg) DrawImage(vg.Rectangle, image.Image) { panic("draw: drawings hold no pictures") }

// number writes a coordinate with at most two decimals.
func number(x float64) string {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		panic("draw: a coordinate is not a number")
	}
	x = math.Round(x*100) / 100
	if x == 0 {
		return "0"
	}
	return strconv.FormatFloat(x, 'f', -1, 64)
}

// document puts the shapes into an SVG that says in words what it shows.
func (c *svg) document(class, id, title, desc string) []byte {
	var b bytes.Buffer
	w, h := number(c.w), number(c.h)
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" class="drawing %s" role="img" aria-labelledby="%s-title %s-desc" width="%s" height="%s" viewBox="0 0 %s %s" font-family="%s">`+"\n",
		class, id, id, w, h, w, h, familyList)
	fmt.Fprintf(&b, "<title id=\"%s-title\">%s</title>\n<desc id=\"%s-desc\">%s</desc>\n", id, html.EscapeString(title), id, html.EscapeString(desc))
	b.Write(c.body.Bytes())
	b.WriteString("</svg>\n")
	return b.Bytes()
}
