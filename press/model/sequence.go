package model

import (
	"cmp"
	"math"
	"slices"

	"ramplan/press/sequence"
)

// study runs the sequence (run section 5); nil where there is none, or where the push
// end, or that of its probe, is not known.
func (w *work) study() *sequence.Cycle {
	s, z := w.p.Sequence, &w.zone
	if s == nil || z.e == nil || w.p.Probes() && w.probed == nil {
		return nil
	}
	in := sequence.Input{Station: w.runStation(), Steps: w.p.runSteps(), Stroke: [2]float64{math.Min(0, w.p.Station.Home), w.p.Ram.Stroke}}
	insert := w.withoutInsert()
	in.Nominal.Press = sequence.Rest{Position: math.Min(w.seated.nominal, *z.e), Arrives: w.seated.nominal <= *z.e+slack, Waits: true}
	in.Missing = sequence.Part{Press: sequence.Rest{Position: math.Inf(1)}}
	if !insert.Nowhere {
		met := insert.Reading <= *z.e+slack
		in.Missing.Press = sequence.Rest{Position: insert.Reading, Arrives: met, Waits: met}
	}
	in.Press = [3]float64{in.Nominal.Press.Position, in.Nominal.Press.Position, in.Nominal.Press.Position}
	if z.overlap {
		in.Press[sequence.Low], in.Press[sequence.High] = z.first, z.last
	}
	if w.probed != nil {
		in.Probe = w.probeRests()
		_, stalls := w.probed.nominal()
		in.Nominal.Probe = sequence.Rest{Position: in.Probe[sequence.Typical], Arrives: stalls && *w.r.Probe.StallNominal <= w.probed.end+slack, Waits: true}
		in.Missing.Probe, in.Missing.Refused = w.missingInProbe(), !w.missingPassesProbe()
	}
	if h := s.Hold; h != nil {
		in.Hold = &sequence.HoldCase{Step: int(h.Step), Pass: int(h.Pass), At: h.At, Time: h.Time}
	}
	return sequence.Study(in)
}

// runStation is where and how the ram pushes.
func (w *work) runStation() sequence.Station {
	m, z, s := &w.p.Motion, &w.zone, w.p.Sequence
	out := sequence.Station{
		Home: w.p.Station.Home, FromTarget: s.RelativeFrom == FromTarget,
		ApproachSpeed: m.ApproachSpeed, Accel: m.Accel, Decel: m.Decel, A: z.a, SlowSpeed: m.SlowSpeed,
		E: *z.e, Settle: m.SettleTime, Confirm: m.ConfirmTime, Hold: m.HoldTime, StationZone: s.StationZone,
	}
	if z.z1 != nil && z.z2 != nil {
		out.Zone = &[2]float64{*z.z1, *z.z2}
	}
	if w.probed != nil {
		out.ProbeEnd, out.ProbeConfirm, out.ProbeZone = w.probed.end, w.p.Probe.ConfirmTime, w.p.Probe.ZoneLive
	}
	return out
}

// runSteps are the steps of the plan, with what stands in where nothing was given.
func (p *Input) runSteps() []sequence.Step {
	or := func(given *float64, standIn float64) float64 {
		if given != nil {
			return *given
		}
		return standIn
	}
	out := make([]sequence.Step, len(p.Sequence.Steps))
	for i, s := range p.Sequence.Steps {
		out[i] = sequence.Step{
			Kind: sequence.Kind(s.Kind), To: s.To, By: s.By, Times: int(s.Times), Pause: s.Pause,
			Speed: or(s.Speed, p.Motion.ApproachSpeed), Accel: or(s.Accel, p.Motion.Accel), Decel: or(s.Decel, p.Motion.Decel),
			HandOver: s.HandOver, Cancel: s.OnHold == Cancel, Zone: s.Zone, Time: s.Time,
		}
	}
	return out
}

// probeRests are the places at which the probe leaves the ram: the tightest part under a
// weak ram, the nominal one, the loosest under a strong one; its end for one that does
// not stall.
func (w *work) probeRests() [3]float64 {
	q := w.probed
	out := [3]float64{q.end, q.end, q.end}
	if r, stalls := w.rest(0, q.force.low(), w.joint.push[high]); stalls {
		out[sequence.Low] = q.rest(r)
	}
	if r, stalls := q.nominal(); stalls {
		out[sequence.Typical] = q.rest(r)
	}
	if q.stalls {
		out[sequence.High] = q.rest(q.stall)
	}
	return out
}

