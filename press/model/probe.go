package model

import (
	"math"

	"ramplan/press/fit"
	"ramplan/press/probe"
	"ramplan/press/stack"
)

// probe tells whether a first push at a low setting would let a loose part travel
// on to an end of its own while every sound part stops clear of it, the highest
// setting that does, and what the one in use does (run section 2).
func (w *work) probe() {
	in := w.p.Probes()
	w.r.Probe.InUse = in
	if w.p.Joint.Kind != Interference || w.zone.z1 == nil || w.zone.e == nil {
		return
	}
	if c, found := w.highestProbe(nil); found {
		w.r.Probe.Possible, w.r.Probe.HighestSetting = true, &c
	}
	if !in {
		return
	}
	setting, end := w.p.Probe.Setting, w.p.Probe.End
	if setting == nil {
		c, found := w.highestProbe(end)
		if !found {
			return
		}
		setting = &c
	}
	q := w.probeAt(*setting, end)
	w.probed = &q
	w.probeFigures()
}

// highestProbe finds the highest settable step that serves as a probe, with the
// proposed end or with one that is set by hand.
func (w *work) highestProbe(end *float64) (float64, bool) {
	all := w.p.Ram.steps()
	below := math.Min(all.last, math.Ceil((w.r.Force.Setting-slack)/all.size)-1)
	k, found := w.highest(all, all.first, below, end)
	return all.at(k), found
}

// highest finds the highest step from first to last that serves as a probe. The
// force rises with the setting: a stretch of steps is left out as a whole where
// its lowest one stalls too late for the latest end of all.
func (w *work) highest(all steps, first, last float64, end *float64) (float64, bool) {
	if first > last {
		return 0, false
	}
	lowest, top := w.probeAt(all.at(first), end), w.probeAt(all.at(last), end)
	latest := math.Min(*w.zone.z1-(w.seated.deflection-top.deflection), *w.zone.e)
	if end != nil {
		latest = *end
	}
	switch {
	case first == last:
		return first, lowest.serves()
	case top.force.low() <= w.p.Joint.Drag: // not even the strongest moves a loose part
		return 0, false
	case !lowest.stalls, lowest.stall > latest+slack:
		return 0, false
	}
	middle := math.Floor((first + last) / 2)
	if k, found := w.highest(all, middle+1, last, end); found {
		return k, true
	}
	return w.highest(all, first, middle, end)
}

// probing is a first push at a low setting. Positions in mm.
type probing struct {
	w          *work
	setting    float64 // %, c_p
	force      thrust  // N
	deflection float64 // δ_p
	latest     float64 // L_p, its latest end
	end        float64 // E_p, its end
	limit      float64 // Q: what rests at or before it passes
	stall      float64 // where the loosest sound part stalls a strong ram
	slope      float64 // N/mm, by which its demand rises there
	stalls     bool    // it does
	doubt      float64 // u_s, standard uncertainty of that stall
}

func (w *work) probeAt(setting float64, end *float64) probing {
	st, j := &w.p.Station, &w.joint
	q := probing{w: w, setting: setting, force: w.force.at(setting)}
	q.deflection = w.p.Station.under(q.force.typical)
	doubts := probe.Doubts{
		Repeatability: w.p.Ram.Repeatability, Scatter: w.force.now.scatter, ProbeScatter: q.force.scatter,
		Stiffness: st.Stiffness, StiffnessTau: st.StiffnessTolerance / 100, Between: w.seated.deflection - q.deflection,
	}
	q.latest = doubts.Latest(*w.zone.z1, w.p.Window.GuardFactor)
	q.end = roundDown(math.Min(q.latest, *w.zone.e), st.PositionStep)
	if end != nil {
		q.end = *end
	}
	q.limit = q.end
	if w.p.Probes() && w.p.Probe.ZoneLive {
		q.limit = math.Min(q.end, *w.zone.z1)
	}
	q.doubt = math.Sqrt(square(w.p.positionDoubt()/2) + square(q.deflection*st.StiffnessTolerance/100/2) + square(w.r.Stack.Contact.SD))

	loosest, high := j.push[low], q.force.high()
	if q.stalls = high <= loosest.seat(); !q.stalls {
		return q
	}
	depth := w.parts.travel
	if high < loosest.seat() {
		depth = loosest.depth(high)
	}
	q.stall = w.parts.xContact + depth + w.p.Station.under(high)
	if q.slope = loosest.slope(depth); high < loosest.drag { // the drag itself stops it where it is met
		q.slope = math.Inf(1)
	}
	return q
}

// slope is by how much the demand rises with the depth, past that depth, N/mm.
func (d push) slope(depth float64) float64 {
	var s float64
	if d.travel > 0 {
		s = d.counter / d.travel
	}
	if d.length > 0 && depth >= d.pilot-slack && depth < d.pilot+d.length-slack {
		s += d.rise / d.length
	}
	return s
}

// travelsOn tells whether a loose part moves at all as far as the limit.
func (q probing) travelsOn() bool {
	w := q.w
	against := w.p.Joint.Drag
	if t := w.parts.travel; t > 0 {
		depth := math.Min(math.Max(q.limit-w.parts.xContact-q.deflection, 0), t)
		against += w.p.Joint.Counterforce * depth / t
	}
	return q.force.low() > against
}

// room is how far the loosest sound part stalls before the end, less the uncertainty.
func (q probing) room() float64 {
	return q.end - q.stall - q.w.p.Window.GuardFactor*2*q.doubt
}

