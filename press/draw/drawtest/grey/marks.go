// Package grey is for tests: it takes the colour away from a drawing and names the marks
// that then look the same.
package grey

import (
	"fmt"
	"image/color"
	"math"
	"slices"
	"strings"
	"unicode"

	"gonum.org/v1/plot/vg"

	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
)

// A Mark is one stroke or fill as it reaches the canvas, in px of the page.
type Mark struct {
	Fill  bool
	Ink   canvas.Ink
	width float64
	dash  string
	At    [][2]float64
	Hatch string // of a fill: the directions of the lines over it; of a stroke: that it is nothing but such lines
}

// marks is a canvas that keeps what is drawn on it, without the letters.
type marks struct {
	canvas.Blank
	height float64
	ink    canvas.Ink
	width  float64
	dash   []vg.Length
	list   []Mark
}

func newMarks(h float64) *marks { return &marks{height: h} }

// Of draws a picture and gives its marks and its texts.
func Of(d *canvas.Picture) ([]Mark, []canvas.Label) {
	_, h := d.Size()
	m := newMarks(h)
	texts := d.On(m)
	return m.list, texts
}

func (m *marks) SetLineWidth(w vg.Length)               { m.width = w.Points() }
func (m *marks) SetLineDash(d []vg.Length, _ vg.Length) { m.dash = d }
func (m *marks) SetColor(c color.Color) {
	k, named := c.(canvas.Ink)
	if !named {
		light := color.NRGBAModel.Convert(c).(color.NRGBA)
		k = canvas.Ink{Name: "other", Light: light, Opacity: float64(light.A) / 255}
	}
	m.ink = k
}

func (m *marks) add(fill bool, path vg.Path) {
	q := Mark{Fill: fill, Ink: m.ink, width: m.width, dash: fmt.Sprint(len(m.dash))}
	rising, falling, straight := false, false, len(path) > 0
	var last [2]float64
	for _, c := range path {
		if c.Type == vg.CloseComp {
			continue
		}
		x, y := c.Pos.X.Points(), m.height-c.Pos.Y.Points()
		if c.Type == vg.LineComp && !fill {
			dx, dy := x-last[0], y-last[1]
			switch {
			case math.Abs(math.Abs(dx)-math.Abs(dy)) > 0.01:
				straight = false
			case dx*dy < 0:
				rising = true
			default:
				falling = true
			}
		}
		last = [2]float64{x, y}
		q.At = append(q.At, last)
	}
	if !fill && straight && (rising || falling) && len(path) >= 2 {
		q.Hatch = direction(rising, falling)
	}
	m.list = append(m.list, q)
}

func direction(rising, falling bool) string {
	return map[[2]bool]string{{true, false}: "rising", {false, true}: "falling", {true, true}: "crossed"}[[2]bool{rising, falling}]
}

func (m *marks) Stroke(p vg.Path) { m.add(false, p) }
func (m *marks) Fill(p vg.Path)   { m.add(true, p) }

// Box is the room that a mark takes.
func (q Mark) Box() canvas.Rectangle {
	b := canvas.Rect(math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1))
	for _, a := range q.At {
		b = canvas.Rect(min(b.X0, a[0]), min(b.Y0, a[1]), max(b.X1, a[0]), max(b.Y1, a[1]))
	}
	return b
}

// grey is the lightness of a mark on paper without its colour, 0 to 100 (CIE L*).
func (q Mark) grey() float64 {
	c := q.Ink.Light
	over := func(v uint8) uint8 { return uint8(255 - q.Ink.Opacity*(255-float64(v)) + 0.5) }
	y := drawtest.Luminance(color.NRGBA{over(c.R), over(c.G), over(c.B), 255})
	if y <= 216.0/24389 {
		return y * 24389 / 27
	}
	return 116*math.Cbrt(y) - 16
}

// coloured are the inks that say something by their hue; the others are greys.
func (q Mark) coloured() bool {
	return slices.Contains([]string{canvas.Good.Name, canvas.Long.Name, canvas.Short.Name, canvas.Accent.Name, canvas.Alert.Name, "other"}, q.Ink.Name)
}

// Least differences in lightness that print as different greys: of lines, and of
// fields that lie side by side. Our own measure, no source.
const (
	greyOfLines  = 15
	greyOfFields = 5
)

