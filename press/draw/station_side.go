package draw

import (
	"math"

	"ramplan/press"
)

// section is what lies in the nest, by ram positions, mm: where a tool would touch
// its faces.
type section struct {
	insert bool    // there is one
	top    float64 // of the insert before the push
	seat   float64 // of the insert as it rests
	hub    float64 // top of the hub
	foot   float64 // the insert's lower end as it rests
	second bool    // another insert lies on the first
	single float64 // top of the first of two
	chip   bool
	loose  bool
	tight  bool
	worn   bool
	gap    bool
	pushed bool // the ram moves it
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
	switch s.kind() {
	case press.RowMissing, press.RowArrivalStuckOn:
		b.insert, b.pushed = false, false
	case press.RowTwoInserts:
		b.second, b.single, b.pushed = true, t.Contact, false
	case press.RowAlreadyPressed:
		b.pushed = false
	case press.RowChip:
		b.chip = true
	case press.RowLoose:
		b.loose = true
	case press.RowTight:
		b.tight = true
	case press.RowGap:
		b.gap = true
	case press.RowNestWorn:
		b.worn = true
	}
	if c.Early && s.kind() != press.RowTwoInserts {
		b.pushed = false
	}
	if s.kind() != press.RowAlreadyPressed && s.kind() != press.RowTwoInserts {
		b.seat += by
	}
	return b
}

// paintSide draws the ram, the tool, the parts, the nest, and the scale of the
// travel beside them.
func (d *Station) paintSide(p *pen, q Pose) {
	box := d.side
	axis := box.x0 + 44
	mid := (axis + box.x1) / 2
	half := math.Min(46, (box.x1-axis)/2-8)
	p.text(style{quiet, small, false}, box.x0, box.y0-10, start, "side view")
	d.travelScale(p, axis)
	d.nest(p, mid, half)
	d.hub(p, mid, half)
	p.group("station-part", false, func() { d.insert(p, mid, half*0.62, q) })
	d.names(p, mid+half+14)
	p.group("station-rod", false, func() { d.rodTo(p, mid, half, d.ramAtPx(q.Position)) })
	p.group("station-ram", false, func() { d.ramAt(p, mid, half, d.ramAtPx(q.Position)) })
	// The guide stands over the rod.
	guide := rect{mid - half, box.y0 - 6, mid + half, box.y0 + guideEdge}
	p.fill(paper, guide)
	p.fill(black.tint(0.25), guide)
	p.frame(black, outline, solid, guide)
	if note := d.note(); note != "" {
		p.text(style{black, small, false}, box.x0, box.y1+16, start, style{black, small, false}.clip(note, box.x1-box.x0))
	}
}

// names of what stands still, where there is room.
func (d *Station) names(p *pen, x float64) {
	s := style{quiet, small, false}
	hub, nest := d.travel.x(d.part.hub), d.travel.x(d.p.Station.Nest)
	if d.compact || nest-hub < 24 || x+s.width("guide") > d.side.x1 {
		return
	}
	for _, n := range []struct {
		name string
		y    float64
	}{{"guide", d.side.y0}, {"hub", (hub + nest) / 2}, {"nest", nest + nestRoom/2 - 2}} {
		p.text(s, x, n.y+4, start, n.name)
	}
}

// note names what cannot be drawn to scale.
func (d *Station) note() string {
	switch b := d.part; {
	case b.second:
		return "a second insert on the first"
	case !b.insert:
		return "no insert in the nest"
	case b.chip:
		return "a chip under the part"
	case b.gap:
		return "stops short of its seat"
	case b.loose:
		return "loose: no grip"
	case b.tight:
		return "tight: stalls on its way"
	case b.worn:
		return "the nest has given way"
	}
	return ""
}

// travelScale is the ruler of the travel with its marks.
func (d *Station) travelScale(p *pen, x float64) {
	s := d.travel
	p.line(black, thinLine, solid, [2]float64{crisp(x), s.x0}, [2]float64{crisp(x), s.x1})
	if d.p.Station.Home < s.from { // the travel goes on above
		p.line(black, thinLine, dashed, [2]float64{crisp(x), d.side.y0 + guideEdge}, [2]float64{crisp(x), s.x0})
	}
	at, decimals := s.ticks(6)
	for _, v := range at {
		y := crisp(s.x(v))
		p.line(black, thinLine, solid, [2]float64{x - 5, y}, [2]float64{x, y})
		if y-d.side.y0 > 4 { // clear of the guide
			p.text(style{quiet, small, false}, x-8, y+4, end, figure(v, decimals))
		}
	}
	if z := d.m; z.zoneStart != nil && z.zoneEnd != nil && *z.zoneEnd >= s.from && *z.zoneStart <= s.to {
		y0, y1 := s.x(*z.zoneStart), s.x(*z.zoneEnd)
		p.fill(accent, rect{x + 1, y0, x + 6, math.Max(y1, y0+2)})
	}
	if e := d.m.end; e != nil && s.has(*e) {
		p.fill(black, rect{x - 4, s.x(*e) - 1, x + 10, s.x(*e) + 1})
	}
}

