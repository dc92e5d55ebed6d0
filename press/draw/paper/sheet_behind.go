package paper

import (
	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
)

// behind puts chapters on pages behind the first, in three columns, and gives the
// page on which each begins there. What the texts leave free of the last of these
// pages goes to the drawings that the first page has no room for.
func (s *sheet) behind(m typeset.Setter, list []typeset.Chapter) map[string]int {
	on := map[string]int{}
	body := s.body()
	width := (body.Width() - 2*sheetGutter) / 3
	column := func(i int) canvas.Rectangle {
		x := body.X0 + float64(i)*(width+sheetGutter)
		return canvas.Rect(x, body.Y0, x+width, body.Y1)
	}
	all := []canvas.Rectangle{column(0), column(1), column(2)}
	for len(list) > 0 {
		g := s.page(say.ContinuedFromFront())
		number := len(s.pages)
		used := len(all)
		placed, rest := m.Fill(list, all)
		for n := 1; len(rest) == 0 && n < len(all); n++ {
			if fewer, over := m.Fill(list, all[:n]); len(over) == 0 {
				placed, used = fewer, n
				break
			}
		}
		if len(placed) == 0 {
			panic("draw: a text finds no room on an empty page")
		}
		for _, q := range list[:len(list)-len(rest)] {
			on[q.Title] = firstOf(on[q.Title], number)
		}
		if len(rest) > 0 && !rest[0].Same(list[len(list)-len(rest)]) {
			on[rest[0].Title] = firstOf(on[rest[0].Title], number)
		}
		g.add(func(p *canvas.Pen) { typeset.Write(p, placed) })
		if len(rest) == 0 {
			s.illustrate(g, leftOf(placed, all, used))
		}
		list = rest
	}
	return on
}

func firstOf(known, page int) int {
	if known > 0 {
		return known
	}
	return page
}

// leftOf is the room that lines leave: the columns behind those that they use as
// one box, or what is left under them of the last column.
func leftOf(placed []typeset.PlacedLine, columns []canvas.Rectangle, used int) canvas.Rectangle {
	last := columns[len(columns)-1]
	if used < len(columns) {
		return canvas.Rect(columns[used].X0, columns[used].Y0, last.X1, last.Y1)
	}
	for _, l := range placed {
		if l.X >= last.X0 {
			last.Y0 = max(last.Y0, l.Y)
		}
	}
	last.Y0 += sheetGutter
	return last
}

// illustrate puts the drawings that do not stand on the first page into a free
// box, one under the other, as many as have room.
func (s *sheet) illustrate(g *sheetPage, box canvas.Rectangle) {
	list := []func(*press.Plan, *press.Result, draw.Options) *canvas.Picture{draw.NewPressIn, draw.NewCycle}
	if draw.Applies("run", s.r) { // the ram runs through the steps and not through the plain cycle
		list[1] = draw.NewRun
	}
	if s.p.Joint.Kind == press.Touch {
		list = list[1:]
	}
	for n := len(list); n > 0; n-- {
		for _, o := range []draw.Options{{}, {Flat: true}} {
			if s.stack(g, list[:n], o, box) {
				return
			}
		}
	}
}

// stack puts drawings with their titles under one another, where all of them fit.
func (s *sheet) stack(g *sheetPage, list []func(*press.Plan, *press.Result, draw.Options) *canvas.Picture, o draw.Options, box canvas.Rectangle) bool {
	k := sheetScale
	o.Width = box.Width()/k + 2*canvas.Margin
	o.Compact = o.Width < draw.ChartLeast
	var parts []func(*canvas.Pen)
	y := box.Y0
	for _, of := range list {
		d := of(s.p, s.r, o)
		at, scale := y, canvas.Fit(d.Width-2*canvas.Margin, box.Width(), k)
		parts = append(parts, func(p *canvas.Pen) { p.Within(box.X0-scale*canvas.Margin, at-scale*canvas.Margin, scale, d.Paint) })
		y += scale*(d.Height-2*canvas.Margin) + sheetGutter
	}
	if y-sheetGutter > box.Y1 {
		return false
	}
	for _, part := range parts {
		g.add(part)
	}
	return true
}
