package model

import (
	"math"

	"ramplan/press/probe"
	"ramplan/press/sequence"
	"ramplan/press/stack"
	"ramplan/press/verdict"
)

// A probeVisit is what comes to the probe in one row of the catalogue.
type probeVisit struct {
	nowhere bool    // there is nothing to meet
	contact float64 // mm, where it is met
	reading float64 // mm, where the ram rests on it
	joint   probe.Joint
	grip    float64 // N/mm
}

// probeRows fills in what every row of the catalogue does in the probe, and what both
// looks together say of it (run section 4).
func (w *work) probeRows() {
	if w.probed == nil {
		return
	}
	var errors *probe.Spread
	if w.withRisk {
		errors = probe.NewSpread(stack.NewSum(w.probed.errors()))
	}
	for i := range w.r.Faults {
		row := &w.r.Faults[i]
		row.Probe = w.probeRow(row, w.probeVisit(i), row.Case().Stuck, errors)
	}
}

// probeVisit is how the part of a row stands before the probe: of its own demand, moved
// by what the row says.
func (w *work) probeVisit(i int) probeVisit {
	q, t := w.probed, w.parts.travel
	typical := w.joint.push[mid]
	j := w.probeJoint()
	j.Travel = t
	v := probeVisit{contact: w.parts.xContact, joint: j, grip: (w.p.Joint.FrictionLow + w.p.Joint.FrictionHigh) / 2 * w.gripPerMicron() * w.r.Joint.Effective[mid]}
	name := w.r.Faults[i].Name
	if w.r.Faults[i].Own {
		name = ""
	}
	demand, taller := typical, 0.0
	switch name {
	case RowMissing, RowArrivalStuckOn:
		v.nowhere = !w.parts.inserted
		return w.restingInProbe(v, w.p.Station.Nest-w.parts.without)
	case RowAlreadyPressed:
		return w.restingInProbe(v, w.parts.xSeat)
	case RowTwoInserts:
		taller = w.parts.inserts
	case RowTight:
		demand = w.tightPush()
		v.joint.Counter = 0
		v.grip = 0
		if w.joint.engaged > 0 {
			v.grip = demand.rise / w.joint.engaged
		}
	case RowLoose:
		demand = push{drag: w.p.Joint.Drag, counter: w.p.Joint.Counterforce, travel: t}
		v.grip = 0
	case RowNominal, RowGap, RowSettingLow, RowSettingHigh, RowArrivalStuckOff, RowZoneStuckOff:
	default: // it stands taller or lower as a whole
		taller = w.seated.nominal - w.visits[i].reading
	}
	v.contact -= taller
	v.reading, _ = w.rest(taller, q.force.typical, demand)
	return v
}

// restingInProbe is what rests where it is met.
func (w *work) restingInProbe(v probeVisit, at float64) probeVisit {
	v.contact, v.reading = at, at+w.probed.deflection
	v.joint.Travel, v.grip = 0, 0
	return v
}

// probeRow tells what the probe shows of a row, and what both looks say.
func (w *work) probeRow(row *FaultRow, v probeVisit, s Stuck, errors *probe.Spread) *ProbeRow {
	q, z, c := w.probed, w.zone.at, &w.r.Cycle
	if row.Arrival == nil || !v.nowhere && (z.Early(v.reading) || z.Early(v.contact) && row.Name == RowTwoInserts && !row.Own) {
		return &ProbeRow{Verdict: EarlyContact}
	}
	out := &ProbeRow{Verdict: RefusedByProbe}
	met := !v.nowhere && v.reading <= q.end+slack
	rest := q.end
	if met {
		rest, out.Reading = math.Min(v.reading, q.end), ptr(v.reading)
	}
	live := w.p.Probe.ZoneLive
	arrival, zone := met, live && z.InZone(rest)
	passed := met && q.passes(v.reading)
	if s.Any() {
		if s.Arrival != nil {
			arrival = *s.Arrival
		}
		if s.Zone != nil {
			zone = live && *s.Zone
		}
		passed = arrival && !zone
	}
	out.Arrival, out.Zone, out.Passed = &arrival, &zone, &passed
	out.Time = ptr(c.Approach + w.p.slow(rest-w.pushFrom) + c.Settle + w.p.Probe.ConfirmTime)
	if passed {
		out.Verdict, out.Time = row.Verdict, nil
		if row.Time != nil {
			out.Time = ptr(*row.Time + c.Settle + w.p.Probe.ConfirmTime)
		}
	}
	out.Detection = 1
	switch {
	case s.Any():
		if passed {
			out.Detection = row.Detection
		}
	case errors == nil: // the chances are left out
		out.Detection = 0
	case row.Good:
		out.Detection = w.chanceToPass(v, errors) * row.Detection
	default:
		out.Detection = 1 - w.chanceToPass(v, errors)*(1-row.Detection)
	}
	return out
}

// chanceToPass is the probability that the probe lets a part go on that is met at a
// place without error.
func (w *work) chanceToPass(v probeVisit, errors *probe.Spread) float64 {
	if v.nowhere {
		return 0
	}
	r := probe.Refusal{Push: w.probed.push(w.probed.limit - v.contact), Joint: v.joint, Contact: errors}
	return 1 - r.Of(v.grip)
}

// missingInProbe is where the probe comes to rest without an insert.
func (w *work) missingInProbe() sequence.Rest {
	insert, q := w.withoutInsert(), w.probed
	if insert.Nowhere {
		return sequence.Rest{Position: math.Inf(1)}
	}
	reading := w.p.Station.Nest - w.parts.without + q.deflection
	met := reading <= q.end+verdict.Slack
	return sequence.Rest{Position: reading, Arrives: met, Waits: met}
}

// missingPassesProbe tells whether the probe lets a missing insert go on.
func (w *work) missingPassesProbe() bool {
	rest := w.missingInProbe()
	return rest.Arrives && w.probed.passes(rest.Position)
}
