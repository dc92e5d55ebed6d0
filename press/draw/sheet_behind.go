package draw

import (
	"ramplan/press"
)

// behind puts chapters on pages behind the first, in three columns, and gives the
// page on which each begins there. What the texts leave free of the last of these
// pages goes to the drawings that the first page has no room for.
func (s *sheet) behind(m setter, list []chapter) map[string]int {
	on := map[string]int{}
	body := s.body()
	width := (body.width() - 2*sheetGutter) / 3
	column := func(i int) rect {
		x := body.x0 + float64(i)*(width+sheetGutter)
		return rect{x, body.y0, x + width, body.y1}
	}
	all := []rect{column(0), column(1), column(2)}
	for len(list) > 0 {
		g := s.page("Continued from page 1")
		number := len(s.pages)
		used := len(all)
		placed, rest := m.fill(list, all)
		for n := 1; len(rest) == 0 && n < len(all); n++ {
			if fewer, over := m.fill(list, all[:n]); len(over) == 0 {
				placed, used = fewer, n
				break
			}
		}
		if len(placed) == 0 {
			panic("draw: a text finds no room on an empty page")
		}
		for _, q := range list[:len(list)-len(rest)] {
			on[q.title] = firstOf(on[q.title], number)
		}
		if len(rest) > 0 && !rest[0].same(list[len(list)-len(rest)]) {
			on[rest[0].title] = firstOf(on[rest[0].title], number)
		}
		g.add(func(p *pen) { p.write(placed) })
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
func leftOf(placed []placedLine, columns []rect, used int) rect {
	last := columns[len(columns)-1]
	if used < len(columns) {
		return rect{columns[used].x0, columns[used].y0, last.x1, last.y1}
	}
	for _, l := range placed {
		if l.x >= last.x0 {
			last.y0 = max(last.y0, l.y)
		}
	}
	last.y0 += sheetGutter
	return last
}

// illustrate puts the drawings that do not stand on the first page into a free
// box, one under the other, as many as have room.
func (s *sheet) illustrate(g *sheetPage, box rect) {
	draw := []func(*press.Plan, *press.Result, Options) *Picture{NewPressIn, NewCycle}
	if Applies("run", s.r) { // the ram runs through the steps and not through the plain cycle
		draw[1] = NewRun
	}
	if s.p.Joint.Kind == press.Touch {
		draw = draw[1:]
	}
	for n := len(draw); n > 0; n-- {
		for _, o := range []Options{{}, {Flat: true}} {
			if s.stack(g, draw[:n], o, box) {
				return
			}
		}
	}
}

// stack puts drawings with their titles under one another, where all of them fit.
func (s *sheet) stack(g *sheetPage, draw []func(*press.Plan, *press.Result, Options) *Picture, o Options, box rect) bool {
	k := sheetScale
	o.Width = box.width()/k + 2*margin
	o.Compact = o.Width < chartWideLeast
	var parts []func(*pen)
	y := box.y0
	for _, of := range draw {
		d := of(s.p, s.r, o)
		at, scale := y, fit(d.width-2*margin, box.width(), k)
		parts = append(parts, func(p *pen) { p.within(box.x0-scale*margin, at-scale*margin, scale, d.paint) })
		y += scale*(d.height-2*margin) + sheetGutter
	}
	if y-sheetGutter > box.y1 {
		return false
	}
	for _, part := range parts {
		g.add(part)
	}
	return true
}
