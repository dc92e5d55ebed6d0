package draw

import (
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
)

// lens is the magnified stretch of the last tenths.
type lens struct {
	m       *stripModel
	compact bool
	flat    bool
	names   float64 // left edge of the names of the rows
	scale   canvas.Scale
	top     float64
	rows    []lensRow
	edges   typeset.Callouts
	bottom  float64
}

// lensRow is one row of the lens: its name at the side, or above it in the
// narrow form, and its painter.
type lensRow struct {
	name, note string
	box        canvas.Rectangle
	paint      func(l *lens, p *canvas.Pen, r lensRow)
}

func layLens(m *stripModel, names, left, right, top float64, o Options) lens {
	l := lens{m: m, compact: o.Compact, flat: o.Flat, names: names, top: top, scale: canvas.NewScale(m.lens[0], m.lens[1], left, right)}
	y, gap := top+6, float64(rowGap)
	if o.Flat {
		gap = rowGapFlat
	}
	for _, row := range l.kinds() {
		if l.compact && row.name != "" {
			y += 4 + canvas.Leading*canvas.Small
		}
		height := row.box.Y1
		row.box = canvas.Rect(left, y, right, y+height)
		y += height + gap
		l.rows = append(l.rows, row)
	}
	l.edges = typeset.LayCallouts(l.edgeLabels(), left, right)
	l.bottom = l.frameEnd() + l.edges.Height()
	return l
}

// rowGap is kept between rows, px; less of it in a flat drawing.
const (
	rowGap     = 10
	rowGapFlat = 4
)

// kinds lists the rows that this plan has, with their heights.
func (l *lens) kinds() []lensRow {
	m := l.m
	bell, verdict := 58.0, 40.0
	if l.flat {
		bell, verdict = 42, 34
	}
	row := func(name, note string, height float64, paint func(*lens, *canvas.Pen, lensRow)) lensRow {
		return lensRow{name, note, canvas.Rectangle{Y1: height}, paint}
	}
	rows := []lensRow{
		row("requirement", m.left(), 40, (*lens).requirement),
		row(say.SeatedReadings(), say.UncertainBy(m.pos, m.uncertainty), bell, (*lens).density),
		row("", say.RamPositionAxis(), 24, (*lens).ruler),
		row(say.TipOfTheRam(), say.AtRestLabel(), 26, (*lens).tip),
	}
	if m.looks || m.missing != nil && l.scale.Has(*m.missing) {
		rows = append(rows, row(say.WithoutAnInsert(), say.RestsHere(), 26, (*lens).missingTip))
	}
	rows = append(rows, row(say.ZoneAndPushEnd(), l.zoneNote(), 28, (*lens).zone))
	if m.end != nil {
		rows = append(rows, row(say.ArrivalSignal(), "", 26, (*lens).arrival))
	}
	of := say.OfTwoSignals()
	if m.first != nil {
		of = say.OfSecondLook()
	}
	if len(m.fields) > 0 {
		rows = append(rows,
			row(say.ZoneSignal(), "", 26, (*lens).zoneSignal),
			row("verdict", of, verdict, (*lens).verdicts))
	}
	if f := m.first; f != nil {
		high := float64(firstLookRow)
		if l.flat {
			high = firstLookRowFlat
		}
		rows = append(rows, row(say.FirstLook(), say.ProbeEndsAt(m.pos, f.end, f.end < l.scale.From), high, (*lens).firstLook))
	}
	return rows
}

func (l *lens) zoneNote() string {
	m := l.m
	switch {
	case m.zoneStart != nil && m.zoneEnd != nil:
		return m.pos.Bare(*m.zoneStart) + " to " + m.pos.Bare(*m.zoneEnd)
	case m.zoneStart != nil:
		return say.ZoneFrom(m.pos, *m.zoneStart)
	case m.zoneEnd != nil:
		return say.ZoneTo(m.pos, *m.zoneEnd)
	}
	return say.NotKnown()
}

