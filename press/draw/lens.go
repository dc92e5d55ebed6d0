package draw

// lens is the magnified stretch of the last tenths.
type lens struct {
	m       *stripModel
	compact bool
	flat    bool
	names   float64 // left edge of the names of the rows
	scale   scale
	top     float64
	rows    []lensRow
	edges   callouts
	bottom  float64
}

// lensRow is one row of the lens: its name at the side, or above it in the
// narrow form, and its painter.
type lensRow struct {
	name, note string
	box        rect
	paint      func(l *lens, p *pen, r lensRow)
}

func layLens(m *stripModel, names, left, right, top float64, o Options) lens {
	l := lens{m: m, compact: o.Compact, flat: o.Flat, names: names, top: top, scale: newScale(m.lens[0], m.lens[1], left, right)}
	y, gap := top+6, float64(rowGap)
	if o.Flat {
		gap = rowGapFlat
	}
	for _, row := range l.kinds() {
		if l.compact && row.name != "" {
			y += 4 + leading*small
		}
		height := row.box.y1
		row.box = rect{left, y, right, y + height}
		y += height + gap
		l.rows = append(l.rows, row)
	}
	l.edges = layCallouts(l.edgeLabels(), left, right)
	l.bottom = l.frameEnd() + l.edges.height()
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
	row := func(name, note string, height float64, paint func(*lens, *pen, lensRow)) lensRow {
		return lensRow{name, note, rect{y1: height}, paint}
	}
	rows := []lensRow{
		row("requirement", "guard bands "+m.pos.Length(m.guard), 40, (*lens).requirement),
		row("seated readings", "uncertain by ±"+m.pos.Length(m.uncertainty), bell, (*lens).density),
		row("", "ram position, mm", 24, (*lens).ruler),
		row("tip of the ram", "at rest", 26, (*lens).tip),
	}
	if m.looks || m.missing != nil && l.scale.has(*m.missing) {
		rows = append(rows, row("without an insert", "the ram rests here", 26, (*lens).missingTip))
	}
	rows = append(rows, row("zone and push end", l.zoneNote(), 28, (*lens).zone))
	if m.end != nil {
		rows = append(rows, row("arrival signal", "", 26, (*lens).arrival))
	}
	if len(m.fields) > 0 {
		rows = append(rows,
			row("zone signal", "", 26, (*lens).zoneSignal),
			row("verdict", "of the two signals", verdict, (*lens).verdicts))
	}
	return rows
}

func (l *lens) zoneNote() string {
	m := l.m
	switch {
	case m.zoneStart != nil && m.zoneEnd != nil:
		return m.pos.Bare(*m.zoneStart) + " to " + m.pos.Bare(*m.zoneEnd)
	case m.zoneStart != nil:
		return "zone from " + m.pos.Bare(*m.zoneStart)
	case m.zoneEnd != nil:
		return "zone to " + m.pos.Bare(*m.zoneEnd)
	}
	return "not known"
}

// edgeLabels are the positions to set, under the lens.
func (l *lens) edgeLabels() []callout {
	var out []callout
	add := func(name string, v *float64) {
		if v == nil {
			return
		}
		text := l.m.pos.Bare(*v)
		switch {
		case *v < l.scale.from:
			text = "← " + text
		case *v > l.scale.to:
			text += " →"
		}
		out = append(out, callout{x: l.scale.x(*v), lines: []string{text, name}, style: style{black, body, true}})
	}
	add("zone start", l.m.zoneStart)
	add("push end", l.m.end)
	add("zone end", l.m.zoneEnd)
	for i := range out {
		out[i].style.size = small + 1
	}
	return out
}

// frameEnd is the lower edge of the frame around the rows.
func (l *lens) frameEnd() float64 { return l.rows[len(l.rows)-1].box.y1 + 4 }

func (l *lens) paint(p *pen) {
	frame := rect{l.scale.x0, l.top, l.scale.x1, l.frameEnd()}
	l.guides(p, frame.y1)
	for _, row := range l.rows {
		l.name(p, row)
		row.paint(l, p, row)
	}
	p.frame(quiet, thinLine, solid, rect{crisp(frame.x0), crisp(frame.y0), crisp(frame.x1), crisp(frame.y1)})
	l.edges.below(p, frame.y1)
}

// name writes what the row is.
func (l *lens) name(p *pen, row lensRow) {
	main, side := style{black, small, true}, style{quiet, small, false}
	row.note = side.clip(row.note, gutter-4)
	if l.compact {
		l.nameAbove(p, row, main, side)
		return
	}
	mid := (row.box.y0 + row.box.y1) / 2
	switch {
	case row.name == "":
		p.text(side, l.names, mid+4, start, row.note)
	case row.note == "":
		p.text(main, l.names, mid+4, start, row.name)
	default:
		p.text(main, l.names, mid-3, start, row.name)
		p.text(side, l.names, mid+12, start, row.note)
	}
}

// nameAbove writes it in the narrow form: over the row, that of the ruler under
// its figures.
func (l *lens) nameAbove(p *pen, row lensRow, main, side style) {
	x, y := l.names+4, row.box.y0-5
	if row.name == "" {
		p.text(side, row.box.x1-4, row.box.y1+12, end, row.note)
		return
	}
	w := main.width(row.name)
	p.fill(paper, rect{x - 2, y - small, x + w + 10 + side.width(row.note), y + 4})
	p.text(main, x, y, start, row.name)
	p.text(side, x+w+8, y, start, row.note)
}

// guided tells whether a guide runs between two places, px.
func (l *lens) guided(x0, x1 float64) bool {
	for _, v := range []*float64{l.m.zoneStart, l.m.end, l.m.zoneEnd} {
		if v != nil && l.scale.has(*v) && l.scale.x(*v) >= x0-3 && l.scale.x(*v) <= x1+3 {
			return true
		}
	}
	return false
}

// guides carry the edges of the window through all rows.
func (l *lens) guides(p *pen, bottom float64) {
	for _, v := range []*float64{l.m.zoneStart, l.m.end, l.m.zoneEnd} {
		if v != nil && l.scale.has(*v) {
			p.vline(quiet.tint(0.5), l.scale.x(*v), l.top, bottom)
		}
	}
}
