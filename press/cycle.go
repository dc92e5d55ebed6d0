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

// cycle times one cycle, with the part and without (model section 10, run sections 3
// and 5).
func (w *work) cycle() {
	m := &w.p.Motion
	w.pushFrom = w.zone.a
	if w.ran = w.study(); w.ran != nil {
		w.pushFrom = w.ran.Nominal.PushStart
	}
	c := Cycle{Settle: m.SettleTime, Confirm: m.ConfirmTime, Hold: m.HoldTime, Handling: m.HandlingTime}
	if w.ran != nil {
		w.cycleOfSteps(&c)
	} else {
		w.plainCycle(&c)
	}
	c.Total = c.Approach + c.Probe + c.Press + c.Settle + c.Confirm + c.Hold + c.Retract + c.Handling
	w.r.Cycle = c
	if w.probed != nil {
		w.r.Probe.WatchTime = ptr(c.Approach + w.p.slow(w.probed.end-w.pushFrom) + c.Settle + w.p.Probe.ConfirmTime)
	}
	if rms, ok := motion.RMS(w.r.Force.Setting, c.Press+c.Settle+c.Confirm+c.Hold, c.Total); ok {
		if w.probed != nil {
			probe, _ := motion.RMS(w.probed.setting, c.Probe, c.Total)
			rms = math.Hypot(rms, probe)
		}
		w.r.Heating.RMSSetting = &rms
	}
}

// plainCycle goes to A, pushes, perhaps twice, and retracts home.
func (w *work) plainCycle(c *Cycle) {
	p, z := w.p, &w.zone
	approach := p.approach().Move(z.a - p.Station.Home)
	c.Approach, c.PeakSpeed = approach.Time, approach.Peak
	end, from := w.seated.nominal, z.a
	if z.e != nil {
		end = math.Min(end, *z.e)
	}
	added := 0.0
	if w.probed != nil {
		reading, _ := w.probed.nominal()
		from, added = w.probed.rest(reading), *w.r.Probe.AddedTime
		c.Probe = p.slow(from-z.a) + added
	}
	c.Press = p.slow(end - from)
	c.Retract = p.retract().Move(end - p.Station.Home).Time
	if z.e != nil {
		c.WatchTime = ptr(c.Approach + p.slow(*z.e-z.a) + c.Settle + c.Confirm + added)
		c.MissingTotal = ptr(w.missingTotal(*c, *z.e, 0))
		c.MissingWatched = ptr(w.missingTotal(*c, *z.e, c.Settle))
	}
}

// missingTotal times the cycle without an insert: the ram runs on to where
// something stops it, at the most to the push end, and waits there for some s when
// nothing was met. A probe that refuses it leaves the push out.
func (w *work) missingTotal(c Cycle, e, wait float64) float64 {
	p, a := w.p, w.zone.a
	home := func(end float64) float64 { return p.retract().Move(end - p.Station.Home).Time }
	from, first := a, 0.0
	if w.probed != nil {
		rest := w.missingInProbe()
		from, first = w.probed.rest(rest.Position), p.Probe.ConfirmTime
		if rest.Waits {
			first += c.Settle
		}
		if !w.missingPassesProbe() {
			if !rest.Waits {
				first += wait
			}
			return c.Approach + p.slow(from-a) + first + home(from) + c.Handling
		}
		first += p.slow(from - a)
	}
	insert := w.withoutInsert()
	end := e
	if !insert.Nowhere {
		end = math.Min(math.Max(insert.Reading, from), e)
		if insert.Reading <= e+slack {
			wait = c.Settle + c.Hold
		}
	}
	return c.Approach + first + p.slow(end-from) + c.Confirm + wait + home(end) + c.Handling
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
