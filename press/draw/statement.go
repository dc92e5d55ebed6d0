package draw

import (
	"math"

	"ramplan/press/words"
)

// statement is a drawing of a plan that leaves nothing to draw: it says why, in the
// place where the drawing would stand.
func statement(kind string, o Options, usual, least float64) *Picture {
	return stated(kind, words.NothingToPress, o, usual, least)
}

// stated is a drawing of which a sentence says why there is nothing to see.
func stated(kind, text string, o Options, usual, least float64) *Picture {
	const height = 88
	width := o.width(usual, least)
	if o.Compact {
		width = o.width(stripCompact, stripCompactLeast)
	}
	paint := func(p *pen) {
		box := rect{margin, margin, width - margin, height - margin}
		p.frame(quiet, thinLine, dashed, box)
		st := style{black, body, false}
		lines := st.wrap(text, box.x1-box.x0-16)
		y := (box.y0+box.y1)/2 - leading*body*float64(len(lines)-1)/2 + body/3
		for i, l := range lines {
			p.text(st, (box.x0+box.x1)/2, y+float64(i)*leading*body, middle, l)
		}
	}
	return newPicture(layout{kind: kind, compact: o.Compact, id: o.ID, title: text, desc: text, width: math.Ceil(width), height: height, paint: paint})
}
