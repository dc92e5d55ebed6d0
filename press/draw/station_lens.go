package draw

import (
	"cmp"
	"math"
	"strings"

	"ramplan/press"
	"ramplan/press/draw/canvas"
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
func (d *Station) paintLens(p *canvas.Pen, q Pose) {
	box, s, m := d.lens, d.glass, d.m
	p.Text(canvas.Plain(canvas.Quiet, canvas.Small), box.X0, box.Y0-10, canvas.Start, say.LensAxis())
	p.Text(canvas.Plain(canvas.Black, canvas.Small), box.X1, box.Y0-10, canvas.End, "tool")
	key := box.X1 - (canvas.Plain(canvas.Black, canvas.Small)).Width("tool") - 4
	p.Area(canvas.Black, [2]float64{key - 10, box.Y0 - 19}, [2]float64{key, box.Y0 - 14}, [2]float64{key - 10, box.Y0 - 9})
	at, decimals := s.Ticks(7)
	x := box.X0 + 30
	for _, v := range at {
		x = math.Max(x, box.X0+17+(canvas.Plain(canvas.Quiet, canvas.Small)).Width(figure(v, decimals)))
	}
	fates := canvas.Rect(x, s.X0, x+glassFates, s.X1)
	zone := canvas.Rect(fates.X1+8, s.X0, fates.X1+8+glassZone, s.X1)
	for _, f := range []struct {
		fate   fate
		word   string
		y0, y1 float64
	}{
		{fateLong, words.Say(press.Long), s.X0, s.At(m.requirement[0])},
		{fateGood, "required", s.At(m.requirement[0]), s.At(m.requirement[1])},
		{fateShort, words.Say(press.Short), s.At(m.requirement[1]), s.X1},
	} {
		r := canvas.Rect(fates.X0, f.y0, fates.X1, f.y1)
		if r.Y1 <= r.Y0 {
			continue
		}
		swatch(p, f.fate, r)
		p.Frame(f.fate.ink(), canvas.ThinLine, canvas.Solid, r)
		lines := strings.Fields(f.word)
		if r.Y1-r.Y0 > 6+14*float64(len(lines)) { // near the edge: the tool mostly rests in the middle
			for i, line := range lines {
				p.OnPaper(canvas.Bold(f.fate.ink(), canvas.Small), (r.X0+r.X1)/2, r.Y0+16+13*float64(i), canvas.Middle, line)
			}
		}
	}
	p.Line(canvas.Black, canvas.ThinLine, canvas.Solid, [2]float64{canvas.Crisp(x), s.X0}, [2]float64{canvas.Crisp(x), s.X1})
	for _, v := range at {
		y := canvas.Crisp(s.At(v))
		p.Line(canvas.Black, canvas.ThinLine, canvas.Solid, [2]float64{x - 5, y}, [2]float64{x, y})
		p.Text(canvas.Plain(canvas.Quiet, canvas.Small), x-15, y+4, canvas.End, figure(v, decimals))
	}
	d.lensZone(p, zone)
	d.lensEnd(p, box, fates.X0, zone)
	p.Group("station-tip", !s.Has(q.Position), func() { d.lensTip(p, fates, box.X1, s.At(q.Position)) })
	p.Group("station-above", q.Position >= s.From, func() { d.beyond(p, box.X0, s.X0-9, -1, say.ToolAboveAt(), q.Position) })
	p.Group("station-below", q.Position <= s.To, func() { d.beyond(p, box.X0, s.X1+17, 1, say.ToolBelowAt(), q.Position) })
}

// beyond says of a tool outside the magnified stretch on which side of it, and where,
// it stands; way is 1 for below.
func (d *Station) beyond(p *canvas.Pen, x, y, way float64, side string, mm float64) {
	tip := y - 4 + 5*way
	p.Area(canvas.Black, [2]float64{x - 1, tip - 10*way}, [2]float64{x + 9, tip - 10*way}, [2]float64{x + 4, tip})
	s := canvas.Bold(canvas.Black, canvas.Small)
	p.Text(s, x+14, y, canvas.Start, s.Clip(side+words.Fixed(mm, d.decimals()), d.lens.X1-x-14))
}

// lensZone is the zone as a bracket; where an end lies outside, the bracket stays
// open there.
func (d *Station) lensZone(p *canvas.Pen, box canvas.Rectangle) {
	m, s := d.m, d.glass
	if m.zoneStart == nil || m.zoneEnd == nil || *m.zoneEnd < s.From || *m.zoneStart > s.To {
		return
	}
	y0, y1 := s.At(*m.zoneStart), s.At(*m.zoneEnd)
	p.Fill(canvas.Accent.Tint(canvas.FillTint), canvas.Rect(box.X0, y0, box.X1, y1))
	x := canvas.Crisp(box.X1)
	p.Line(canvas.Accent, canvas.Outline, canvas.Solid, [2]float64{x, y0}, [2]float64{x, y1})
	for _, e := range []struct{ v, y float64 }{{*m.zoneStart, y0}, {*m.zoneEnd, y1}} {
		if s.Has(e.v) {
			p.Line(canvas.Accent, canvas.Outline, canvas.Solid, [2]float64{box.X0, e.y}, [2]float64{x, e.y})
		}
	}
	y := (y0 + y1) / 2
	if e := m.end; e != nil && s.Has(*e) && y > s.At(*e)-22 && y < s.At(*e)+30 { // clear of the push end and its name
		if up := s.At(*e) - 24; up > y0+8 {
			y = up
		} else {
			y = s.At(*e) + 30
		}
	}
	if y > y0+6 && y < y1-2 && x+6+(canvas.Bold(canvas.Accent, canvas.Small)).Width("zone") <= d.lens.X1 {
		p.Text(canvas.Bold(canvas.Accent, canvas.Small), x+6, y+4, canvas.Start, "zone")
	}
}

// lensEnd is the stop at the push end.
func (d *Station) lensEnd(p *canvas.Pen, box canvas.Rectangle, x float64, zone canvas.Rectangle) {
	e := d.m.end
	if e == nil || !d.glass.Has(*e) {
		return
	}
	y := d.glass.At(*e)
	p.Line(canvas.Black, canvas.ThinLine, canvas.Dashed, [2]float64{x, y}, [2]float64{zone.X1 + 6, y})
	stop := canvas.Rect(zone.X1+6, y-1, box.X1, y+1.5)
	p.Fill(canvas.Black, stop)
	p.Hatch(canvas.Black, canvas.Hatch{Rising: true, Gap: 3.5}, canvas.Rect(stop.X0, stop.Y1, stop.X1, stop.Y1+5))
	text := say.PushEnd()
	if room := stop.X1 - stop.X0; (canvas.Plain(canvas.Black, canvas.Small)).Width(text) > room {
		text = "end"
	}
	p.Text(canvas.Plain(canvas.Black, canvas.Small), stop.X1, stop.Y1+17, canvas.End, text)
}

// lensTip is where the face of the tool stands.
func (d *Station) lensTip(p *canvas.Pen, fates canvas.Rectangle, x1, y float64) {
	p.Line(canvas.Paper, 4, canvas.Solid, [2]float64{fates.X0 - 4, y}, [2]float64{x1, y})
	p.Line(canvas.Black, 2, canvas.Solid, [2]float64{fates.X0 - 4, y}, [2]float64{x1, y})
	x := fates.X0 + 1
	p.Area(canvas.Black, [2]float64{x - 12, y - 6}, [2]float64{x, y}, [2]float64{x - 12, y + 6})
}

// Radius of a lamp of the station, px.
const bigLamp = 25

// lampStep is how far the two lamps stand apart, px.
func (d *Station) lampStep() float64 {
	if d.compact {
		return 80
	}
	return (d.lamps.X1 - d.lamps.X0) / 2
}

// saysFrom is where the lines begin that say what goes on.
func (d *Station) saysFrom() (x, y float64) {
	if d.compact {
		return d.lamps.X0 + 2*d.lampStep() + 14, d.lamps.Y0 + 20
	}
	return d.lamps.X0, d.lamps.Y0 + 24 + 2*bigLamp + 40
}

// paintLamps draws the two lamps, the phase, the clock and the position.
func (d *Station) paintLamps(p *canvas.Pen, q Pose) {
	box := d.lamps
	step := d.lampStep()
	for i, l := range []struct{ name, state string }{{"arrival", q.Arrival}, {"zone", q.Zone}} {
		x := box.X0 + step*(float64(i)+0.5)
		p.Text(canvas.Bold(canvas.Black, canvas.Body), x, box.Y0+12, canvas.Middle, l.name)
		for _, state := range []string{"on", "off", unknownLamp} {
			p.Group("lamp-"+l.name+"-"+state, state != l.state, func() { signalLamp(p, x, box.Y0+24+bigLamp, bigLamp, state) })
		}
	}
	x, y := d.saysFrom()
	line := func(class string, s canvas.Style, text string) {
		p.Group(class, false, func() { p.Text(s, x, y, canvas.Start, text) })
		y += canvas.Leading * (s.Size + 4)
	}
	line("station-phase", canvas.Bold(canvas.Black, canvas.Body), q.Phase)
	line("station-position", canvas.Plain(canvas.Black, canvas.Body), d.at(q.Position))
	line("station-clock", canvas.Plain(canvas.Black, canvas.Body), say.Seconds(q.Time))
	p.Group("station-verdict", q.Verdict == "", func() { p.Text(canvas.Bold(canvas.Black, canvas.Body), x, y, canvas.Start, cmp.Or(q.Verdict, "?")) })
	y += canvas.Leading * (canvas.Body + 4)
	if d.p.Ram.Direction != press.Down {
		p.Text(canvas.Plain(canvas.Quiet, canvas.Small), x, y, canvas.Start, say.DrawnAsIfDown())
	}
}

// signalLamp is a round indicator: full for on, empty for off, dashed with a
// question mark where nobody knows. The word stands in it.
func signalLamp(p *canvas.Pen, x, y, r float64, state string) {
	lampSaying(p, x, y, r, 0.56*r, state)
}

// lampSaying is a lamp with its word in a size of its own.
func lampSaying(p *canvas.Pen, x, y, r, size float64, state string) {
	s := canvas.Bold(canvas.Black, size)
	text := state
	switch state {
	case "on":
		p.Circle(canvas.Black, canvas.Black, canvas.Outline, x, y, r)
		p.Circle(canvas.Black, canvas.Paper, canvas.Outline, x, y, r-4)
		s.Ink = canvas.Paper
	case "off":
		p.Circle(canvas.Paper, canvas.Black, canvas.Outline+0.5, x, y, r)
	default:
		p.Circle(canvas.Ground, canvas.Quiet, canvas.ThinLine, x, y, r)
		s.Ink, text = canvas.Quiet, "?"
	}
	p.Text(s, x, y+0.36*s.Size, canvas.Middle, text)
}
