package model

import (
	"math"
	"slices"
	"strconv"

	"ramplan/press/probe"
	"ramplan/press/sequence"
)

// probeWorks tells whether a probe is in use that no blocker speaks against.
func (w *work) probeWorks() bool { return w.probed != nil && w.probed.sound() }

// sound tells whether the probe can tell a loose part, and lets the nominal one go on.
func (q probing) sound() bool {
	reading, stalls := q.nominal()
	return q.setting < q.w.r.Force.Setting-slack && q.travelsOn() && q.end > q.w.zone.a+slack &&
		q.limit <= q.latest+slack && stalls && q.passes(reading)
}

// missingRefused tells whether a probe that works refuses a missing insert.
func (w *work) missingRefused() bool {
	row := w.missingRow()
	return w.probeWorks() && row != nil && row.Passed != nil && !*row.Passed
}

// missingRow is what the probe does with a missing insert; nil where the catalogue has no
// such row.
func (w *work) missingRow() *ProbeRow {
	i := slices.IndexFunc(w.r.Faults, func(f FaultRow) bool { return f.Name == RowMissing && !f.Own })
	if i < 0 {
		return nil
	}
	return w.r.Faults[i].Probe
}

// probeNotes tell what a probe that works catches.
func (w *work) probeNotes() {
	f := ProbedFigures{Chance: w.p.Faults.SampleProbability}
	if c := w.r.Probe.CaughtBelow; c != nil {
		f.Holding = &c.Holding
	}
	w.say(LooseFitProbed, "probe.setting", f)
	if w.r.MissingPasses() && w.missingRefused() && w.p.Station.PresenceCheck == "" {
		w.say(PresenceByProbe, "probe.use", PresenceFigures{w.withoutInsert().Reading, w.missingRow().Detection})
	}
}

// StepPath is the path of an entry of a step, or of the step itself without a key.
func StepPath(i int, key string) string {
	path := "sequence.steps[" + strconv.Itoa(i) + "]"
	if key != "" {
		path += "." + key
	}
	return path
}

// blockProbe speaks of a probe that cannot tell, or refuses what it should let go on.
func (w *work) blockProbe() {
	if !w.p.Probes() {
		return
	}
	switch q := w.probed; {
	case w.p.Joint.Kind != Interference:
		w.say(ProbeNoFit, "joint.kind", nil)
	case q == nil:
		w.say(ProbeNotPossible, "probe.setting", nil)
	default:
		w.blockProbing(q)
	}
}

func (w *work) blockProbing(q *probing) {
	if c := w.r.Force.Setting; q.setting >= c-slack {
		w.say(ProbeCannotTell, "probe.setting", CannotTellFigures{Why: ProbeTooStrong, Setting: q.setting, Press: c})
	}
	if !q.travelsOn() {
		w.say(ProbeCannotTell, "probe.setting", CannotTellFigures{Why: ProbeTooWeak, Setting: q.setting, Low: q.force.low()})
	}
	if q.end <= w.zone.a+slack {
		w.say(ProbeCannotTell, "probe.end", CannotTellFigures{Why: ProbeEndsEarly, End: q.end, ApproachEnd: w.zone.a})
	}
	if q.limit > q.latest+slack {
		w.say(ProbeCannotTell, "probe.end", CannotTellFigures{Why: ProbeEndsTooLate, Limit: q.limit, Latest: q.latest})
	}
	reading, stalls := q.nominal()
	f := RefusesNominalFigures{Setting: q.setting, End: q.end}
	if stalls {
		f.Reading = &reading
	}
	if !stalls || !q.passes(reading) {
		w.say(ProbeRefusesNominal, "probe.setting", f)
	}
}

func (w *work) cautionProbe() {
	q, r := w.probed, &w.r.Probe
	if q == nil {
		return
	}
	if ppm, limit := r.FalseRefusalPPM, w.p.Targets.FalseRejectPPM; ppm != nil && *ppm > limit {
		w.say(ProbeRefusesSound, "probe.setting", PPMFigures{*ppm, limit})
	}
	if !q.stalls {
		return
	}
	room := q.end - q.stall
	over := probe.Overrun(w.p.Motion.SlowSpeed, w.p.Ram.InertiaMass, q.slope)
	if over > room/10 {
		w.say(ProbeOverrun, "motion.slow_speed", OverrunFigures{over, math.Max(0, room), math.Max(0, q.room()), w.p.Motion.SlowSpeed})
	}
}

