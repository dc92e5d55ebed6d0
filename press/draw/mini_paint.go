package draw

import (
	"strings"

	"ramplan/press"
	"ramplan/press/draw/canvas"
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

func laneAt(y, x0, x1 float64) canvas.Rectangle { return canvas.Rect(x0, y, x1, y+miniLane) }

func (d *mini) paint(p *canvas.Pen) {
	d.fates(p)
	d.zone(p)
	d.pushEnd(p)
	d.ram(p)
	d.marker(p)
}

// fates are the readings as the drawing calls them: too tall, good and too short.
func (d *mini) fates(p *canvas.Pen) {
	s, g := d.scale, d.m.requirement
	for _, f := range []struct {
		fate   fate
		word   string
		x0, x1 float64
	}{
		{fateLong, briefly(press.Long), s.X0, s.At(g[0])},
		{fateGood, words.Say(press.Good), s.At(g[0]), s.At(g[1])},
		{fateShort, briefly(press.Short), s.At(g[1]), s.X1},
	} {
		box := laneAt(miniFates, f.x0, f.x1)
		if box.X1 <= box.X0 {
			continue
		}
		swatch(p, f.fate, box)
		p.Line(f.fate.ink(), canvas.ThinLine, canvas.Solid, [2]float64{box.X0, canvas.Crisp(box.Y0)}, [2]float64{box.X1, canvas.Crisp(box.Y0)})
		p.Line(f.fate.ink(), canvas.ThinLine, canvas.Solid, [2]float64{box.X0, canvas.Crisp(box.Y1)}, [2]float64{box.X1, canvas.Crisp(box.Y1)})
		d.word(p, canvas.Bold(f.fate.ink(), canvas.Small), box, f.word)
	}
	for _, v := range g {
		if s.Has(v) {
			p.VLine(canvas.Good, s.At(v), miniFates, miniFates+miniLane+1)
		}
	}
}

// briefly writes a verdict where there is little room: too tall is tall.
func briefly(verdict string) string { return strings.TrimPrefix(words.Say(verdict), "too ") }

// zone is the stretch with the zone signal on, a bracket where it ends inside.
func (d *mini) zone(p *canvas.Pen) {
	from, to := d.m.zoneStart, d.m.zoneEnd
	if from == nil && to == nil {
		return
	}
	x0, x1 := d.scale.X0, d.scale.X1
	if from != nil {
		x0 = d.scale.At(*from)
	}
	if to != nil {
		x1 = d.scale.At(*to)
	}
	y := canvas.Crisp(miniZone + miniLane)
	switch { // all of it outside: an arrow shows where
	case x1 <= d.scale.X0:
		p.Arrow(canvas.Accent, d.scale.X0, y-5, -9)
		p.Text(canvas.Plain(canvas.Accent, canvas.Small), d.scale.X0+14, y-2, canvas.Start, "zone")
		return
	case x0 >= d.scale.X1:
		p.Arrow(canvas.Accent, d.scale.X1, y-5, 9)
		p.Text(canvas.Plain(canvas.Accent, canvas.Small), d.scale.X1-14, y-2, canvas.End, "zone")
		return
	}
	box := laneAt(miniZone, x0, x1)
	p.Fill(canvas.Accent.Tint(canvas.FillTint), box)
	p.Line(canvas.Accent, canvas.Outline, canvas.Solid, [2]float64{x0, y}, [2]float64{x1, y})
	for _, e := range []struct {
		v *float64
		x float64
	}{{from, x0}, {to, x1}} {
		if e.v != nil && d.scale.Has(*e.v) {
			p.Line(canvas.Accent, canvas.Outline, canvas.Solid, [2]float64{e.x, miniZone}, [2]float64{e.x, y})
		}
	}
	d.word(p, canvas.Plain(canvas.Accent, canvas.Small), box, "zone")
}

// word writes a word in the widest piece of a lane that neither the push end nor
// the marker crosses; a lane too narrow for it goes without.
func (d *mini) word(p *canvas.Pen, st canvas.Style, box canvas.Rectangle, text string) {
	var cuts []float64
	if e := d.m.end; e != nil && d.scale.Has(*e) {
		cuts = append(cuts, d.scale.At(*e))
	}
	if x, ok := d.tip(); ok {
		cuts = append(cuts, x)
	}
	const beside = 5
	from, to := widest(box.X0, box.X1, cuts...)
	if w := st.Width(text); to-from >= w+2*beside {
		mid := (from + to) / 2
		p.Fill(canvas.Paper, canvas.Rect(mid-w/2-2, box.Y0+1, mid+w/2+2, box.Y1-1))
		p.Text(st, mid, box.Y0+11, canvas.Middle, text)
	}
}

// pushEnd is the stop symbol in the lane of the ram, and a line through the others.
func (d *mini) pushEnd(p *canvas.Pen) {
	e := d.m.end
	if e == nil || !d.scale.Has(*e) {
		return
	}
	x := d.scale.At(*e)
	p.Line(canvas.Black, canvas.ThinLine, canvas.Dashed, [2]float64{x, miniRam}, [2]float64{x, miniHeight - 2})
	p.Fill(canvas.Black, canvas.Rect(x-1, miniRam-1, x+1.5, miniRam+miniRod+1))
	p.Hatch(canvas.Black, canvas.Hatch{Rising: true, Gap: 3}, canvas.Rect(x+1.5, miniRam-1, x+6, miniRam+miniRod+1))
}

// ram is the rod as it rests, with its reading in words.
func (d *mini) ram(p *canvas.Pen) {
	x, inside := d.tip()
	y0, y1 := canvas.Crisp(miniRam), canvas.Crisp(miniRam+miniRod-2)
	st, text := canvas.Plain(canvas.Black, canvas.Small), d.rest.words()
	const base, bevel = miniRam + 12.5, 4
	switch {
	case d.rest.at == nil && !d.rest.early:
		p.Text(st, d.scale.X0+4, base, canvas.Start, text)
		return
	case d.rest.early, !inside && *d.rest.at < d.scale.From:
		p.Arrow(canvas.Black, d.scale.X0, (y0+y1)/2, -9)
		p.OnPaper(st, d.scale.X0+14, base, canvas.Start, text)
		return
	case !inside:
		p.Fill(canvas.Black.Tint(canvas.QuietTint), canvas.Rect(d.scale.X0, y0, d.scale.X1, y1))
		p.Arrow(canvas.Black, d.scale.X1, (y0+y1)/2, 9)
		p.Text(st, d.scale.X1-14, base, canvas.End, text)
		return
	}
	shape := [][2]float64{{d.scale.X0, y0}, {x - bevel, y0}, {x, y0 + bevel}, {x, y1 - bevel}, {x - bevel, y1}, {d.scale.X0, y1}}
	if x-d.scale.X0 > bevel {
		p.Area(canvas.Paper, shape...)
		p.Area(canvas.Black.Tint(canvas.QuietTint), shape...)
		p.Line(canvas.Black, canvas.Outline, canvas.Solid, shape...)
	}
	d.reading(p, st, x, base, text)
}

// reading writes the words on the rod; where that is too short for them, past its
// tip, or past the stop.
func (d *mini) reading(p *canvas.Pen, st canvas.Style, x, base float64, text string) {
	w := st.Width(text)
	stop := d.scale.X1
	if e := d.m.end; e != nil && d.scale.Has(*e) && d.scale.At(*e)+8 > x {
		stop = d.scale.At(*e)
	}
	switch {
	case x-d.scale.X0 >= w+14:
		p.Text(st, x-7, base, canvas.End, text)
	case x+6+w <= stop-6:
		p.Text(st, x+6, base, canvas.Start, text)
	case stop+11+w <= d.scale.X1:
		p.Text(st, stop+11, base, canvas.Start, text)
	}
}

// marker carries the resting place down through the other lanes.
func (d *mini) marker(p *canvas.Pen) {
	x, ok := d.tip()
	if !ok {
		return
	}
	p.Line(canvas.Black, canvas.Outline, canvas.Solid, [2]float64{x, miniRam + miniRod - 1}, [2]float64{x, miniHeight - 2})
	const y, r = miniFates + miniLane/2 + 0.5, 4.5
	p.Area(canvas.Black, [2]float64{x, y - r}, [2]float64{x + r, y}, [2]float64{x, y + r}, [2]float64{x - r, y})
}
