package draw

import (
	"strings"

	"ramplan/press"
	"ramplan/press/words"
)

// The lanes of a small strip, px from its top: the ram, what the drawing calls a
// reading, the zone. The rod is a little higher than the lanes under it.
const (
	miniRod    = 17
	miniRam    = 2
	miniFates  = 22
	miniZone   = 39
	miniLane   = 14
	miniHeight = 55
)

func laneAt(y, x0, x1 float64) rect { return rect{x0, y, x1, y + miniLane} }

func (d *mini) paint(p *pen) {
	d.fates(p)
	d.zone(p)
	d.pushEnd(p)
	d.ram(p)
	d.marker(p)
}

// fates are the readings as the drawing calls them: too tall, good and too short.
func (d *mini) fates(p *pen) {
	s, g := d.scale, d.m.requirement
	for _, f := range []struct {
		fate   fate
		word   string
		x0, x1 float64
	}{
		{fateLong, briefly(press.Long), s.x0, s.x(g[0])},
		{fateGood, words.Say(press.Good), s.x(g[0]), s.x(g[1])},
		{fateShort, briefly(press.Short), s.x(g[1]), s.x1},
	} {
		box := laneAt(miniFates, f.x0, f.x1)
		if box.x1 <= box.x0 {
			continue
		}
		p.swatch(f.fate, box)
		p.line(f.fate.ink(), thinLine, solid, [2]float64{box.x0, crisp(box.y0)}, [2]float64{box.x1, crisp(box.y0)})
		p.line(f.fate.ink(), thinLine, solid, [2]float64{box.x0, crisp(box.y1)}, [2]float64{box.x1, crisp(box.y1)})
		d.word(p, style{f.fate.ink(), small, true}, box, f.word)
	}
	for _, v := range g {
		if s.has(v) {
			p.vline(good, s.x(v), miniFates, miniFates+miniLane+1)
		}
	}
}

// briefly writes a verdict where there is little room: too tall is tall.
func briefly(verdict string) string { return strings.TrimPrefix(words.Say(verdict), "too ") }

// zone is the stretch with the zone signal on, a bracket where it ends inside.
func (d *mini) zone(p *pen) {
	from, to := d.m.zoneStart, d.m.zoneEnd
	if from == nil && to == nil {
		return
	}
	x0, x1 := d.scale.x0, d.scale.x1
	if from != nil {
		x0 = d.scale.x(*from)
	}
	if to != nil {
		x1 = d.scale.x(*to)
	}
	y := crisp(miniZone + miniLane)
	switch { // all of it outside: an arrow shows where
	case x1 <= d.scale.x0:
		p.arrow(accent, d.scale.x0, y-5, -9)
		p.text(style{accent, small, false}, d.scale.x0+14, y-2, start, "zone")
		return
	case x0 >= d.scale.x1:
		p.arrow(accent, d.scale.x1, y-5, 9)
		p.text(style{accent, small, false}, d.scale.x1-14, y-2, end, "zone")
		return
	}
	box := laneAt(miniZone, x0, x1)
	p.fill(accent.tint(fillTint), box)
	p.line(accent, outline, solid, [2]float64{x0, y}, [2]float64{x1, y})
	for _, e := range []struct {
		v *float64
		x float64
	}{{from, x0}, {to, x1}} {
		if e.v != nil && d.scale.has(*e.v) {
			p.line(accent, outline, solid, [2]float64{e.x, miniZone}, [2]float64{e.x, y})
		}
	}
	d.word(p, style{accent, small, false}, box, "zone")
}

// word writes a word in the widest piece of a lane that neither the push end nor
// the marker crosses; a lane too narrow for it goes without.
func (d *mini) word(p *pen, st style, box rect, text string) {
	var cuts []float64
	if e := d.m.end; e != nil && d.scale.has(*e) {
		cuts = append(cuts, d.scale.x(*e))
	}
	if x, ok := d.tip(); ok {
		cuts = append(cuts, x)
	}
	const beside = 5
	from, to := widest(box.x0, box.x1, cuts...)
	if w := st.width(text); to-from >= w+2*beside {
		mid := (from + to) / 2
		p.fill(paper, rect{mid - w/2 - 2, box.y0 + 1, mid + w/2 + 2, box.y1 - 1})
		p.text(st, mid, box.y0+11, middle, text)
	}
}

// pushEnd is the stop symbol in the lane of the ram, and a line through the others.
func (d *mini) pushEnd(p *pen) {
	e := d.m.end
	if e == nil || !d.scale.has(*e) {
		return
	}
	x := d.scale.x(*e)
	p.line(black, thinLine, dashed, [2]float64{x, miniRam}, [2]float64{x, miniHeight - 2})
	p.fill(black, rect{x - 1, miniRam - 1, x + 1.5, miniRam + miniRod + 1})
	p.hatch(black, hatch{rising: true, gap: 3}, rect{x + 1.5, miniRam - 1, x + 6, miniRam + miniRod + 1})
}

// ram is the rod as it rests, with its reading in words.
func (d *mini) ram(p *pen) {
	x, inside := d.tip()
	y0, y1 := crisp(miniRam), crisp(miniRam+miniRod-2)
	st, text := style{black, small, false}, d.rest.words()
	const base, bevel = miniRam + 12.5, 4
	switch {
	case d.rest.at == nil && !d.rest.early:
		p.text(st, d.scale.x0+4, base, start, text)
		return
	case d.rest.early, !inside && *d.rest.at < d.scale.from:
		p.arrow(black, d.scale.x0, (y0+y1)/2, -9)
		p.onPaper(st, d.scale.x0+14, base, start, text)
		return
	case !inside:
		p.fill(black.tint(quietTint), rect{d.scale.x0, y0, d.scale.x1, y1})
		p.arrow(black, d.scale.x1, (y0+y1)/2, 9)
		p.text(st, d.scale.x1-14, base, end, text)
		return
	}
	shape := [][2]float64{{d.scale.x0, y0}, {x - bevel, y0}, {x, y0 + bevel}, {x, y1 - bevel}, {x - bevel, y1}, {d.scale.x0, y1}}
	if x-d.scale.x0 > bevel {
		p.area(paper, shape...)
		p.area(black.tint(quietTint), shape...)
		p.line(black, outline, solid, shape...)
	}
	d.reading(p, st, x, base, text)
}

// reading writes the words on the rod; where that is too short for them, past its
// tip, or past the stop.
func (d *mini) reading(p *pen, st style, x, base float64, text string) {
	w := st.width(text)
	stop := d.scale.x1
	if e := d.m.end; e != nil && d.scale.has(*e) && d.scale.x(*e)+8 > x {
		stop = d.scale.x(*e)
	}
	switch {
	case x-d.scale.x0 >= w+14:
		p.text(st, x-7, base, end, text)
	case x+6+w <= stop-6:
		p.text(st, x+6, base, start, text)
	case stop+11+w <= d.scale.x1:
		p.text(st, stop+11, base, start, text)
	}
}

// marker carries the resting place down through the other lanes.
func (d *mini) marker(p *pen) {
	x, ok := d.tip()
	if !ok {
		return
	}
	p.line(black, outline, solid, [2]float64{x, miniRam + miniRod - 1}, [2]float64{x, miniHeight - 2})
	const y, r = miniFates + miniLane/2 + 0.5, 4.5
	p.area(black, [2]float64{x, y - r}, [2]float64{x + r, y}, [2]float64{x, y + r}, [2]float64{x - r, y})
}