// offSteps speaks of what was set by hand for probe and sequence and cannot be typed in.
func (w *work) offSteps() {
	step := w.p.Station.PositionStep
	look := func(path string, x float64) {
		if offStep(x, step) {
			w.say(PositionOffStep, path, OffStepFigures{x, step})
		}
	}
	pair := func(path string, zone *[2]float64) {
		if zone != nil {
			look(path, zone[0])
			look(path, zone[1])
		}
	}
	if w.p.Probe != nil && w.p.Probe.End != nil {
		look("probe.end", *w.p.Probe.End)
	}
	if w.p.Sequence == nil {
		return
	}
	pair("sequence.station_zone", w.p.Sequence.StationZone)
	for i, s := range w.p.Sequence.Steps {
		switch s.Kind {
		case StepMove:
			look(StepPath(i, "to"), s.To)
		case StepShift:
			look(StepPath(i, "by"), s.By)
		}
		pair(StepPath(i, "zone"), s.Zone)
	}
}

// stepsBeyondStroke speaks of steps that begin or end where the ram cannot be, in
// whatever run.
func (w *work) stepsBeyondStroke() {
	if w.ran == nil {
		return
	}
	stroke := [2]float64{math.Min(0, w.p.Station.Home), w.p.Ram.Stroke}
	beyond := map[int]BeyondFigures{}
	look := func(legs ...sequence.Leg) {
		for _, l := range legs {
			if _, known := beyond[l.Step]; known || !sequence.Outside(l, stroke) {
				continue
			}
			f := BeyondFigures{math.Max(l.Start, l.End), stroke[1], BeyondStep}
			if f.Position <= stroke[1]+slack {
				f.Position, f.Limit = math.Min(l.Start, l.End), stroke[0]
			}
			beyond[l.Step] = f
		}
	}
	for k := range w.ran.Places {
		look(w.ran.Places[k]...)
		look(w.ran.Again[k]...)
	}
	for _, r := range w.otherRuns() {
		for _, p := range r.Passes {
			look(p.Leg)
		}
	}
	for i := range w.p.Sequence.Steps {
		if f, found := beyond[i]; found {
			w.say(BeyondStroke, StepPath(i, ""), f)
		}
	}
}

// otherRuns are the runs beside the nominal one: without the insert, and with the hold.
func (w *work) otherRuns() []*sequence.Run {
	out := []*sequence.Run{w.ran.Missing}
	if w.ran.Held != nil {
		out = append(out, w.ran.Held.Run)
	}
	return out
}

// stepsOverRam speaks of speeds and accelerations of a step that the ram cannot do.
func (w *work) stepsOverRam() {
	if w.p.Sequence == nil {
		return
	}
	r := &w.p.Ram
	for i, s := range w.p.Sequence.Steps {
		for _, c := range []struct {
			key   string
			value *float64
			limit float64
		}{{"speed", s.Speed, r.MaxSpeed}, {"accel", s.Accel, r.MaxAccel}, {"decel", s.Decel, r.MaxAccel}} {
			if c.value != nil && *c.value > c.limit {
				w.say(SpeedOverRam, StepPath(i, c.key), LimitFigures{*c.value, c.limit})
			}
		}
	}
}

// blockSteps speaks of moves that meet the part, and of hand-overs that cannot be.
func (w *work) blockSteps() {
	if w.ran == nil {
		return
	}
	doubt := w.p.positionDoubt()
	seat := w.parts.xSeat - w.r.Stack.Seat.Worst
	press := slices.IndexFunc(w.p.Sequence.Steps, func(s Step) bool { return s.Kind == StepPress })
	met := map[int]MetFigures{}
	look := func(l sequence.Leg) {
		first := w.parts.earliest
		if l.Step > press {
			first = seat
		}
		if _, known := met[l.Step]; !known && w.p.Sequence.Steps[l.Step].goes() && l.End > l.Start+slack && l.End > first-doubt+slack {
			met[l.Step] = MetFigures{l.End, first, doubt}
		}
	}
	for _, legs := range w.ran.Places {
		for _, l := range legs {
			look(l)
		}
	}
	if h := w.ran.Held; h != nil {
		for _, p := range h.Passes {
			look(p.Leg)
		}
	}
	for i := range w.p.Sequence.Steps {
		if f, found := met[i]; found {
			w.say(PartMetInMove, StepPath(i, ""), f)
		}
	}
	for _, h := range w.ran.Nominal.HandOvers {
		if !h.Possible {
			w.say(HandOverImpossible, StepPath(h.Step, "hand_over"), nil)
		}
	}
}

