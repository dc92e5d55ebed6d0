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
func (w *work) cycle() {
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
	w.r.Cycle = c
	if rms, ok := motion.RMS(w.r.Force.Setting, c.Press+c.Settle+c.Confirm+c.Hold, c.Total); ok {
		w.r.Heating.RMSSetting = &rms
	}
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
