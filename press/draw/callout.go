package draw

import (
	"math"
	"slices"
)

// A callout is a label that belongs to a point of a line: a few short lines of
// text, joined to the point by a leader.
type callout struct {
	x     float64 // px of the point
	lines []string
	style style
}

func (c callout) width() float64 {
	var w float64
	for i, l := range c.lines {
		w = math.Max(w, c.lineStyle(i).width(l))
	}
	return w
}

// lineStyle: the first line names, the others explain.
func (c callout) lineStyle(i int) style {
	if i == 0 {
		return c.style
	}
	return style{quiet, c.style.size, false}
}

// spread gives the centre of each of some boxes in a row, in the order of their
// wishes, so that none overlaps another, all stay between lo and hi, and each is
// as near to its wish as that allows. ok is false when they do not fit.
func spread(wish, width []float64, gap, lo, hi float64) (centre []float64, ok bool) {
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

// calloutGap is kept between neighbours in a row.
const calloutGap = 14

// callouts are labels laid out beside a line, in one row where they fit, else
// each in a row of its own.
type callouts struct {
	items  []callout
	centre []float64
	row    []int // 0 is nearest to the line
	rows   int
	depth  float64 // px of one row
}

// layCallouts lays out labels between lo and hi.
func layCallouts(items []callout, lo, hi float64) callouts {
	items = slices.Clone(items)
	slices.SortStableFunc(items, func(a, b callout) int {
		switch {
		case a.x < b.x:
			return -1
		case a.x > b.x:
			return 1
		}
		return 0
	})
	l := callouts{items: items, row: make([]int, len(items)), rows: 1}
	wish, width := make([]float64, len(items)), make([]float64, len(items))
	for i, c := range items {
		wish[i], width[i] = c.x, c.width()
		l.depth = math.Max(l.depth, float64(len(c.lines))*leading*c.style.size+3)
	}
	var ok bool
	if l.centre, ok = spread(wish, width, calloutGap, lo, hi); !ok {
		l.stair(wish, width, lo, hi)
	}
	return l
}

// stair gives each label its own row and its text in one line.
func (l *callouts) stair(wish, width []float64, lo, hi float64) {
	l.rows, l.depth = len(l.items), 0
	for i := range l.items {
		c := &l.items[i]
		if len(c.lines) > 1 {
			c.lines = []string{c.lines[0] + ", " + joinLines(c.lines[1:])}
		}
		width[i] = c.width()
		l.row[i] = i
		half := width[i] / 2
		l.centre[i] = math.Max(lo+half, math.Min(wish[i], hi-half))
		l.depth = math.Max(l.depth, leading*c.style.size+2)
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

// height of the whole block, the leaders' room included.
func (l callouts) height() float64 {
	if len(l.items) == 0 {
		return 0
	}
	return 2*stub + 8 + float64(l.rows)*l.depth
}

// above draws the labels over a line at y, below under it.
func (l callouts) above(p *pen, y float64) { l.draw(p, y, -1) }
func (l callouts) below(p *pen, y float64) { l.draw(p, y, 1) }

func (l callouts) draw(p *pen, y, side float64) {
	// Leaders first: the labels stand on paper over them.
	near := func(i int) float64 { return y + side*(2*stub+8+float64(l.row[i])*l.depth) }
	for i, c := range l.items {
		p.line(quiet, thinLine, solid, [2]float64{c.x, y}, [2]float64{c.x, y + side*stub},
			[2]float64{l.centre[i], near(i) - side*stub}, [2]float64{l.centre[i], near(i)})
	}
	for i, c := range l.items {
		top := near(i)
		if side < 0 {
			top -= l.depth
		}
		w := c.width()
		if l.rows > 1 {
			p.fill(paper, rect{l.centre[i] - w/2 - 2, top, l.centre[i] + w/2 + 2, top + l.depth})
		}
		base := top + 1.05*c.style.size
		for k, line := range c.lines {
			p.text(c.lineStyle(k), l.centre[i], base+float64(k)*leading*c.style.size, middle, line)
		}
	}
}
