package typeset

import (
	"math"
	"slices"

	"ramplan/press/draw/canvas"
)

// A Callout is a label that belongs to a point of a line: a few short lines of
// text, joined to the point by a leader.
type Callout struct {
	X     float64 // px of the point
	Lines []string
	Style canvas.Style
}

// Width of its widest line, px.
func (c Callout) Width() float64 {
	var w float64
	for i, l := range c.Lines {
		w = math.Max(w, c.lineStyle(i).Width(l))
	}
	return w
}

// lineStyle: the first line names, the others explain.
func (c Callout) lineStyle(i int) canvas.Style {
	if i == 0 {
		return c.Style
	}
	return canvas.Plain(canvas.Quiet, c.Style.Size)
}

// Spread gives the centre of each of some boxes in a row, in the order of their
// wishes, so that none overlaps another, all stay between lo and hi, and each is
// as near to its wish as that allows. ok is false when they do not fit.
func Spread(wish, width []float64, gap, lo, hi float64) (centre []float64, ok bool) {
	type block struct {
		first, n int
		left     float64
		wishes   float64 // sum of the left edges that its boxes would give the block
		total    float64 // width
	}
	var row []block
	clamp := func(b *block) {
		b.left = math.Max(lo, math.Min(b.wishes/float64(b.n), hi-b.total))
	}
	for i := range wish {
		b := block{first: i, n: 1, wishes: wish[i] - width[i]/2, total: width[i]}
		clamp(&b)
		for len(row) > 0 {
			last := row[len(row)-1]
			if last.left+last.total+gap <= b.left {
				break
			}
			shift := last.total + gap
			b = block{first: last.first, n: last.n + b.n, wishes: last.wishes + b.wishes - float64(b.n)*shift, total: shift + b.total}
			clamp(&b)
			row = row[:len(row)-1]
		}
		row = append(row, b)
	}
	centre = make([]float64, len(wish))
	for _, b := range row {
		x := b.left
		for i := b.first; i < b.first+b.n; i++ {
			centre[i] = x + width[i]/2
			x += width[i] + gap
		}
		if b.total > hi-lo+1e-9 {
			return centre, false
		}
	}
	return centre, true
}

// CalloutGap is kept between neighbours in a row.
const CalloutGap = 14

// Callouts are labels laid out beside a line, in one row where they fit, else
// each in a row of its own.
type Callouts struct {
	Items  []Callout
	Centre []float64
	row    []int // 0 is nearest to the line
	Rows   int
	Depth  float64 // px of one row
}

// LayCallouts lays out labels between lo and hi.
func LayCallouts(items []Callout, lo, hi float64) Callouts {
	items = slices.Clone(items)
	slices.SortStableFunc(items, func(a, b Callout) int {
		switch {
		case a.X < b.X:
			return -1
		case a.X > b.X:
			return 1
		}
		return 0
	})
	l := Callouts{Items: items, row: make([]int, len(items)), Rows: 1}
	wish, width := make([]float64, len(items)), make([]float64, len(items))
	for i, c := range items {
		wish[i], width[i] = c.X, c.Width()
		l.Depth = math.Max(l.Depth, float64(len(c.Lines))*canvas.Leading*c.Style.Size+3)
	}
	var ok bool
	if l.Centre, ok = Spread(wish, width, CalloutGap, lo, hi); !ok {
		l.stair(wish, width, lo, hi)
	}
	return l
}

// stair gives each label its own row and its text in one line.
func (l *Callouts) stair(wish, width []float64, lo, hi float64) {
	l.Rows, l.Depth = len(l.Items), 0
	for i := range l.Items {
		c := &l.Items[i]
		if len(c.Lines) > 1 {
			c.Lines = []string{c.Lines[0] + ", " + joinLines(c.Lines[1:])}
		}
		width[i] = c.Width()
		l.row[i] = i
		half := width[i] / 2
		l.Centre[i] = math.Max(lo+half, math.Min(wish[i], hi-half))
		l.Depth = math.Max(l.Depth, canvas.Leading*c.Style.Size+2)
	}
}

func joinLines(lines []string) string {
	s := ""
	for i, l := range lines {
		if i > 0 {
			s += " "
		}
		s += l
	}
	return s
}

// stub is the straight piece of a leader at the line and at the label.
const stub = 5

// Height of the whole block, the leaders' room included.
func (l Callouts) Height() float64 {
	if len(l.Items) == 0 {
		return 0
	}
	return 2*stub + 8 + float64(l.Rows)*l.Depth
}

// Above draws the labels over a line at y, below under it.
func (l Callouts) Above(p *canvas.Pen, y float64) { l.draw(p, y, -1) }

// Below: see [Callouts.Above].
func (l Callouts) Below(p *canvas.Pen, y float64) { l.draw(p, y, 1) }

func (l Callouts) draw(p *canvas.Pen, y, side float64) {
	// Leaders first: the labels stand on paper over them.
	near := func(i int) float64 { return y + side*(2*stub+8+float64(l.row[i])*l.Depth) }
	for i, c := range l.Items {
		p.Line(canvas.Quiet, canvas.ThinLine, canvas.Solid, [2]float64{c.X, y}, [2]float64{c.X, y + side*stub},
			[2]float64{l.Centre[i], near(i) - side*stub}, [2]float64{l.Centre[i], near(i)})
	}
	for i, c := range l.Items {
		top := near(i)
		if side < 0 {
			top -= l.Depth
		}
		w := c.Width()
		if l.Rows > 1 {
			p.Fill(canvas.Paper, canvas.Rect(l.Centre[i]-w/2-2, top, l.Centre[i]+w/2+2, top+l.Depth))
		}
		base := top + 1.05*c.Style.Size
		for k, line := range c.Lines {
			p.Text(c.lineStyle(k), l.Centre[i], base+float64(k)*canvas.Leading*c.Style.Size, canvas.Middle, line)
		}
	}
}