// Hatched gives every fill the hatch that is drawn over it, and leaves out what
// carries no meaning: paper, hatches themselves, and grid, axes, ticks and leaders,
// which are grey already.
func Hatched(list []Mark) []Mark {
	var out []Mark
	for i, q := range list {
		if slices.Contains([]string{canvas.Paper.Name, canvas.Ground.Name, canvas.Faint.Name}, q.Ink.Name) || len(q.At) < 2 {
			continue
		}
		b := q.Box()
		if partOf(q, list) || q.Fill && min(b.Width(), b.Height()) < 6 {
			continue
		}
		if !q.Fill {
			level := b.Width() < 0.01 || b.Height() < 0.01
			if q.Hatch == "" && (q.coloured() || !level && math.Hypot(b.Width(), b.Height()) > 40) {
				out = append(out, q)
			}
			continue
		}
		rising, falling := false, false
		least := b.Width() / 2
		if len(q.At) != 4 {
			least = b.Width() / 8 // lines have no room in the flat parts under a curve
		}
		for _, h := range list[i+1:] {
			if c := h.Box(); h.Fill || h.Hatch == "" || c.X0 < b.X0-1 || c.X1 > b.X1+1 || c.Y0 < b.Y0-1 || c.Y1 > b.Y1+1 || c.Width() < least {
				continue
			}
			rising = rising || h.Hatch != "falling"
			falling = falling || h.Hatch != "rising"
		}
		q.Hatch = direction(rising, falling)
		out = append(out, q)
	}
	return out
}

// partOf tells whether a mark is only part of a larger one of its ink: the edge of
// a field, or the head of an arrow at its line.
func partOf(q Mark, list []Mark) bool {
	b := q.Box()
	head := q.Fill && b.Width() < 12 && b.Height() < 12
	return slices.ContainsFunc(list, func(o Mark) bool {
		c := o.Box()
		if o.Ink.Name != q.Ink.Name || c.Width()+c.Height() <= b.Width()+b.Height() {
			return false
		}
		inside := b.X0 > c.X0-1 && b.X1 < c.X1+1 && b.Y0 > c.Y0-1 && b.Y1 < c.Y1+1
		touching := b.X0 < c.X1+2 && b.X1 > c.X0-2 && b.Y0 < c.Y1+2 && b.Y1 > c.Y0-2
		return o.Fill && !q.Fill && inside || head && touching
	})
}

// sameInGrey tells whether two marks of different inks look the same without colour.
func sameInGrey(a, b Mark) bool {
	if a.Fill != b.Fill || a.Ink.Name == b.Ink.Name || !a.coloured() && !b.coloured() {
		return false
	}
	apart := math.Abs(a.grey() - b.grey())
	if a.Fill {
		return apart < greyOfFields && a.Hatch == b.Hatch
	}
	return apart < greyOfLines && a.dash == b.dash && max(a.width, b.width) < 1.5*min(a.width, b.width)
}

// near is how far from a mark its name may stand, px.
const near = 26

// names are the words that stand in a mark, or else at it, or at the left of its
// row. Figures are none: they say how much, not what.
func names(q Mark, texts []canvas.Label) []string {
	var in, at []string
	b := q.Box()
	for _, l := range texts {
		if !strings.ContainsFunc(l.Text, unicode.IsLetter) {
			continue
		}
		dx, dy := max(l.X0-b.X1, b.X0-l.X1, 0), max(l.Y0-b.Y1, b.Y0-l.Y1, 0)
		x, y := (l.X0+l.X1)/2, (l.Y0+l.Y1)/2
		row := l.X1 < b.X0 && dy < near
		switch {
		case q.Fill && len(q.At) == 4 && x > b.X0 && x < b.X1 && y > b.Y0 && y < b.Y1:
			in = append(in, l.Text)
		case row || math.Hypot(dx, dy) < near && touches(q, l):
			at = append(at, l.Text)
		}
	}
	if len(in) > 0 {
		return in
	}
	return at
}

// touches tells whether a text stands at the line itself, not only in its box.
func touches(q Mark, l canvas.Label) bool {
	if q.Fill {
		return true
	}
	for i := 1; i < len(q.At); i++ {
		for s := 0.0; s <= 1; s += 0.02 {
			x, y := q.At[i-1][0]+s*(q.At[i][0]-q.At[i-1][0]), q.At[i-1][1]+s*(q.At[i][1]-q.At[i-1][1])
			if math.Hypot(max(l.X0-x, x-l.X1, 0), max(l.Y0-y, y-l.Y1, 0)) < near {
				return true
			}
		}
	}
	return false
}

// Lost lists the pairs of marks that differ by their hue alone: alike in
// grey, and not told apart by words.
func Lost(list []Mark, texts []canvas.Label) []string {
	list = Hatched(list)
	var out []string
	for i, a := range list {
		for _, b := range list[:i] {
			if !sameInGrey(a, b) {
				continue
			}
			na, nb := names(a, texts), names(b, texts)
			own := slices.ContainsFunc(na, func(s string) bool { return !slices.Contains(nb, s) })
			other := slices.ContainsFunc(nb, func(s string) bool { return !slices.Contains(na, s) })
			if !own && !other {
				out = append(out, fmt.Sprintf("%s at %.0f and %s at %.0f, named %q", a.Ink.Name, a.Box(), b.Ink.Name, b.Box(), na))
			}
		}
	}
	return out
}
