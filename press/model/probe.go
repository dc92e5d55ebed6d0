package model

import "math"

// probe tells whether a first push at a low setting would let a loose part travel
// on to an end of its own while every sound part stops clear of it, and the highest
// setting that does (run section 2).
func (w *work) probe() Probe {
	if w.p.Joint.Kind != Interference || w.zone.z1 == nil || w.zone.e == nil {
		return Probe{}
	}
	all := w.p.Ram.steps()
	below := math.Min(all.last, math.Ceil((w.r.Force.Setting-slack)/all.size)-1)
	k, found := w.highest(all, all.first, below)
	if !found {
		return Probe{}
	}
	c := all.at(k)
	return Probe{Possible: true, HighestSetting: &c}
}

// highest finds the highest step from first to last that serves as a probe. The
// force rises with the setting: a stretch of steps is left out as a whole where
// its lowest one stalls too late for the latest end of all.
func (w *work) highest(all steps, first, last float64) (float64, bool) {
	if first > last {
		return 0, false
	}
	lowest, top := w.probeAt(all.at(first)), w.probeAt(all.at(last))
	switch {
	case first == last:
		return first, lowest.serves()
	case top.force.low() <= w.p.Joint.Drag: // not even the strongest moves a loose part
		return 0, false
	case !lowest.stalls, lowest.stall > math.Min(*w.zone.z1-(w.seated.deflection-top.deflection), *w.zone.e)+slack:
		return 0, false
	}
	middle := math.Floor((first + last) / 2)
	if k, found := w.highest(all, middle+1, last); found {
		return k, true
	}
	return w.highest(all, first, middle)
}

// probing is a first push at a low setting. Positions in mm.
type probing struct {
	w          *work
	force      thrust  // N
	deflection float64 // δ_p
	end        float64 // E_p, the proposed end
	stall      float64 // where the loosest sound part stalls a strong ram
	stalls     bool    // it does
	doubt      float64 // u_s, standard uncertainty of that stall
}

func (w *work) probeAt(setting float64) probing {
	st, j := &w.p.Station, &w.joint
	q := probing{w: w, force: w.force.at(setting)}
	q.deflection = w.p.Station.under(q.force.typical)
	between := w.seated.deflection - q.deflection
	differ := math.Sqrt(2*square(w.p.Ram.Repeatability/2) + square(w.force.now.scatter/2/st.Stiffness) +
		square(q.force.scatter/2/st.Stiffness) + square(between*st.StiffnessTolerance/100/2))
	latest := *w.zone.z1 - between - w.p.Window.GuardFactor*2*differ
	q.end = roundDown(math.Min(latest, *w.zone.e), st.PositionStep)

	loosest, high := j.push[low], q.force.high()
	if q.stalls = high <= loosest.seat(); !q.stalls {
		return q
	}
	depth := w.parts.travel
	if high < loosest.seat() {
		depth = loosest.depth(high)
	}
	q.stall = w.parts.xContact + depth + w.p.Station.under(high)
	q.doubt = math.Sqrt(square(w.p.positionDoubt()/2) + square(q.deflection*st.StiffnessTolerance/100/2) + square(w.r.Stack.Contact.SD))
	return q
}

// serves tells whether a loose part travels on past the end, and the loosest sound
// part stalls clear of it.
func (q probing) serves() bool {
	w := q.w
	against := w.p.Joint.Drag
	if t := w.parts.travel; t > 0 {
		depth := math.Min(math.Max(q.end-w.parts.xContact-q.deflection, 0), t)
		against += w.p.Joint.Counterforce * depth / t
	}
	return q.force.low() > against && q.end > w.zone.a+slack &&
		q.stalls && q.stall+w.p.Window.GuardFactor*2*q.doubt <= q.end+slack
}
