package model

import (
	"math"

	"ramplan/press/motion"
)

// approach is the fast move to A, which ends at slow speed.
func (p *Input) approach() motion.Profile {
	m := &p.Motion
	return motion.Profile{Speed: m.ApproachSpeed, Accel: m.Accel, Decel: m.Decel, EndSpeed: m.SlowSpeed}
}

// retract is the way home, from rest to rest.
func (p *Input) retract() motion.Profile {
	m := &p.Motion
	return motion.Profile{Speed: m.RetractSpeed, Accel: m.Accel, Decel: m.Decel}
}

// slow gives the time of a travel at slow speed; none where there is no way.
func (p *Input) slow(distance float64) float64 {
	return math.Max(0, distance) / p.Motion.SlowSpeed
}

// cycle times one cycle, with the part and without (model section 10).
func (w *work) cycle() Cycle {
	p, z := w.p, &w.zone
	part := w.nominalTimeline()
	c := Cycle{
		Approach:  part.of(PhaseApproach),
		Press:     part.of(PhaseSlow),
		Settle:    part.of(PhaseSettle),
		Confirm:   part.of(PhaseConfirm),
		Hold:      part.of(PhaseRead),
		Retract:   part.of(PhaseRetract),
		Handling:  p.Motion.HandlingTime,
		PeakSpeed: p.approach().Move(z.a - p.Station.Home).Peak,
	}
	c.Total = c.Approach + c.Press + c.Settle + c.Confirm + c.Hold + c.Retract + c.Handling
	if z.e != nil {
		c.WatchTime = ptr(c.Approach + p.slow(*z.e-z.a) + c.Settle + c.Confirm)
		missing := w.missingTimeline(*z.e)
		total := func(wait float64) *float64 {
			return ptr(missing.of(PhaseApproach) + missing.of(PhaseSlow) + missing.of(PhaseConfirm) + wait + missing.of(PhaseRetract) + c.Handling)
		}
		c.MissingMet = missing.met
		c.MissingWatched = total(missing.of(PhaseSettle) + missing.of(PhaseRead))
		if c.MissingTotal = c.MissingWatched; !missing.met {
			c.MissingTotal = total(0)
		}
	}
	return c
}

// heating is what a cycle at a setting does to the motor.
func (c *Cycle) heating(setting float64) Heating {
	if rms, ok := motion.RMS(setting, c.Press+c.Settle+c.Confirm+c.Hold, c.Total); ok {
		return Heating{RMSSetting: &rms}
	}
	return Heating{}
}

// impact computes what the moving mass adds to a push, against the low demand at the
// seat, and beside the greatest push.
func (in *Input) impact(f *Force, demand, greatest float64) Impact {
	st, m, mass := &in.Station, &in.Motion, in.Ram.InertiaMass
	seat := motion.Seat{Speed: m.SlowSpeed, Stiffness: st.Stiffness, Mass: mass}
	typical, strong := seat, seat
	typical.Force = f.Typical
	strong.Force, strong.Demand = f.High, demand
	return Impact{
		Contact:      motion.ImpactForce(m.SlowSpeed, st.Stiffness, mass),
		Early:        motion.ImpactForce(m.ApproachSpeed, st.Stiffness, mass),
		SeatExpected: typical.Expected(),
		SeatBound:    strong.Bound(),
		SeatStrong:   strong.Expected(),
		EarlyPush:    greatest,
	}
}