// edgeLabels are the positions to set, under the lens.
func (l *lens) edgeLabels() []typeset.Callout {
	var out []typeset.Callout
	add := func(name string, v *float64) {
		if v == nil {
			return
		}
		text := l.m.pos.Bare(*v)
		switch {
		case *v < l.scale.From:
			text = "← " + text
		case *v > l.scale.To:
			text += " →"
		}
		out = append(out, typeset.Callout{X: l.scale.At(*v), Lines: []string{text, name}, Style: canvas.Bold(canvas.Black, canvas.Body)})
	}
	add(say.ZoneStart(), l.m.zoneStart)
	add(say.PushEnd(), l.m.end)
	add(say.ZoneEnd(), l.m.zoneEnd)
	for i := range out {
		out[i].Style.Size = canvas.Small + 1
	}
	return out
}

// frameEnd is the lower edge of the frame around the rows.
func (l *lens) frameEnd() float64 { return l.rows[len(l.rows)-1].box.Y1 + 4 }

func (l *lens) paint(p *canvas.Pen) {
	frame := canvas.Rect(l.scale.X0, l.top, l.scale.X1, l.frameEnd())
	l.guides(p, frame.Y1)
	for _, row := range l.rows {
		l.name(p, row)
		row.paint(l, p, row)
	}
	p.Frame(canvas.Quiet, canvas.ThinLine, canvas.Solid, canvas.Rect(canvas.Crisp(frame.X0), canvas.Crisp(frame.Y0), canvas.Crisp(frame.X1), canvas.Crisp(frame.Y1)))
	l.edges.Below(p, frame.Y1)
}

// name writes what the row is.
func (l *lens) name(p *canvas.Pen, row lensRow) {
	main, side := canvas.Bold(canvas.Black, canvas.Small), canvas.Plain(canvas.Quiet, canvas.Small)
	row.note = side.Clip(row.note, gutter-4)
	if l.compact {
		l.nameAbove(p, row, main, side)
		return
	}
	mid := (row.box.Y0 + row.box.Y1) / 2
	switch {
	case row.name == "":
		p.Text(side, l.names, mid+4, canvas.Start, row.note)
	case row.note == "":
		p.Text(main, l.names, mid+4, canvas.Start, row.name)
	default:
		p.Text(main, l.names, mid-3, canvas.Start, row.name)
		p.Text(side, l.names, mid+12, canvas.Start, row.note)
	}
}

// nameAbove writes it in the narrow form: over the row, that of the ruler under
// its figures.
func (l *lens) nameAbove(p *canvas.Pen, row lensRow, main, side canvas.Style) {
	x, y := l.names+4, row.box.Y0-5
	if row.name == "" {
		p.Text(side, row.box.X1-4, row.box.Y1+12, canvas.End, row.note)
		return
	}
	w := main.Width(row.name)
	p.Fill(canvas.Paper, canvas.Rect(x-2, y-canvas.Small, x+w+10+side.Width(row.note), y+4))
	p.Text(main, x, y, canvas.Start, row.name)
	p.Text(side, x+w+8, y, canvas.Start, row.note)
}

// guided tells whether a guide runs between two places, px.
func (l *lens) guided(x0, x1 float64) bool {
	for _, v := range []*float64{l.m.zoneStart, l.m.end, l.m.zoneEnd} {
		if v != nil && l.scale.Has(*v) && l.scale.At(*v) >= x0-3 && l.scale.At(*v) <= x1+3 {
			return true
		}
	}
	return false
}

// guides carry the edges of the window through all rows.
func (l *lens) guides(p *canvas.Pen, bottom float64) {
	for _, v := range []*float64{l.m.zoneStart, l.m.end, l.m.zoneEnd} {
		if v != nil && l.scale.Has(*v) {
			p.VLine(canvas.Quiet.Tint(0.5), l.scale.At(*v), l.top, bottom)
		}
	}
}
