package model

import "math"

// slips are by how much the positions of the window lie off where they would tell the
// parts apart, mm; 0 where a position is right as it stands.
type slips struct{ approachEnd, pushEnd, zoneStart, zoneEnd float64 }

// slips measures them: zone start and push end between the limits of the drawing and the
// readings that are good for certain, the zone to beyond the push end, and the approach
// ending before all of it. They are 0 where the window is not known to its end.
func (w *work) slips() slips {
	z := &w.zone
	if !z.known {
		return slips{}
	}
	var s slips
	good, sure, end := w.r.Window.GoodRange, w.sure(), *z.e
	if *z.z1 > sure.Low+slack || *z.z1 < good[0]-slack {
		s.zoneStart = math.Abs(*z.z1 - sure.Low)
	}
	if end < sure.High-slack || end > good[1]+slack {
		s.pushEnd, end = math.Abs(end-sure.High), sure.High
	}
	if *z.z2 < end-slack {
		s.zoneEnd = end - *z.z2
	}
	if z.a > sure.Low+slack {
		s.approachEnd = z.a - sure.Low
	}
	return s
}

// slipPath is the entry by hand that lies furthest off where it should; empty where
// none does.
func (w *work) slipPath() string {
	win, s := &w.p.Window, w.slips()
	path, most := "", 0.0
	look := func(value *float64, name string, off float64) {
		if value != nil && off > most {
			path, most = name, off
		}
	}
	look(win.ZoneStart, "window.zone_start", s.zoneStart)
	look(win.ZoneEnd, "window.zone_end", s.zoneEnd)
	look(win.ApproachEnd, "window.approach_end", s.approachEnd)
	if win.PushStroke != nil {
		look(win.PushStroke, w.endPath(), s.pushEnd)
	}
	return path
}

// endPath is what moved the push end, which is the approach end and the push stroke
// together: of two that are set by hand the one further off its own proposal.
func (w *work) endPath() string {
	win := &w.p.Window
	if win.ApproachEnd == nil {
		return "window.push_stroke"
	}
	proposed := w.p.proposedApproachEnd(&w.parts)
	moved := math.Abs(*win.ApproachEnd - proposed)
	if stroke := math.Abs(*win.PushStroke - (w.sure().High - proposed)); moved > stroke+slack {
		return "window.approach_end"
	}
	return "window.push_stroke"
}

// zonePath is the field that moves the overlap: of what was set by hand that which lies
// furthest off, or any where none does; else what it was proposed from.
func (w *work) zonePath() string {
	if path := w.slipPath(); path != "" {
		return path
	}
	win := &w.p.Window
	for _, hand := range []struct {
		value *float64
		path  string
	}{
		{win.PushStroke, "window.push_stroke"},
		{win.ZoneStart, "window.zone_start"},
		{win.ZoneEnd, "window.zone_end"},
		{win.ApproachEnd, "window.approach_end"},
	} {
		if hand.value != nil {
			return hand.path
		}
	}
	if w.seated.stalled {
		return "window.setting"
	}
	return "requirement.height_low"
}

// edgePath is the hand-set field behind the edge of the overlap on the side of tall
// or short parts.
func (w *work) edgePath(tall bool) string {
	if path := w.edgeByHand(tall); path != "" {
		return path
	}
	return w.zonePath()
}

// edgeByHand is the same, and empty where that edge was proposed.
func (w *work) edgeByHand(tall bool) string {
	z, win := &w.zone, &w.p.Window
	switch {
	case tall && win.ZoneStart != nil && *z.z1 >= z.a:
		return "window.zone_start"
	case tall && win.ApproachEnd != nil && z.a > *z.z1:
		return "window.approach_end"
	case !tall && win.ZoneEnd != nil && *z.z2 <= *z.e:
		return "window.zone_end"
	case !tall && win.PushStroke != nil:
		return w.endPath()
	}
	return ""
}

// tighter tells whether the overlap ends further inside the drawing on the side of tall
// parts than on that of short ones.
func (w *work) tighter() (tall bool) {
	good := w.r.Window.GoodRange
	return w.zone.first-good[0] > good[1]-w.zone.last
}
