package sequence

import "math"

// A Leg is one pass of a step with its places.
type Leg struct {
	Step, Pass int     // index from 0; pass from 1
	Start, End float64 // mm
	Target     float64 // mm, what was commanded; of a wait the last one
	last       bool    // the last pass of its step
	goesOn     bool    // a press right after the probe: it begins where the ram stands
}

// length is the way of a leg, mm.
func (l Leg) length() float64 { return math.Abs(l.End - l.Start) }

// way is the direction of a leg: 1 toward the work, −1 away from it, 0 where it has no
// length.
func (l Leg) way() float64 {
	switch {
	case l.End > l.Start+Slack:
		return 1
	case l.End < l.Start-Slack:
		return -1
	}
	return 0
}

// place is where the ram stands, and where it was last told to go.
type place struct{ at, target float64 }

// spot names one pass of a step.
type spot struct{ step, pass int }

// passes lists every pass of the steps from one on.
func passes(steps []Step, from spot) []spot {
	var out []spot
	for i := from.step; i < len(steps); i++ {
		first := 1
		if i == from.step {
			first = from.pass
		}
		for p := first; p <= max(1, steps[i].Times); p++ {
			out = append(out, spot{i, p})
		}
	}
	return out
}

// walk finds where the passes begin and end.
func (s *Station) walk(steps []Step, todo []spot, from place, part Part) []Leg {
	out := make([]Leg, 0, len(todo))
	now := from
	for _, t := range todo {
		step := &steps[t.step]
		probed := len(out) > 0 && steps[out[len(out)-1].Step].Kind == Probe
		if step.Kind == Press && part.Refused {
			continue
		}
		leg := Leg{Step: t.step, Pass: t.pass, Start: now.at, last: t.pass >= max(1, step.Times), goesOn: step.Kind == Press && probed}
		switch step.Kind {
		case Move:
			now = place{step.To, step.To}
		case Shift:
			base := now.at
			if s.FromTarget {
				base = now.target
			}
			now = place{base + step.By, base + step.By}
		case Probe:
			now = place{rests(part.Probe, s.pushStart(leg), s.ProbeEnd), s.ProbeEnd}
		case Press:
			now = place{rests(part.Press, s.pushStart(leg), s.E), s.E}
		}
		leg.End, leg.Target = now.at, now.target
		out = append(out, leg)
	}
	return out
}

// pushStart is where a push begins: at A, with no way back to it, or where the probe
// stands.
func (s *Station) pushStart(l Leg) float64 {
	if l.goesOn {
		return l.Start
	}
	return math.Max(l.Start, s.A)
}

// rests is where a push ends: at its end at the latest, and never before it began. A ram
// that already stands past the end stays where it is, for a push has no way back.
func rests(r Rest, start, latest float64) float64 {
	return math.Max(math.Min(r.Position, latest), start)
}

// after is where a walk leaves the ram.
func after(legs []Leg, from place) place {
	if len(legs) == 0 {
		return from
	}
	l := legs[len(legs)-1]
	return place{l.End, l.Target}
}