// cycleOfSteps takes the stages of the cycle from its steps.
func (w *work) cycleOfSteps() Cycle {
	n, m, set := w.ran.Nominal, w.ran.Missing, &w.p.Motion
	c := Cycle{Settle: set.SettleTime, Confirm: set.ConfirmTime, Hold: set.HoldTime, Handling: set.HandlingTime, MissingMet: true}
	c.Approach, c.PeakSpeed = n.Times.Before, n.Peak
	c.Probe = n.Times.ProbePush + n.Times.ProbeStay
	c.Press, c.Retract = n.Times.Push, n.Times.After
	push := n.Passes[slices.IndexFunc(n.Passes, func(p sequence.Pass) bool { return p.Kind == sequence.Press })]
	from := math.Max(push.Start, w.zone.a)
	c.WatchTime = ptr(c.Approach + c.Probe + w.p.slow(*w.zone.e-from) + c.Settle + c.Confirm)

	total := m.Times.Before + m.Times.ProbePush + m.Times.ProbeStay
	watched := 0.0 // how much longer the ram stays where nothing was met
	if w.probed != nil && !w.missingPassesProbe() {
		if !w.missingInProbe().Waits {
			watched, c.MissingMet = c.Settle, false
		}
	} else {
		wait := 0.0
		if insert := w.withoutInsert(); !insert.Nowhere && insert.Reading <= *w.zone.e+slack {
			wait = c.Settle + c.Hold
		} else {
			watched, c.MissingMet = c.Settle, false
		}
		total = total + m.Times.Push + c.Confirm + wait
	}
	c.MissingTotal = ptr(total + m.Times.After + c.Handling)
	c.MissingWatched = ptr(total + watched + m.Times.After + c.Handling)
	return c
}

// sequence fills in the run step by step (run sections 5, 6 and 8).
func (w *work) sequence() {
	if w.ran == nil {
		return
	}
	out := &SequenceRun{
		Nominal: w.runTrace(w.ran.Nominal), Missing: w.runTrace(w.ran.Missing), Elsewhere: w.elsewhere(),
		Drift: w.ran.Drift, Closes: true, CyclesInStroke: w.ran.Cycles,
	}
	for i, p := range w.ran.Nominal.Passes {
		s := StepRun{
			Step: p.Step, Pass: p.Pass, Kind: string(p.Kind), Begins: p.Begins, Duration: p.Duration,
			PeakSpeed: p.Peak, StartSpeed: p.StartSpeed, EndSpeed: p.EndSpeed,
		}
		for k, legs := range w.ran.Places {
			s.Start[k], s.End[k] = legs[i].Start, legs[i].End
		}
		if p.Kind != sequence.Wait {
			s.Target = ptr(p.Target)
		}
		out.Steps = append(out.Steps, s)
	}
	for _, d := range out.Drift {
		out.Closes = out.Closes && math.Abs(d) <= slack
	}
	if h := w.ran.Held; h != nil {
		out.Hold = &HoldTrace{
			Step: int(w.p.Sequence.Hold.Step), Pass: int(w.p.Sequence.Hold.Pass), Speed: h.Speed, StoppingDistance: h.Stop.Way,
			Rest: h.Rest, Resumes: h.Resumes, Cancelled: h.Cancelled, RunTrace: w.runTrace(h.Run),
		}
	}
	w.r.Sequence = out
}

// trace is a run as the result tells it.
func (w *work) runTrace(r *sequence.Run) RunTrace {
	t := RunTrace{Total: r.Total, End: r.End, Timeline: []Instant{}}
	for _, row := range r.Timeline() {
		t.Timeline = append(t.Timeline, Instant{row.Time, row.Position, row.Speed, row.Accel, row.Step})
	}
	zone := w.p.Sequence.StationZone
	t.Signals = RunSignals{Arrival: changes(r.Stretches(sequence.Arrival, zone)), StepZone: changes(r.Stretches(sequence.StepZone, zone))}
	if zone != nil {
		t.Signals.StationZone = ptr(changes(r.Stretches(sequence.StationZone, zone)))
	}
	return t
}

func changes(all []sequence.Stretch) Changes {
	c := Changes{Changes: []float64{}}
	for i, s := range all {
		if i == 0 {
			c.First = s.On
		} else {
			c.Changes = append(c.Changes, s.From)
		}
	}
	return c
}

// lit are the stretches, found once, in which a zone signal is on in the nominal run.
func (w *work) lit(signal sequence.Signal) []Lit {
	if kept, known := w.lamps[signal]; known {
		return kept
	}
	out := []Lit{}
	zone := w.p.Sequence.StationZone
	if signal == sequence.StationZone && zone == nil {
		return out
	}
	for _, s := range w.ran.Nominal.Stretches(signal, zone) {
		if s.On {
			out = append(out, Lit{string(signal), s.Step, s.Pass, s.From, s.To})
		}
	}
	if w.lamps == nil {
		w.lamps = map[sequence.Signal][]Lit{}
	}
	w.lamps[signal] = out
	return out
}

// elsewhere are those that begin in another step than the press, by time.
func (w *work) elsewhere() []Lit {
	out := []Lit{}
	for _, l := range slices.Concat(w.lit(sequence.StepZone), w.lit(sequence.StationZone)) {
		if w.p.Sequence.Steps[l.Step].Kind != StepPress {
			out = append(out, l)
		}
	}
	sortLit(out)
	return out
}

func sortLit(all []Lit) {
	slices.SortStableFunc(all, func(a, b Lit) int { return cmp.Compare(a.From, b.From) })
}