// serves tells whether a loose part travels on past the end, and the loosest sound
// part stalls clear of it.
func (q probing) serves() bool {
	return q.travelsOn() && q.end > q.w.zone.a+slack && q.stalls && q.room() >= -slack
}

// nominal is where the nominal part rests in the probe, and whether it stalls in its
// fit.
func (q probing) nominal() (reading float64, stalls bool) {
	return q.w.rest(0, q.force.typical, q.w.joint.push[mid])
}

// rest is a reading as the probe can come to it: its end at most, A at least, for the
// approach takes the ram there.
func (q probing) rest(reading float64) float64 {
	return math.Max(math.Min(reading, q.end), q.w.zone.a)
}

// passes tells whether the probe lets a part go on that rests at a reading.
func (q probing) passes(reading float64) bool {
	if q.limit == *q.w.zone.z1 {
		return reading < q.limit
	}
	return reading <= q.limit+slack
}

// probeFigures fills in what the probe in use does.
func (w *work) probeFigures() {
	q, r := w.probed, &w.r.Probe
	r.Setting, r.Low, r.Typical, r.High = &q.setting, ptr(q.force.low()), ptr(q.force.typical), ptr(q.force.high())
	r.End, r.LatestEnd, r.PassLimit = &q.end, &q.latest, &q.limit
	if reading, stalls := q.nominal(); stalls {
		r.StallNominal = &reading
	}
	if q.stalls {
		r.StallLoosest, r.Room = &q.stall, ptr(q.room())
	}
	r.AddedTime = ptr(w.p.Motion.SettleTime + w.p.Probe.ConfirmTime)
	if w.withRisk {
		w.probeChances()
	}
}

// probeJoint is what a part of this plan demands on its way in, whatever its grip.
func (w *work) probeJoint() probe.Joint {
	j := probe.Joint{Drag: w.p.Joint.Drag, Pilot: w.joint.pilot, Length: w.p.Joint.Engagement, Travel: math.Inf(1)}
	if t := w.parts.travel; t > 0 {
		j.Counter = w.p.Joint.Counterforce / t
	}
	return j
}

// push gives the push of the probe against a limit, for a part that is met at 0.
func (q probing) push(limit float64) probe.Push {
	st := &q.w.p.Station
	return probe.Push{Force: q.force.typical, Sigma: q.force.scatter / 2, NestForce: st.NestForce, Stiffness: st.Stiffness, Limit: limit}
}

// errors are what moves the place at which the probe meets a part of known height.
func (q probing) errors() []stack.Term {
	stiffness := math.Abs(q.deflection) * q.w.p.Station.StiffnessTolerance / 100 / 2
	return append(q.w.p.positionError(), stack.Term{Row: stack.Row{Half: stiffness, Shape: stack.Normal, Sigmas: 1}, Times: 1})
}

// gripPerMicron is the grip of 1 µm of effective interference at a friction of 1, N/mm.
func (w *work) gripPerMicron() float64 {
	return math.Pi * w.p.Joint.Diameter * w.joint.rings.Pressure(1)
}

// probeChances computes what the probe catches and refuses (run section 3).
func (w *work) probeChances() {
	q, r, j := w.probed, &w.r.Probe, &w.p.Joint
	contact := q.errors()
	for _, t := range w.parts.contact {
		t.Times = -t.Times
		contact = append(contact, t)
	}
	contact = append(contact, stack.Term{Row: stack.Row{Mean: w.p.Station.Nest}, Times: 1})
	f := probe.Fit{
		Refusal:   &probe.Refusal{Push: q.push(q.limit), Joint: w.probeJoint(), Contact: probe.NewSpread(stack.NewSum(contact))},
		PerMicron: w.gripPerMicron(), FrictionLow: j.FrictionLow, FrictionHigh: j.FrictionHigh,
	}
	r.RefusedAtZero = ptr(f.Refused(0))
	p := w.p.Faults.SampleProbability
	if i, known := f.Bound(p); known {
		in := fit.Push{Diameter: j.Diameter, Engagement: j.Engagement, Pilot: w.joint.pilot}
		r.CaughtBelow = &Caught{i, in.Grip(j.HoldingFriction, w.joint.rings.Pressure(i), w.parts.travel)}
	}
	if i, known := f.Bound(1 - p); known {
		r.PassedAbove = &i
	}
	r.FalseRefusalPPM = ptr(million64 * f.Wrongly(j.rawInterference()))
	d := &Detection{}
	for k := range d.Effective {
		d.Effective[k] = float64(k) / 20 * w.r.Joint.Effective[mid]
		d.Refused[k] = f.Refused(d.Effective[k])
	}
	r.Detection = d
}

// rawInterference is the law of the interference after smoothing, before it is cut at 0,
// µm: hole and shaft with their tolerances as six standard deviations.
func (j *Joint) rawInterference() *stack.Sum {
	of := func(limits [2]float64, times float64) stack.Term {
		return stack.Term{Row: stack.Row{Mean: (limits[0] + limits[1]) / 2, Half: (limits[1] - limits[0]) / 2, Shape: stack.Normal, Sigmas: 3}, Times: times}
	}
	s := j.smoothing()
	lost := stack.Term{Row: stack.Row{Mean: (s.Least + s.Most) / 2, Half: (s.Most - s.Least) / 2}, Times: -s.RzSum}
	return stack.NewSum([]stack.Term{of(j.Shaft, 1), of(j.Hole, -1), lost})
}
