package draw

import (
	"math"

	"gonum.org/v1/plot/vg"
)

// tip draws the end of the ram as it rests on the nominal part.
func (l *lens) tip(p *pen, r lensRow) {
	m := l.m
	texts := []string{"nominal part " + m.pos.Bare(m.seat)}
	if m.rest < m.seat {
		texts = []string{"stops at the push end; nominal part " + m.pos.Bare(m.seat), "stops before nominal " + m.pos.Bare(m.seat)}
	}
	l.rod(p, r.box, m.rest, solid, style{black, small, false}, texts...)
}

// missingTip draws where the ram rests without an insert.
func (l *lens) missingTip(p *pen, r lensRow) {
	m := l.m
	if m.missing == nil {
		return
	}
	st, text := style{black, small, false}, "no insert "+m.pos.Bare(*m.missing)
	switch {
	case m.checked:
		text += ", told by the other check only"
	case m.looks:
		st, text = style{alert, small, true}, "looks good: no insert "+m.pos.Bare(*m.missing)
	}
	l.rod(p, r.box, *m.missing, dashed, st, text)
}

// rod draws a rod that comes from the left and ends at a position, the first of
// its texts that fits on the side that has room.
func (l *lens) rod(p *pen, box rect, at float64, dash []vg.Length, st style, texts ...string) {
	x := l.scale.x(at)
	text := texts[len(texts)-1]
	for _, t := range texts {
		if w := st.width(t); x-box.x0 > w+36 || box.x1-x > w+32 {
			text = t
			break
		}
	}
	y0, y1 := crisp(box.y0+2), crisp(box.y1-2)
	const bevel = 4
	if l.scale.has(at) && x-box.x0 > 2*bevel {
		shape := [][2]float64{{box.x0, y0}, {x - bevel, y0}, {x, y0 + bevel}, {x, y1 - bevel}, {x - bevel, y1}, {box.x0, y1}}
		p.area(paper, shape...)
		p.area(black.tint(quietTint), shape...)
		p.line(st.ink, outline, dash, shape...)
	} else if at >= l.scale.to {
		p.fill(black.tint(quietTint), rect{box.x0, y0, box.x1, y1})
		p.line(st.ink, outline, dash, [2]float64{box.x0, y0}, [2]float64{box.x1, y0})
		p.line(st.ink, outline, dash, [2]float64{box.x0, y1}, [2]float64{box.x1, y1})
		text += " →"
	} else {
		text = "← " + text
	}
	w := st.width(text)
	base := (y0+y1)/2 + 4
	switch {
	case x-box.x0 > w+20:
		p.text(st, x-12, base, end, text)
	case box.x1-x > w+16:
		p.onPaper(st, x+10, base, start, text)
	default:
		p.text(st, math.Max(box.x0+4+w/2, math.Min(x, box.x1-4-w/2)), base, middle, st.clip(text, box.x1-box.x0-8))
	}
}

// zone draws the zone as a bracket and the push end as a stop.
func (l *lens) zone(p *pen, r lensRow) {
	m := l.m
	y := crisp(r.box.y0 + 15)
	if m.zoneStart != nil || m.zoneEnd != nil {
		l.bracket(p, y, m.zoneStart, m.zoneEnd)
	}
	if m.never != nil {
		from, to := l.scale.x(m.never[1]), l.scale.x(m.never[0])
		l.crossed(p, from, to, y)
	}
	if m.end != nil && l.scale.has(*m.end) {
		x := l.scale.x(*m.end)
		p.fill(black, rect{x - 1, r.box.y0, x + 1.5, r.box.y1 - 2})
		p.hatch(black, hatch{rising: true, gap: 3.5}, rect{x + 1.5, r.box.y0, x + 7, r.box.y1 - 2})
	}
}

// bracket from one end to the other; an end that is not known, or lies outside
// the lens, stays open with an arrow.
func (l *lens) bracket(p *pen, y float64, from, to *float64) {
	x0, x1 := l.scale.x0, l.scale.x1
	if from != nil {
		x0 = l.scale.x(*from)
	}
	if to != nil {
		x1 = l.scale.x(*to)
	}
	switch { // all of it outside: an arrow shows where
	case x1 <= l.scale.x0:
		p.arrow(accent, l.scale.x0+2, y, -9)
		return
	case x0 >= l.scale.x1:
		p.arrow(accent, l.scale.x1-2, y, 9)
		return
	}
	p.fill(accent.tint(fillTint), rect{x0, y - 7, x1, y})
	p.line(accent, outline, solid, [2]float64{x0, y}, [2]float64{x1, y})
	for _, e := range []struct {
		v       *float64
		x, head float64
	}{{from, x0, -9}, {to, x1, 9}} {
		if e.v != nil && l.scale.has(*e.v) {
			p.line(accent, outline, solid, [2]float64{e.x, y - 8}, [2]float64{e.x, y + 4})
		} else if e.v != nil {
			p.arrow(accent, e.x, y, e.head)
		}
	}
}
