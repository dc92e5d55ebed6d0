package draw

import (
	"fmt"
	"image/color"
	"math"
	"slices"
	"strings"
	"unicode"

	"gonum.org/v1/plot/vg"
)

// A mark is one stroke or fill as it reaches the canvas, in px of the page.
type mark struct {
	fill  bool
	ink   ink
	width float64
	dash  string
	at    [][2]float64
	hatch string // of a fill: the directions of the lines over it; of a stroke: that it is nothing but such lines
}

// marks is a canvas that keeps what is drawn on it, without the letters.
type marks struct {
	blank
	height float64
	ink    ink
	width  float64
	dash   []vg.Length
	list   []mark
}

func newMarks(h float64) *marks { return &marks{height: h} }

// marksOf draws a picture and gives its marks and its texts.
func marksOf(d *Picture) ([]mark, []label) {
	_, h := d.Size()
	m := newMarks(h)
	texts := d.on(m)
	return m.list, texts
}

func (m *marks) SetLineWidth(w vg.Length)               { m.width = w.Points() }
func (m *marks) SetLineDash(d []vg.Length, _ vg.Length) { m.dash = d }
func (m *marks) SetColor(c color.Color) {
	k, named := c.(ink)
	if !named {
		light := color.NRGBAModel.Convert(c).(color.NRGBA)
		k = ink{"other", light, float64(light.A) / 255}
	}
	m.ink = k
}

func (m *marks) add(fill bool, path vg.Path) {
	q := mark{fill: fill, ink: m.ink, width: m.width, dash: fmt.Sprint(len(m.dash))}
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
		q.at = append(q.at, last)
	}
	if !fill && straight && (rising || falling) && len(path) >= 2 {
		q.hatch = direction(rising, falling)
	}
	m.list = append(m.list, q)
}

func direction(rising, falling bool) string {
	return map[[2]bool]string{{true, false}: "rising", {false, true}: "falling", {true, true}: "crossed"}[[2]bool{rising, falling}]
}

func (m *marks) Stroke(p vg.Path) { m.add(false, p) }
func (m *marks) Fill(p vg.Path)   { m.add(true, p) }

func (q mark) box() rect {
	b := rect{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}
	for _, a := range q.at {
		b = rect{min(b.x0, a[0]), min(b.y0, a[1]), max(b.x1, a[0]), max(b.y1, a[1])}
	}
	return b
}

// grey is the lightness of a mark on paper without its colour, 0 to 100 (CIE L*).
func (q mark) grey() float64 {
	c := q.ink.light
	over := func(v uint8) uint8 { return uint8(255 - q.ink.opacity*(255-float64(v)) + 0.5) }
	y := luminance(color.NRGBA{over(c.R), over(c.G), over(c.B), 255})
	if y <= 216.0/24389 {
		return y * 24389 / 27
	}
	return 116*math.Cbrt(y) - 16
}

// coloured are the inks that say something by their hue; the others are greys.
func (q mark) coloured() bool {
	return slices.Contains([]string{good.name, long.name, short.name, accent.name, alert.name, "other"}, q.ink.name)
}

// Least differences in lightness that print as different greys: of lines, and of
// fields that lie side by side. Our own measure, no source.
const (
	greyOfLines  = 15
	greyOfFields = 5
)

// hatched gives every fill the hatch that is drawn over it, and leaves out what
// carries no meaning: paper, hatches themselves, and grid, axes, ticks and leaders,
// which are grey already.
func hatched(list []mark) []mark {
	var out []mark
	for i, q := range list {
		if slices.Contains([]string{paper.name, ground.name, faint.name}, q.ink.name) || len(q.at) < 2 {
			continue
		}
		b := q.box()
		if partOf(q, list) || q.fill && min(b.width(), b.height()) < 6 {
			continue
		}
		if !q.fill {
			level := b.width() < 0.01 || b.height() < 0.01
			if q.hatch == "" && (q.coloured() || !level && math.Hypot(b.width(), b.height()) > 40) {
				out = append(out, q)
			}
			continue
		}
		rising, falling := false, false
		least := b.width() / 2
		if len(q.at) != 4 {
			least = b.width() / 8 // lines have no room in the flat parts under a curve
		}
		for _, h := range list[i+1:] {
			if c := h.box(); h.fill || h.hatch == "" || c.x0 < b.x0-1 || c.x1 > b.x1+1 || c.y0 < b.y0-1 || c.y1 > b.y1+1 || c.width() < least {
				continue
			}
			rising = rising || h.hatch != "falling"
			falling = falling || h.hatch != "rising"
		}
		q.hatch = direction(rising, falling)
		out = append(out, q)
	}
	return out
}

