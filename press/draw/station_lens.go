package draw

import (
	"cmp"
	"math"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
)

// Columns of the magnified stretch, px.
const (
	glassFates = 56
	glassZone  = 14 // of the bracket
	beyondRoom = 22 // px over and under it, in which stands where a tool is that it does not show
)

// paintLens draws the last tenths, downward: what the drawing calls a reading, which
// is more than passes: good by the drawing is named "required", as on the strip; the
// zone, the push end, and the tip of the ram as it moves.
func (d *Station) paintLens(p *pen, q Pose) {
	box, s, m := d.lens, d.glass, d.m
	p.text(style{quiet, small, false}, box.x0, box.y0-10, start, "last tenths, mm")
	p.text(style{black, small, false}, box.x1, box.y0-10, end, "tool")
	key := box.x1 - (style{black, small, false}).width("tool") - 4
	p.area(black, [2]float64{key - 10, box.y0 - 19}, [2]float64{key, box.y0 - 14}, [2]float64{key - 10, box.y0 - 9})
	at, decimals := s.ticks(7)
	x := box.x0 + 30
	for _, v := range at {
		x = math.Max(x, box.x0+17+(style{quiet, small, false}).width(figure(v, decimals)))
	}
	fates := rect{x, s.x0, x + glassFates, s.x1}
	zone := rect{fates.x1 + 8, s.x0, fates.x1 + 8 + glassZone, s.x1}
	for _, f := range []struct {
		fate   fate
		word   string
		y0, y1 float64
	}{
		{fateLong, words.Say(press.Long), s.x0, s.x(m.requirement[0])},
		{fateGood, "required", s.x(m.requirement[0]), s.x(m.requirement[1])},
		{fateShort, words.Say(press.Short), s.x(m.requirement[1]), s.x1},
	} {
		r := rect{fates.x0, f.y0, fates.x1, f.y1}
		if r.y1 <= r.y0 {
			continue
		}
		p.swatch(f.fate, r)
		p.frame(f.fate.ink(), thinLine, solid, r)
		lines := strings.Fields(f.word)
		if r.y1-r.y0 > 6+14*float64(len(lines)) { // near the edge: the tool mostly rests in the middle
			for i, line := range lines {
				p.onPaper(style{f.fate.ink(), small, true}, (r.x0+r.x1)/2, r.y0+16+13*float64(i), middle, line)
			}
		}
	}
	p.line(black, thinLine, solid, [2]float64{crisp(x), s.x0}, [2]float64{crisp(x), s.x1})
	for _, v := range at {
		y := crisp(s.x(v))
		p.line(black, thinLine, solid, [2]float64{x - 5, y}, [2]float64{x, y})
		p.text(style{quiet, small, false}, x-15, y+4, end, figure(v, decimals))
	}
	d.lensZone(p, zone)
	d.lensEnd(p, box, fates.x0, zone)
	p.group("station-tip", !s.has(q.Position), func() { d.lensTip(p, fates, box.x1, s.x(q.Position)) })
	p.group("station-above", q.Position >= s.from, func() { d.beyond(p, box.x0, s.x0-9, -1, "tool above, at ", q.Position) })
	p.group("station-below", q.Position <= s.to, func() { d.beyond(p, box.x0, s.x1+17, 1, "tool below, at ", q.Position) })
}

// beyond says of a tool outside the magnified stretch on which side of it, and where,
// it stands; way is 1 for below.
func (d *Station) beyond(p *pen, x, y, way float64, side string, mm float64) {
	tip := y - 4 + 5*way
	p.area(black, [2]float64{x - 1, tip - 10*way}, [2]float64{x + 9, tip - 10*way}, [2]float64{x + 4, tip})
	s := style{black, small, true}
	p.text(s, x+14, y, start, s.clip(side+words.Fixed(mm, d.decimals()), d.lens.x1-x-14))
}

// lensZone is the zone as a bracket; where an end lies outside, the bracket stays
// open there.
func (d *Station) lensZone(p *pen, box rect) {
	m, s := d.m, d.glass
	if m.zoneStart == nil || m.zoneEnd == nil || *m.zoneEnd < s.from || *m.zoneStart > s.to {
		return
	}
	y0, y1 := s.x(*m.zoneStart), s.x(*m.zoneEnd)
	p.fill(accent.tint(fillTint), rect{box.x0, y0, box.x1, y1})
	x := crisp(box.x1)
	p.line(accent, outline, solid, [2]float64{x, y0}, [2]float64{x, y1})
	for _, e := range []struct{ v, y float64 }{{*m.zoneStart, y0}, {*m.zoneEnd, y1}} {
		if s.has(e.v) {
			p.line(accent, outline, solid, [2]float64{box.x0, e.y}, [2]float64{x, e.y})
		}
	}
	y := (y0 + y1) / 2
	if e := m.end; e != nil && s.has(*e) && y > s.x(*e)-22 && y < s.x(*e)+30 { // clear of the push end and its name
		if up := s.x(*e) - 24; up > y0+8 {
			y = up
		} else {
			y = s.x(*e) + 30
		}
	}
	if y > y0+6 && y < y1-2 && x+6+(style{accent, small, true}).width("zone") <= d.lens.x1 {
		p.text(style{accent, small, true}, x+6, y+4, start, "zone")
	}
}

