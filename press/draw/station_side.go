package draw

import (
	"math"

	"ramplan/press"
	"ramplan/press/draw/canvas"
)

// section is what lies in the nest, by ram positions, mm: where a tool would touch
// its faces.
type section struct {
	insert bool    // there is one
	top    float64 // of the insert before the push
	seat   float64 // of the insert as it rests
	hub    float64 // top of the hub
	foot   float64 // the insert's lower end as it rests
	single float64 // top of the first of two
	pushed bool    // the ram moves it
	looks  press.Picture
}

// sectionOf makes a simple section of the parts: the true heights where the plan
// knows them, usual proportions where it does not.
func sectionOf(p *press.Plan, r *press.Result, s Scene) section {
	nest, t := p.Station.Nest, &r.Travel
	seat := nest - r.Stack.Seat.Mean
	high := math.Max(r.Stack.Seat.Mean, 1e-6)
	b := section{insert: true, top: t.Contact, seat: seat, pushed: true}
	b.hub = seat + 0.12*high
	b.foot = seat + 0.62*high
	if t.PressIn <= 0 { // it stands on the hub
		b.hub, b.foot = seat+0.55*high, seat+0.55*high
	}
	c := s.Course
	if c.Touch != nil {
		b.top = *c.Touch
	}
	by := b.top - t.Contact // how much deeper the whole part stands
	b.looks = s.looks()
	switch b.looks {
	case press.LooksEmpty:
		b.insert, b.pushed = false, false
	case press.LooksDouble:
		b.single, b.pushed = t.Contact, false
	case press.LooksSeated:
		b.pushed = false
	}
	if c.Early && b.looks != press.LooksDouble {
		b.pushed = false
	}
	if b.looks != press.LooksSeated && b.looks != press.LooksDouble {
		b.seat += by
	}
	return b
}

// paintSide draws the ram, the tool, the parts, the nest, and the scale of the
// travel beside them.
func (d *Station) paintSide(p *canvas.Pen, q Pose) {
	box := d.side
	axis := box.X0 + 44
	mid := (axis + box.X1) / 2
	half := math.Min(46, (box.X1-axis)/2-8)
	p.Text(canvas.Plain(canvas.Quiet, canvas.Small), box.X0, box.Y0-10, canvas.Start, say.SideView())
	d.travelScale(p, axis)
	d.nest(p, mid, half)
	d.hub(p, mid, half)
	p.Group("station-part", false, func() { d.insert(p, mid, half*0.62, q) })
	d.names(p, mid+half+14)
	p.Group("station-rod", false, func() { d.rodTo(p, mid, half, d.ramAtPx(q.Position)) })
	p.Group("station-ram", false, func() { d.ramAt(p, mid, half, d.ramAtPx(q.Position)) })
	// The guide stands over the rod.
	guide := canvas.Rect(mid-half, box.Y0-6, mid+half, box.Y0+guideEdge)
	p.Fill(canvas.Paper, guide)
	p.Fill(canvas.Black.Tint(0.25), guide)
	p.Frame(canvas.Black, canvas.Outline, canvas.Solid, guide)
	if note := d.note(); note != "" {
		p.Text(canvas.Plain(canvas.Black, canvas.Small), box.X0, box.Y1+16, canvas.Start, canvas.Plain(canvas.Black, canvas.Small).Clip(note, box.X1-box.X0))
	}
}

// names of what stands still, where there is room.
func (d *Station) names(p *canvas.Pen, x float64) {
	s := canvas.Plain(canvas.Quiet, canvas.Small)
	hub, nest := d.travel.At(d.part.hub), d.travel.At(d.p.Station.Nest)
	if d.compact || nest-hub < 24 || x+s.Width("guide") > d.side.X1 {
		return
	}
	for _, n := range []struct {
		name string
		y    float64
	}{{"guide", d.side.Y0}, {"hub", (hub + nest) / 2}, {"nest", nest + nestRoom/2 - 2}} {
		p.Text(s, x, n.y+4, canvas.Start, n.name)
	}
}

