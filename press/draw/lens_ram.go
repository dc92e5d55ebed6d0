package draw

import (
	"math"

	"ramplan/press/draw/canvas"
)

// tip draws the end of the ram as it rests on the nominal part.
func (l *lens) tip(p *canvas.Pen, r lensRow) {
	m := l.m
	texts := []string{say.NominalPart(m.pos, m.seat)}
	if m.rest < m.seat {
		texts = []string{say.StopsAtPushEnd(m.pos, m.seat), say.StopsBeforeNominal(m.pos, m.seat)}
	}
	l.rod(p, r.box, m.rest, canvas.Solid, canvas.Plain(canvas.Black, canvas.Small), texts...)
}

// missingTip draws where the ram rests without an insert.
func (l *lens) missingTip(p *canvas.Pen, r lensRow) {
	m := l.m
	if m.missing == nil {
		return
	}
	st, text := canvas.Plain(canvas.Black, canvas.Small), say.NoInsert(m.pos, *m.missing)
	switch {
	case m.checked:
		text += say.ToldByOtherCheck()
	case m.looks:
		st, text = canvas.Bold(canvas.Alert, canvas.Small), say.LooksGoodNoInsert(m.pos, *m.missing)
	}
	l.rod(p, r.box, *m.missing, canvas.Dashed, st, text)
}

// rod draws a rod that comes from the left and ends at a position, the first of
// its texts that fits on the side that has room.
func (l *lens) rod(p *canvas.Pen, box canvas.Rectangle, at float64, dash canvas.Dash, st canvas.Style, texts ...string) {
	x := l.scale.At(at)
	text := texts[len(texts)-1]
	for _, t := range texts {
		if w := st.Width(t); x-box.X0 > w+36 || box.X1-x > w+32 {
			text = t
			break
		}
	}
	y0, y1 := canvas.Crisp(box.Y0+2), canvas.Crisp(box.Y1-2)
	const bevel = 4
	if l.scale.Has(at) && x-box.X0 > 2*bevel {
		shape := [][2]float64{{box.X0, y0}, {x - bevel, y0}, {x, y0 + bevel}, {x, y1 - bevel}, {x - bevel, y1}, {box.X0, y1}}
		p.Area(canvas.Paper, shape...)
		p.Area(canvas.Black.Tint(canvas.QuietTint), shape...)
		p.Line(st.Ink, canvas.Outline, dash, shape...)
	} else if at >= l.scale.To {
		p.Fill(canvas.Black.Tint(canvas.QuietTint), canvas.Rect(box.X0, y0, box.X1, y1))
		p.Line(st.Ink, canvas.Outline, dash, [2]float64{box.X0, y0}, [2]float64{box.X1, y0})
		p.Line(st.Ink, canvas.Outline, dash, [2]float64{box.X0, y1}, [2]float64{box.X1, y1})
		text += " →"
	} else {
		text = "← " + text
	}
	w := st.Width(text)
	base := (y0+y1)/2 + 4
	switch {
	case x-box.X0 > w+20:
		p.Text(st, x-12, base, canvas.End, text)
	case box.X1-x > w+16:
		p.OnPaper(st, x+10, base, canvas.Start, text)
	default:
		p.Text(st, math.Max(box.X0+4+w/2, math.Min(x, box.X1-4-w/2)), base, canvas.Middle, st.Clip(text, box.X1-box.X0-8))
	}
}

// zone draws the zone as a bracket and the push end as a stop.
func (l *lens) zone(p *canvas.Pen, r lensRow) {
	m := l.m
	y := canvas.Crisp(r.box.Y0 + 15)
	if m.zoneStart != nil || m.zoneEnd != nil {
		l.bracket(p, y, m.zoneStart, m.zoneEnd)
	}
	if m.never != nil {
		from, to := l.scale.At(m.never[1]), l.scale.At(m.never[0])
		l.crossed(p, from, to, y)
	}
	if m.end != nil && l.scale.Has(*m.end) {
		x := l.scale.At(*m.end)
		p.Fill(canvas.Black, canvas.Rect(x-1, r.box.Y0, x+1.5, r.box.Y1-2))
		p.Hatch(canvas.Black, canvas.Hatch{Rising: true, Gap: 3.5}, canvas.Rect(x+1.5, r.box.Y0, x+7, r.box.Y1-2))
	}
}

// bracket from one end to the other; an end that is not known, or lies outside
// the lens, stays open with an arrow.
func (l *lens) bracket(p *canvas.Pen, y float64, from, to *float64) {
	x0, x1 := l.scale.X0, l.scale.X1
	if from != nil {
		x0 = l.scale.At(*from)
	}
	if to != nil {
		x1 = l.scale.At(*to)
	}
	switch { // all of it outside: an arrow shows where
	case x1 <= l.scale.X0:
		p.Arrow(canvas.Accent, l.scale.X0+2, y, -9)
		return
	case x0 >= l.scale.X1:
		p.Arrow(canvas.Accent, l.scale.X1-2, y, 9)
		return
	}
	p.Fill(canvas.Accent.Tint(canvas.FillTint), canvas.Rect(x0, y-7, x1, y))
	p.Line(canvas.Accent, canvas.Outline, canvas.Solid, [2]float64{x0, y}, [2]float64{x1, y})
	for _, e := range []struct {
		v       *float64
		x, head float64
	}{{from, x0, -9}, {to, x1, 9}} {
		if e.v != nil && l.scale.Has(*e.v) {
			p.Line(canvas.Accent, canvas.Outline, canvas.Solid, [2]float64{e.x, y - 8}, [2]float64{e.x, y + 4})
		} else if e.v != nil {
			p.Arrow(canvas.Accent, e.x, y, e.head)
		}
	}
}