// lensEnd is the stop at the push end.
func (d *Station) lensEnd(p *pen, box rect, x float64, zone rect) {
	e := d.m.end
	if e == nil || !d.glass.has(*e) {
		return
	}
	y := d.glass.x(*e)
	p.line(black, thinLine, dashed, [2]float64{x, y}, [2]float64{zone.x1 + 6, y})
	stop := rect{zone.x1 + 6, y - 1, box.x1, y + 1.5}
	p.fill(black, stop)
	p.hatch(black, hatch{rising: true, gap: 3.5}, rect{stop.x0, stop.y1, stop.x1, stop.y1 + 5})
	text := "push end"
	if room := stop.x1 - stop.x0; (style{black, small, false}).width(text) > room {
		text = "end"
	}
	p.text(style{black, small, false}, stop.x1, stop.y1+17, end, text)
}

// lensTip is where the face of the tool stands.
func (d *Station) lensTip(p *pen, fates rect, x1, y float64) {
	p.line(paper, 4, solid, [2]float64{fates.x0 - 4, y}, [2]float64{x1, y})
	p.line(black, 2, solid, [2]float64{fates.x0 - 4, y}, [2]float64{x1, y})
	x := fates.x0 + 1
	p.area(black, [2]float64{x - 12, y - 6}, [2]float64{x, y}, [2]float64{x - 12, y + 6})
}

// Radius of a lamp of the station, px.
const bigLamp = 25

// lampStep is how far the two lamps stand apart, px.
func (d *Station) lampStep() float64 {
	if d.compact {
		return 80
	}
	return (d.lamps.x1 - d.lamps.x0) / 2
}

// saysFrom is where the lines begin that say what goes on.
func (d *Station) saysFrom() (x, y float64) {
	if d.compact {
		return d.lamps.x0 + 2*d.lampStep() + 14, d.lamps.y0 + 20
	}
	return d.lamps.x0, d.lamps.y0 + 24 + 2*bigLamp + 40
}

// paintLamps draws the two lamps, the phase, the clock and the position.
func (d *Station) paintLamps(p *pen, q Pose) {
	box := d.lamps
	step := d.lampStep()
	for i, l := range []struct{ name, state string }{{"arrival", q.Arrival}, {"zone", q.Zone}} {
		x := box.x0 + step*(float64(i)+0.5)
		p.text(style{black, body, true}, x, box.y0+12, middle, l.name)
		for _, state := range []string{"on", "off", unknownLamp} {
			p.group("lamp-"+l.name+"-"+state, state != l.state, func() { p.signalLamp(x, box.y0+24+bigLamp, bigLamp, state) })
		}
	}
	x, y := d.saysFrom()
	line := func(class string, s style, text string) {
		p.group(class, false, func() { p.text(s, x, y, start, text) })
		y += leading * (s.size + 4)
	}
	line("station-phase", style{black, body, true}, q.Phase)
	line("station-position", style{black, body, false}, d.at(q.Position))
	line("station-clock", style{black, body, false}, words.Seconds(q.Time))
	p.group("station-verdict", q.Verdict == "", func() { p.text(style{black, body, true}, x, y, start, cmp.Or(q.Verdict, "?")) })
	y += leading * (body + 4)
	if d.p.Ram.Direction != press.Down {
		p.text(style{quiet, small, false}, x, y, start, "drawn as if it pressed down")
	}
}

// signalLamp is a round indicator: full for on, empty for off, dashed with a
// question mark where nobody knows. The word stands in it.
func (p *pen) signalLamp(x, y, r float64, state string) {
	p.lampSaying(x, y, r, 0.56*r, state)
}

// lampSaying is a lamp with its word in a size of its own.
func (p *pen) lampSaying(x, y, r, size float64, state string) {
	s := style{black, size, true}
	text := state
	switch state {
	case "on":
		p.circle(black, black, outline, x, y, r)
		p.circle(black, paper, outline, x, y, r-4)
		s.ink = paper
	case "off":
		p.circle(paper, black, outline+0.5, x, y, r)
	default:
		p.circle(ground, quiet, thinLine, x, y, r)
		s.ink, text = quiet, "?"
	}
	p.text(s, x, y+0.36*s.size, middle, text)
}