// note names what cannot be drawn to scale.
func (d *Station) note() string {
	switch d.part.looks {
	case press.LooksDouble:
		return say.SecondInsert()
	case press.LooksEmpty:
		return say.NoInsertInside()
	case press.LooksOnChip:
		return say.ChipUnderPart()
	case press.LooksOffSeat:
		return say.StopsShort()
	case press.LooksLoose:
		return say.LooseNoGrip()
	case press.LooksTight:
		return say.TightStalls()
	case press.LooksOnWornNest:
		return say.NestGaveWay()
	}
	return ""
}

// travelScale is the ruler of the travel with its marks.
func (d *Station) travelScale(p *canvas.Pen, x float64) {
	s := d.travel
	p.Line(canvas.Black, canvas.ThinLine, canvas.Solid, [2]float64{canvas.Crisp(x), s.X0}, [2]float64{canvas.Crisp(x), s.X1})
	if d.p.Station.Home < s.From { // the travel goes on above
		p.Line(canvas.Black, canvas.ThinLine, canvas.Dashed, [2]float64{canvas.Crisp(x), d.side.Y0 + guideEdge}, [2]float64{canvas.Crisp(x), s.X0})
	}
	at, decimals := s.Ticks(6)
	for _, v := range at {
		y := canvas.Crisp(s.At(v))
		p.Line(canvas.Black, canvas.ThinLine, canvas.Solid, [2]float64{x - 5, y}, [2]float64{x, y})
		if y-d.side.Y0 > 4 { // clear of the guide
			p.Text(canvas.Plain(canvas.Quiet, canvas.Small), x-8, y+4, canvas.End, figure(v, decimals))
		}
	}
	if z := d.m; z.zoneStart != nil && z.zoneEnd != nil && *z.zoneEnd >= s.From && *z.zoneStart <= s.To {
		y0, y1 := s.At(*z.zoneStart), s.At(*z.zoneEnd)
		p.Fill(canvas.Accent, canvas.Rect(x+1, y0, x+6, math.Max(y1, y0+2)))
	}
	if e := d.m.end; e != nil && s.Has(*e) {
		p.Fill(canvas.Black, canvas.Rect(x-4, s.At(*e)-1, x+10, s.At(*e)+1))
	}
}

// nest is the face that carries the parts.
func (d *Station) nest(p *canvas.Pen, mid, half float64) {
	y := d.travel.At(d.p.Station.Nest)
	box := canvas.Rect(mid-half-6, y, mid+half+6, y+nestRoom-8)
	if d.part.looks == press.LooksOnWornNest {
		p.Line(canvas.Black, canvas.ThinLine, canvas.Dashed, [2]float64{box.X0, y}, [2]float64{box.X1, y})
		box.Y0 += 4
	}
	p.Fill(canvas.Black.Tint(canvas.QuietTint), box)
	p.Hatch(canvas.Black.Tint(0.5), canvas.Hatch{Rising: true, Gap: 5}, box)
	p.Line(canvas.Black, canvas.Outline, canvas.Solid, [2]float64{box.X0, box.Y0}, [2]float64{box.X1, box.Y0})
}

