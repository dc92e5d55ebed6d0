package press

import (
	"math"

	"ramplan/press/motion"
)

// approach is the fast move to A, which ends at slow speed.
func (p *Plan) approach() motion.Profile {
	m := &p.Motion
	return motion.Profile{Speed: m.ApproachSpeed, Accel: m.Accel, Decel: m.Decel, EndSpeed: m.SlowSpeed}
}

// retract is the way home, from rest to rest.
func (p *Plan) retract() motion.Profile {
	m := &p.Motion
	return motion.Profile{Speed: m.RetractSpeed, Accel: m.Accel, Decel: m.Decel}
}

// slow gives the time of a travel at slow speed; none where there is no way.
func (p *Plan) slow(distance float64) float64 {
	return math.Max(0, distance) / p.Motion.SlowSpeed
}

// cycle times one cycle, with the part and without (model section 10).
func (w *work) cycle() {
	p, m, z := w.p, &w.p.Motion, &w.zone
	approach := p.approach().Move(z.a - p.Station.Home)
	end := w.seated.nominal
	if z.e != nil {
		end = math.Min(end, *z.e)
	}
	c := Cycle{
		Approach:  approach.Time,
		Press:     p.slow(end - z.a),
		Settle:    m.SettleTime,
		Confirm:   m.ConfirmTime,
		Hold:      m.HoldTime,
		Retract:   p.retract().Move(end - p.Station.Home).Time,
		Handling:  m.HandlingTime,
		PeakSpeed: approach.Peak,
	}
	c.Total = c.Approach + c.Press + c.Settle + c.Confirm + c.Hold + c.Retract + c.Handling
	if z.e != nil {
		c.WatchTime = ptr(c.Approach + p.slow(*z.e-z.a) + c.Settle + c.Confirm)
		c.MissingTotal = ptr(w.missingTotal(c, *z.e, 0))
		c.MissingWatched = ptr(w.missingTotal(c, *z.e, c.Settle))
	}
	w.r.Cycle = c
	if rms, ok := motion.RMS(w.r.Force.Setting, c.Press+c.Settle+c.Confirm+c.Hold, c.Total); ok {
		w.r.Heating.RMSSetting = &rms
	}
}

// missingTotal times the cycle without an insert: the ram runs on to where
// something stops it, at the most to the push end, and waits there for some s when
// nothing was met.
func (w *work) missingTotal(c Cycle, e, wait float64) float64 {
	p, a := w.p, w.zone.a
	insert := w.withoutInsert()
	end := e
	if !insert.Nowhere {
		end = math.Min(math.Max(insert.Reading, a), e)
		if insert.Reading <= e+slack {
			wait = c.Settle + c.Hold
		}
	}
	return c.Approach + p.slow(end-a) + c.Confirm + wait + p.retract().Move(end-p.Station.Home).Time + c.Handling
}

// impact computes what the moving mass adds.
func (w *work) impact() {
	st, m, mass := &w.p.Station, &w.p.Motion, w.p.Ram.InertiaMass
	seat := motion.Seat{Speed: m.SlowSpeed, Stiffness: st.Stiffness, Mass: mass}
	typical, strong := seat, seat
	typical.Force = w.r.Force.Typical
	strong.Force, strong.Demand = w.r.Force.High, w.joint.push[low].seat()
	w.r.Impact = Impact{
		Contact:      motion.ImpactForce(m.SlowSpeed, st.Stiffness, mass),
		Early:        motion.ImpactForce(m.ApproachSpeed, st.Stiffness, mass),
		SeatExpected: typical.Expected(),
		SeatBound:    strong.Bound(),
		SeatStrong:   strong.Expected(),
	}
}
