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

// cycle times one cycle, with the part and without (model section 10, run sections 3
// and 5).
func (w *work) cycle() Cycle {
	w.pushFrom = w.zone.a
	if w.ran = w.study(); w.ran != nil {
		w.pushFrom = w.ran.Nominal.PushStart
	}
	var c Cycle
	switch {
	case w.ran != nil:
		c = w.cycleOfSteps()
	case w.probed != nil:
		c = w.probedCycle()
	default:
		c = w.plainCycle()
	}
	c.Total = c.Approach + c.Probe + c.Press + c.Settle + c.Confirm + c.Hold + c.Retract + c.Handling
	if w.probed != nil {
		w.r.Probe.WatchTime = ptr(c.Approach + w.p.slow(w.probed.end-w.pushFrom) + c.Settle + w.p.Probe.ConfirmTime)
	}
	return c
}

// plainCycle approaches, pushes and retracts home.
func (w *work) plainCycle() Cycle {
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

// probedCycle approaches, pushes twice and retracts home.
func (w *work) probedCycle() Cycle {
	p, m, z := w.p, &w.p.Motion, &w.zone
	approach := p.approach().Move(z.a - p.Station.Home)
	c := Cycle{Approach: approach.Time, PeakSpeed: approach.Peak, Settle: m.SettleTime, Confirm: m.ConfirmTime, Hold: m.HoldTime, Handling: m.HandlingTime}
	end := math.Min(w.seated.nominal, *z.e)
	reading, _ := w.probed.nominal()
	from, added := w.probed.rest(reading), *w.r.Probe.AddedTime
	c.Probe = p.slow(from-z.a) + added
	c.Press = p.slow(end - from)
	c.Retract = p.retract().Move(end - p.Station.Home).Time
	c.WatchTime = ptr(c.Approach + p.slow(*z.e-z.a) + c.Settle + c.Confirm + added)
	c.MissingTotal, c.MissingMet = w.missingProbed(&c, 0)
	c.MissingWatched, _ = w.missingProbed(&c, c.Settle)
	return c
}

// missingProbed times the cycle without an insert where a probe comes first: the ram
// runs on to where something stops it and waits there for some s where nothing does. A
// probe that refuses it leaves the push out.
func (w *work) missingProbed(c *Cycle, wait float64) (total *float64, met bool) {
	p, e := w.p, *w.zone.e
	home := func(end float64) float64 { return p.retract().Move(end - p.Station.Home).Time }
	rest := w.missingInProbe()
	from := w.probed.rest(rest.Position)
	first := c.Approach + p.slow(from-w.zone.a) + p.Probe.ConfirmTime
	if rest.Waits {
		first += c.Settle
	}
	if !w.missingPassesProbe() {
		if rest.Waits {
			wait = 0
		}
		return ptr(first + wait + home(from) + c.Handling), rest.Waits
	}
	insert := w.withoutInsert()
	end := math.Min(math.Max(insert.Reading, from), e)
	if met = insert.Reading <= e+slack; met {
		wait = c.Settle + c.Hold
	}
	return ptr(first + p.slow(end-from) + c.Confirm + wait + home(end) + c.Handling), met
}

// heating is what the cycle at the plan's settings does to the motor.
func (w *work) heating(c *Cycle) Heating {
	rms, ok := motion.RMS(w.r.Force.Setting, c.Press+c.Settle+c.Confirm+c.Hold, c.Total)
	if !ok {
		return Heating{}
	}
	if w.probed != nil {
		probe, _ := motion.RMS(w.probed.setting, c.Probe, c.Total)
		rms = math.Hypot(rms, probe)
	}
	return Heating{RMSSetting: &rms}
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