// hub is cut open: two walls and the shoulder between them.
func (d *Station) hub(p *canvas.Pen, mid, half float64) {
	b, nest := d.part, d.travel.At(d.p.Station.Nest)
	if b.looks == press.LooksOnWornNest {
		nest += 4
	}
	top, foot := d.travel.At(b.hub), d.travel.At(b.foot)
	bore := half * 0.62
	if b.looks == press.LooksLoose {
		bore += 4
	}
	var shapes []canvas.Rectangle
	if d.m.seatOnly(b) {
		shapes = []canvas.Rectangle{canvas.Rect(mid-half, top, mid+half, nest)}
	} else {
		shapes = []canvas.Rectangle{canvas.Rect(mid-half, top, mid-bore, nest), canvas.Rect(mid+bore, top, mid+half, nest), canvas.Rect(mid-bore, foot, mid+bore, nest)}
	}
	for _, s := range shapes {
		p.Fill(canvas.Paper, s)
		p.Fill(canvas.Black.Tint(canvas.QuietTint), s)
		p.Hatch(canvas.Black.Tint(0.35), canvas.Hatch{Falling: true, Gap: 6}, s)
	}
	if len(shapes) == 1 {
		p.Frame(canvas.Black, canvas.Outline, canvas.Solid, shapes[0])
		return
	}
	for _, side := range []float64{-1, 1} {
		p.Line(canvas.Black, canvas.Outline, canvas.Solid, [2]float64{mid + side*half, nest}, [2]float64{mid + side*half, top},
			[2]float64{mid + side*bore, top}, [2]float64{mid + side*bore, foot}, [2]float64{mid, foot})
	}
	if b.looks == press.LooksOnChip {
		p.Area(canvas.Black, [2]float64{mid - 12, foot}, [2]float64{mid - 9, foot - 5}, [2]float64{mid - 4, foot - 3}, [2]float64{mid + 1, foot})
	}
}

// seatOnly tells whether the insert stands on the hub instead of in it.
func (m *stripModel) seatOnly(b section) bool { return b.hub >= b.foot }

// insert is the part that is pressed in, at the px of its top in the pose.
func (d *Station) insert(p *canvas.Pen, mid, half float64, q Pose) {
	b := d.part
	if !b.insert {
		return
	}
	high := d.travel.At(b.foot) - d.travel.At(b.seat)
	if high < 3 {
		high = 3
	}
	one := func(top float64) {
		s := canvas.Rect(mid-half, top, mid+half, top+high)
		p.Fill(canvas.Paper, s)
		p.Fill(canvas.Good.Tint(canvas.FillTint), s)
		p.Frame(canvas.Black, canvas.Outline, canvas.Solid, s)
		p.Line(canvas.Black, canvas.ThinLine, canvas.Centring, [2]float64{mid, top - 4}, [2]float64{mid, top + high + 4})
	}
	if b.looks == press.LooksDouble {
		first := d.travel.At(b.single)
		one(first)
		top := d.travel.At(b.top)
		s := canvas.Rect(mid-half, top, mid+half, math.Max(first, top+3))
		p.Fill(canvas.Paper, s)
		p.Fill(canvas.Good.Tint(canvas.FillTint), s)
		p.Hatch(canvas.Black.Tint(0.4), canvas.Hatch{Falling: true, Gap: 5}, s)
		p.Frame(canvas.Black, canvas.Outline, canvas.Solid, s)
		return
	}
	one(q.Part)
}

// Places of the rod, px: the guide's lower edge under the top of the side view,
// the height of the tool, and the room that the tool needs at home.
const (
	guideEdge = 4
	toolHigh  = 12
	homeRoom  = 24
	higher    = 6 // by which a tool stands off the ruler that is higher up than it shows
)

// ramAt draws the tool with its face at y.
func (d *Station) ramAt(p *canvas.Pen, mid, half, y float64) {
	head := canvas.Rect(mid-half*0.7, y-toolHigh, mid+half*0.7, y)
	p.Fill(canvas.Paper, head)
	p.Fill(canvas.Black.Tint(0.2), head)
	p.Frame(canvas.Black, canvas.Outline, canvas.Solid, head)
}

// rodTo draws the rod from the guide to the tool. It is a group of its own, for a
// script to stretch.
func (d *Station) rodTo(p *canvas.Pen, mid, half, y float64) {
	rod := canvas.Rect(mid-half*0.3, d.side.Y0+guideEdge, mid+half*0.3, y-toolHigh)
	p.Fill(canvas.Paper, rod)
	p.Fill(canvas.Black.Tint(canvas.QuietTint), rod)
	for _, x := range []float64{rod.X0, rod.X1} {
		p.Line(canvas.Black, canvas.Outline, canvas.Solid, [2]float64{x, rod.Y0}, [2]float64{x, rod.Y1})
	}
}
