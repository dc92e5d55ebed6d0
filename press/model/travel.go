package model

import (
	"math"

	"ramplan/press/verdict"
)

// signals are the positions that make the two signals, and which are known.
type signals struct {
	a           float64  // approach end
	e, z1, z2   *float64 // nil: not known
	known       bool     // all of them are
	at          verdict.Signals
	overlap     bool
	first, last float64 // mm, the overlap
}

// travel proposes where the ram goes, or takes it from the hand (model section
// 7). Proposals are what will be typed in: whole multiples of the position step.
func (p *Input) travel(q *parts, s *reading, rule *edges) (signals, Travel) {
	win, step := &p.Window, p.Station.PositionStep
	z := signals{a: p.approachEnd(q)}
	if !q.pressable() {
		return z, Travel{}
	}
	z.z1, z.z2 = win.ZoneStart, win.ZoneEnd
	t := Travel{
		ApproachEnd: z.a,
		Contact:     q.xContact,
		SlowContact: q.xContact - z.a,
		PressIn:     q.travel,
		SeatReading: q.xSeat + s.deflection,
	}
	switch {
	case win.PushStroke != nil:
		t.PushStroke = win.PushStroke
		z.e = ptr(tidy(z.a + *win.PushStroke))
	case rule.high != nil:
		z.e = rule.high
		t.PushStroke = ptr(tidy(*z.e - z.a))
	}
	if z.z1 == nil {
		z.z1 = rule.low
	}
	if z.e != nil {
		t.PushEnd = z.e
		t.Overtravel = ptr(*z.e - t.SeatReading)
		if z.z2 == nil {
			z.z2 = ptr(roundUp(*z.e+p.EdgeMargin(), step))
		}
	}
	if z.known = z.e != nil && z.z1 != nil && z.z2 != nil; z.known {
		z.at = verdict.Signals{Start: z.a, End: *z.e, ZoneStart: *z.z1, ZoneEnd: *z.z2}
		z.first, z.last, z.overlap = z.at.Overlap()
	}
	return z, t
}

// tell puts zone and overlap into the window of readings.
func (z *signals) tell(win *Readings) {
	if z.z1 != nil || z.z2 != nil {
		win.Zone = &[2]*float64{z.z1, z.z2}
	}
	if z.overlap {
		win.Overlap = &Pair{z.first, z.last}
	}
}

// approachEnd is where the approach ends.
func (p *Input) approachEnd(q *parts) float64 {
	if hand := p.Window.ApproachEnd; hand != nil {
		return *hand
	}
	return p.proposedApproachEnd(q)
}

// proposedApproachEnd is where the approach ends unless it is set by hand.
func (p *Input) proposedApproachEnd(q *parts) float64 {
	return roundDown(q.earliest-p.Motion.Clearance, p.Station.PositionStep)
}

// EdgeMargin is how far the zone reaches past the push end, mm: so far that a ram which
// nothing stops rests well inside it.
func (p *Input) EdgeMargin() float64 {
	if p.Window.EdgeMargin != nil {
		return *p.Window.EdgeMargin
	}
	return math.Max(4*p.Ram.Repeatability, 2*p.Motion.SlowSpeed*p.Motion.ScanTime)
}