// nest is the face that carries the parts.
func (d *Station) nest(p *pen, mid, half float64) {
	y := d.travel.x(d.p.Station.Nest)
	box := rect{mid - half - 6, y, mid + half + 6, y + nestRoom - 8}
	if d.part.worn {
		p.line(black, thinLine, dashed, [2]float64{box.x0, y}, [2]float64{box.x1, y})
		box.y0 += 4
	}
	p.fill(black.tint(quietTint), box)
	p.hatch(black.tint(0.5), hatch{rising: true, gap: 5}, box)
	p.line(black, outline, solid, [2]float64{box.x0, box.y0}, [2]float64{box.x1, box.y0})
}

// hub is cut open: two walls and the shoulder between them.
func (d *Station) hub(p *pen, mid, half float64) {
	b, nest := d.part, d.travel.x(d.p.Station.Nest)
	if b.worn {
		nest += 4
	}
	top, foot := d.travel.x(b.hub), d.travel.x(b.foot)
	bore := half * 0.62
	if b.loose {
		bore += 4
	}
	var shapes []rect
	if d.m.seatOnly(b) {
		shapes = []rect{{mid - half, top, mid + half, nest}}
	} else {
		shapes = []rect{{mid - half, top, mid - bore, nest}, {mid + bore, top, mid + half, nest}, {mid - bore, foot, mid + bore, nest}}
	}
	for _, s := range shapes {
		p.fill(paper, s)
		p.fill(black.tint(quietTint), s)
		p.hatch(black.tint(0.35), hatch{falling: true, gap: 6}, s)
	}
	if len(shapes) == 1 {
		p.frame(black, outline, solid, shapes[0])
		return
	}
	for _, side := range []float64{-1, 1} {
		p.line(black, outline, solid, [2]float64{mid + side*half, nest}, [2]float64{mid + side*half, top},
			[2]float64{mid + side*bore, top}, [2]float64{mid + side*bore, foot}, [2]float64{mid, foot})
	}
	if b.chip {
		p.area(black, [2]float64{mid - 12, foot}, [2]float64{mid - 9, foot - 5}, [2]float64{mid - 4, foot - 3}, [2]float64{mid + 1, foot})
	}
}

// seatOnly tells whether the insert stands on the hub instead of in it.
func (m *stripModel) seatOnly(b section) bool { return b.hub >= b.foot }

// insert is the part that is pressed in, at the px of its top in the pose.
func (d *Station) insert(p *pen, mid, half float64, q Pose) {
	b := d.part
	if !b.insert {
		return
	}
	high := d.travel.x(b.foot) - d.travel.x(b.seat)
	if high < 3 {
		high = 3
	}
	one := func(top float64) {
		s := rect{mid - half, top, mid + half, top + high}
		p.fill(paper, s)
		p.fill(good.tint(fillTint), s)
		p.frame(black, outline, solid, s)
		p.line(black, thinLine, centring, [2]float64{mid, top - 4}, [2]float64{mid, top + high + 4})
	}
	if b.second {
		first := d.travel.x(b.single)
		one(first)
		top := d.travel.x(b.top)
		s := rect{mid - half, top, mid + half, math.Max(first, top+3)}
		p.fill(paper, s)
		p.fill(good.tint(fillTint), s)
		p.hatch(black.tint(0.4), hatch{falling: true, gap: 5}, s)
		p.frame(black, outline, solid, s)
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
func (d *Station) ramAt(p *pen, mid, half, y float64) {
	head := rect{mid - half*0.7, y - toolHigh, mid + half*0.7, y}
	p.fill(paper, head)
	p.fill(black.tint(0.2), head)
	p.frame(black, outline, solid, head)
}

// rodTo draws the rod from the guide to the tool. It is a group of its own, for a
// script to stretch.
func (d *Station) rodTo(p *pen, mid, half, y float64) {
	rod := rect{mid - half*0.3, d.side.y0 + guideEdge, mid + half*0.3, y - toolHigh}
	p.fill(paper, rod)
	p.fill(black.tint(quietTint), rod)
	for _, x := range []float64{rod.x0, rod.x1} {
		p.line(black, outline, solid, [2]float64{x, rod.y0}, [2]float64{x, rod.y1})
	}
}
