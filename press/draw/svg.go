package draw

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
	body bytes.Buffer
	used [2]map[rune]bool // characters, of the regular and of the bold face

	paper bool // a file of its own, for paper
}

var _ vg.CanvasSizer = (*svg)(nil)

func newSVG(w, h float64) *svg {
	return &svg{surface: newSurface(w, h), used: [2]map[rune]bool{{}, {}}}
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
	name, hex, opacity := c.now().paint()
	if name != "" {
		fmt.Fprintf(&c.body, ` class="%s-%s"`, class, name)
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

// anchored is a canvas that can centre a text itself.
type anchored interface {
	fillAnchored(font.Face, vg.Point, anchor, string)
	outlined() bool // it draws the letters of other fonts, for there may be none where it is read
}

func (c *svg) outlined() bool { return c.paper }

// FillString writes a text from its point to the right.
func (c *svg) FillString(f font.Face, pt vg.Point, s string) { c.fillAnchored(f, pt, start, s) }

// fillAnchored writes a text so that it stays centred or ends at its point even
// where another typeface stands in.
func (c *svg) fillAnchored(f font.Face, pt vg.Point, side anchor, s string) {
	x, y := c.place(pt)
	fmt.Fprintf(&c.body, `<text x="%s" y="%s" font-size="%s"`, number(x), number(y), number(f.Font.Size.Points()))
	if turn := c.now().turn(); turn != 0 {
		fmt.Fprintf(&c.body, ` transform="rotate(%s %s %s)"`, number(-turn), number(x), number(y))
	}
	used := c.used[0]
	if f.Font.Weight == xfont.WeightBold {
		c.body.WriteString(` font-weight="700"`)
		used = c.used[1]
	}
	for _, r := range s {
		used[r] = true
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
// For paper its size is in mm, and it holds what it carries and its own typeface.
func (c *svg) document(class, id, title, desc, unit, carried string) []byte {
	var b bytes.Buffer
	w, h := number(c.w), number(c.h)
	wide, high, family, faces := w, h, familyList, ""
	if unit == "mm" {
		wide, high = number(c.w/perMM)+unit, number(c.h/perMM)+unit
		family, faces = ownFamily+", "+familyList, c.faces()
	}
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" class="drawing %s" role="img" aria-labelledby="%s-title %s-desc" width="%s" height="%s" viewBox="0 0 %s %s" font-family="%s">`+"\n",
		class, id, id, wide, high, w, h, family)
	fmt.Fprintf(&b, "<title id=\"%s-title\">%s</title>\n<desc id=\"%s-desc\">%s</desc>\n", id, html.EscapeString(title), id, html.EscapeString(desc))
	if carried != "" {
		b.WriteString(carried + "\n")
	}
	b.WriteString(faces)
	b.Write(c.body.Bytes())
	b.WriteString("</svg>\n")
	return b.Bytes()
}
