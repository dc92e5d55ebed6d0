package canvas

import (
	"bytes"
	"fmt"
	"html"
	"math"
	"strconv"

	xfont "golang.org/x/image/font"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/vg"
)

// svg is a vg.Canvas that writes SVG with presentation attributes and classes
// instead of style attributes, and real text. The same drawing gives the same
// bytes.
type svg struct {
	surface
	body []byte
	used [2]map[rune]bool // characters, of the regular and of the bold face

	paper bool // a file of its own, for paper
}

var _ vg.CanvasSizer = (*svg)(nil)

// usualSize is what most drawings of the bench take, bytes.
const usualSize = 24 << 10

func newSVG(w, h float64) *svg {
	return &svg{surface: newSurface(w, h), body: make([]byte, 0, usualSize), used: [2]map[rune]bool{{}, {}}}
}

// Stroke draws the line of a path.
func (c *svg) Stroke(path vg.Path) {
	s := c.now()
	if s.width <= 0 {
		return
	}
	c.shape(path)
	c.write(` fill="none"`)
	c.paint("line", "stroke")
	if s.width != 1 {
		c.number(` stroke-width="`, s.width, `"`)
	}
	for i, d := range s.dash {
		before := " "
		if i == 0 {
			before = ` stroke-dasharray="`
		}
		c.number(before, d.Points(), "")
	}
	if len(s.dash) > 0 {
		c.write(`"`)
	}
	c.write("/>\n")
}

// Fill fills a path.
func (c *svg) Fill(path vg.Path) {
	c.shape(path)
	c.paint("fill", "fill")
	c.write("/>\n")
}

// write and number add a text, and a number between two texts.
func (c *svg) write(s string) { c.body = append(c.body, s...) }

func (c *svg) number(before string, x float64, after string) {
	c.body = append(appendNumber(append(c.body, before...), x), after...)
}

// paint writes the colour as class and attributes.
func (c *svg) paint(class, attribute string) {
	name, hex, opacity := c.now().paint()
	if name != "" {
		c.write(` class="` + class + "-" + name + `"`)
	}
	c.write(" " + attribute + `="#`)
	for _, part := range [3]uint8{hex.R, hex.G, hex.B} {
		c.body = append(c.body, hexDigits[part>>4], hexDigits[part&15])
	}
	c.write(`"`)
	if opacity < 1 {
		c.write(" " + attribute)
		c.number(`-opacity="`, opacity, `"`)
	}
}

const hexDigits = "0123456789ABCDEF"

func (c *svg) shape(path vg.Path) {
	c.write(`<path d="`)
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
			c.write("Z")
		}
	}
	c.write(`"`)
}

func (c *svg) point(letter byte, x, y float64) {
	c.body = appendNumber(append(c.body, letter), x)
	c.number(" ", y, "")
}

// arc writes an arc of up to a full circle, in halves.
func (c *svg) arc(p vg.PathComp) {
	at := func(angle float64) (x, y float64) {
		sin, cos := math.Sincos(angle)
		return c.place(vg.Point{X: p.Pos.X + p.Radius*vg.Length(cos), Y: p.Pos.Y + p.Radius*vg.Length(sin)})
	}
	x, y := at(p.Start)
	letter := byte('L')
	if c.body[len(c.body)-1] == '"' {
		letter = 'M'
	}
	c.point(letter, x, y)
	sweep := " 0 0 0"
	if p.Angle < 0 {
		sweep = " 0 0 1"
	}
	r := p.Radius.Points()
	for _, share := range []float64{0.5, 1} {
		x, y = at(p.Start + share*p.Angle)
		c.number("A", r, " ")
		c.number("", r, sweep)
		c.number(" ", x, " ")
		c.number("", y, "")
	}
}

// Anchor is the side of a text that stands at its point.
type Anchor int

const (
	Start Anchor = iota
	Middle
	End
)

// anchored is a canvas that can centre a text itself.
type anchored interface {
	fillAnchored(font.Face, vg.Point, Anchor, string)
	outlined() bool // it draws the letters of other fonts, for there may be none where it is read
}

func (c *svg) outlined() bool { return c.paper }

// FillString writes a text from its point to the right.
func (c *svg) FillString(f font.Face, pt vg.Point, s string) { c.fillAnchored(f, pt, Start, s) }

// fillAnchored writes a text so that it stays centred or ends at its point even
// where another typeface stands in.
func (c *svg) fillAnchored(f font.Face, pt vg.Point, side Anchor, s string) {
	x, y := c.place(pt)
	c.number(`<text x="`, x, `"`)
	c.number(` y="`, y, `"`)
	c.number(` font-size="`, f.Font.Size.Points(), `"`)
	if turn := c.now().turn(); turn != 0 {
		c.number(` transform="rotate(`, -turn, " ")
		c.number("", x, " ")
		c.number("", y, `)"`)
	}
	used := c.used[0]
	if f.Font.Weight == xfont.WeightBold {
		c.write(` font-weight="700"`)
		used = c.used[1]
	}
	for _, r := range s {
		used[r] = true
	}
	switch side {
	case Middle:
		c.write(` text-anchor="middle"`)
	case End:
		c.write(` text-anchor="end"`)
	}
	c.paint("fill", "fill")
	c.write(">")
	c.write(html.EscapeString(s))
	c.write("</text>\n")
}

// number writes a coordinate with at most two decimals.
func number(x float64) string { return string(appendNumber(nil, x)) }

func appendNumber(b []byte, x float64) []byte {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		panic("draw: a coordinate is not a number")
	}
	n := int64(math.Round(x * 100)) // a drawing is some thousand px wide
	if n < 0 {
		b, n = append(b, '-'), -n
	}
	b = strconv.AppendInt(b, n/100, 10)
	if n %= 100; n == 0 {
		return b
	}
	if b = append(b, '.', byte('0'+n/10)); n%10 != 0 {
		b = append(b, byte('0'+n%10))
	}
	return b
}

// document puts the shapes into an SVG that says in words what it shows.
// For paper its size is in mm, and it holds what it carries and its own typeface.
func (c *svg) document(class, id, title, desc, unit, carried string) []byte {
	var b bytes.Buffer
	b.Grow(len(c.body) + 4<<10)
	w, h := number(c.w), number(c.h)
	wide, high, family, faces := w, h, familyList, ""
	if unit == "mm" {
		wide, high = number(c.w/PerMM)+unit, number(c.h/PerMM)+unit
		family, faces = ownFamily+", "+familyList, c.faces()
	}
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" class="drawing %s" role="img" aria-labelledby="%s-title %s-desc" width="%s" height="%s" viewBox="0 0 %s %s" font-family="%s">`+"\n",
		class, id, id, wide, high, w, h, family)
	fmt.Fprintf(&b, "<title id=\"%s-title\">%s</title>\n<desc id=\"%s-desc\">%s</desc>\n", id, html.EscapeString(title), id, html.EscapeString(desc))
	if carried != "" {
		b.WriteString(carried + "\n")
	}
	b.WriteString(faces)
	b.Write(c.body)
	b.WriteString("</svg>\n")
	return b.Bytes()
}