func (w *work) cautionSteps() {
	s := w.p.Sequence
	if s == nil {
		return
	}
	if w.ran != nil {
		w.cautionRun()
		w.cautionLamps()
	}
	w.zonesAlike()
	if h := s.Hold; h != nil {
		switch step := s.Steps[int(h.Step)]; {
		case !step.goes():
			w.say(HoldInPress, "sequence.hold.step", HoldFigures{Step: int(h.Step)})
		case w.ran != nil && w.ran.Held == nil:
			w.say(HoldNotMet, "sequence.hold.at", HoldFigures{int(h.Step), h.At})
		}
	}
}

// cautionRun speaks of how the run fits together and ends.
func (w *work) cautionRun() {
	for _, h := range w.ran.Nominal.HandOvers {
		if h.Braked {
			w.say(HandOverSlowed, StepPath(h.Step, "hand_over"), SlowedFigures{h.Speed, h.Set})
		}
	}
	places := &w.ran.Places
	if w.p.Sequence.RelativeFrom == FromActual {
		for i, l := range places[sequence.Typical] {
			if l.Pass > 1 || w.p.Sequence.Steps[l.Step].Kind != StepShift {
				continue
			}
			first := min(places[0][i].Start, places[1][i].Start, places[2][i].Start)
			last := max(places[0][i].Start, places[1][i].Start, places[2][i].Start)
			if last-first > slack {
				w.say(RelativeAfterPress, StepPath(l.Step, "by"), SpreadFigures{last - first})
			}
		}
	}
	end := len(w.p.Sequence.Steps) - 1
	off, ends := 0.0, w.ran.Missing.End
	for _, d := range w.ran.Drift {
		if math.Abs(d) > math.Abs(off) {
			off = d
		}
		ends = math.Max(ends, w.p.Station.Home+d)
	}
	if math.Abs(off) > slack {
		w.say(SequenceNotClosed, StepPath(end, ""), OffFigures{off})
	}
	if ends >= w.zone.a-slack {
		w.say(NotRetracted, StepPath(end, ""), EndFigures{ends, w.zone.a})
	}
}

// cautionLamps speaks of signals that come on where nobody means them.
func (w *work) cautionLamps() {
	n := w.ran.Nominal
	from := n.Times.Before + n.Times.ProbePush + n.Times.ProbeStay // of the push, which the probe comes before
	to := from + n.Times.Push + n.Times.Stay
	for _, signal := range []sequence.Signal{sequence.StepZone, sequence.StationZone} {
		lit := w.lit(signal)
		inPush := signal == sequence.StepZone || slices.ContainsFunc(lit, func(l Lit) bool { return l.From < to && l.To > from })
		var f SecondLampFigures
		path := ""
		for _, l := range lit {
			if w.p.Sequence.Steps[l.Step].Kind == StepPress {
				continue
			}
			if path == "" {
				path = w.lampPath(signal, l.Step)
				f.Step, f.From = l.Step, l.From
			}
			f.Times++
		}
		if path != "" && inPush {
			w.say(LampSecondMeaning, path, f)
		}
	}
	for _, signal := range []sequence.Signal{sequence.StepZone, sequence.StationZone} {
		told := map[int]bool{}
		for _, l := range w.lit(signal) {
			if on, limit := l.To-l.From, 2*w.p.Motion.ScanTime; on < limit-slack && !told[l.Step] {
				told[l.Step] = true
				w.say(ZonePassedFast, w.lampPath(signal, l.Step), PassedFigures{l.Step, on, limit})
			}
		}
	}
}

// zonesAlike speaks of two zones that no reading tells apart.
func (w *work) zonesAlike() {
	s, z := w.p.Sequence.StationZone, &w.zone
	if s == nil || z.z1 == nil || z.z2 == nil {
		return
	}
	if apart, u := math.Max(math.Abs(s[0]-*z.z1), math.Abs(s[1]-*z.z2)), 2*w.seated.u; apart < u {
		w.say(ZonesAlike, "sequence.station_zone", AlikeFigures{apart, u})
	}
}

// lampPath leads to the zone that makes a signal come on in a step.
func (w *work) lampPath(signal sequence.Signal, step int) string {
	switch kind := w.p.Sequence.Steps[step].Kind; {
	case signal == sequence.StationZone:
		return "sequence.station_zone"
	case kind == StepProbe:
		return "probe.zone_live"
	case kind == StepPress:
		return "motion.slow_speed"
	case !w.p.Sequence.Steps[step].goes(): // a wait after a step with a zone
		return StepPath(step, "")
	}
	return StepPath(step, "zone")
}