// partOf tells whether a mark is only part of a larger one of its ink: the edge of
// a field, or the head of an arrow at its line.
func partOf(q mark, list []mark) bool {
	b := q.box()
	head := q.fill && b.width() < 12 && b.height() < 12
	return slices.ContainsFunc(list, func(o mark) bool {
		c := o.box()
		if o.ink.name != q.ink.name || c.width()+c.height() <= b.width()+b.height() {
			return false
		}
		inside := b.x0 > c.x0-1 && b.x1 < c.x1+1 && b.y0 > c.y0-1 && b.y1 < c.y1+1
		touching := b.x0 < c.x1+2 && b.x1 > c.x0-2 && b.y0 < c.y1+2 && b.y1 > c.y0-2
		return o.fill && !q.fill && inside || head && touching
	})
}

// sameInGrey tells whether two marks of different inks look the same without colour.
func sameInGrey(a, b mark) bool {
	if a.fill != b.fill || a.ink.name == b.ink.name || !a.coloured() && !b.coloured() {
		return false
	}
	apart := math.Abs(a.grey() - b.grey())
	if a.fill {
		return apart < greyOfFields && a.hatch == b.hatch
	}
	return apart < greyOfLines && a.dash == b.dash && max(a.width, b.width) < 1.5*min(a.width, b.width)
}

// near is how far from a mark its name may stand, px.
const near = 26

// names are the words that stand in a mark, or else at it, or at the left of its
// row. Figures are none: they say how much, not what.
func names(q mark, texts []label) []string {
	var in, at []string
	b := q.box()
	for _, l := range texts {
		if !strings.ContainsFunc(l.text, unicode.IsLetter) {
			continue
		}
		dx, dy := max(l.x0-b.x1, b.x0-l.x1, 0), max(l.y0-b.y1, b.y0-l.y1, 0)
		x, y := (l.x0+l.x1)/2, (l.y0+l.y1)/2
		row := l.x1 < b.x0 && dy < near
		switch {
		case q.fill && len(q.at) == 4 && x > b.x0 && x < b.x1 && y > b.y0 && y < b.y1:
			in = append(in, l.text)
		case row || math.Hypot(dx, dy) < near && touches(q, l):
			at = append(at, l.text)
		}
	}
	if len(in) > 0 {
		return in
	}
	return at
}

// touches tells whether a text stands at the line itself, not only in its box.
func touches(q mark, l label) bool {
	if q.fill {
		return true
	}
	for i := 1; i < len(q.at); i++ {
		for s := 0.0; s <= 1; s += 0.02 {
			x, y := q.at[i-1][0]+s*(q.at[i][0]-q.at[i-1][0]), q.at[i-1][1]+s*(q.at[i][1]-q.at[i-1][1])
			if math.Hypot(max(l.x0-x, x-l.x1, 0), max(l.y0-y, y-l.y1, 0)) < near {
				return true
			}
		}
	}
	return false
}

// lostInGrey lists the pairs of marks that differ by their hue alone: alike in
// grey, and not told apart by words.
func lostInGrey(list []mark, texts []label) []string {
	list = hatched(list)
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
				out = append(out, fmt.Sprintf("%s at %.0f and %s at %.0f, named %q", a.ink.name, a.box(), b.ink.name, b.box(), na))
			}
		}
	}
	return out
}
