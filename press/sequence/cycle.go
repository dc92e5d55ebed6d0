package sequence

import "math"

// Low, nominal and high of a place.
const (
	Low = iota
	Typical
	High
)

// An Input is one cycle and what can come to it.
type Input struct {
	Station
	Steps   []Step
	Nominal Part
	Missing Part
	Probe   [3]float64 // mm, where a probe leaves the ram: low, nominal, high
	Press   [3]float64 // mm, where a press does
	Hold    *HoldCase  // nil: none
	Stroke  [2]float64 // mm, first and last place that the ram may reach
}

// A Cycle is what becomes of it.
type Cycle struct {
	Nominal *Run
	Missing *Run
	Held    *Held    // nil: no hold is asked for, or nothing is known of it
	Places  [3][]Leg // low, nominal, high
	Again   [3][]Leg // the same in the next cycle
	Drift   [3]float64
	Cycles  *int // whole cycles before a nominal place lies outside the stroke; nil: never
}

// Study runs the cycle with the nominal part, without the insert, and with the hold, and
// finds its places low, nominal and high in two cycles.
//
// Range: the ram follows its commands exactly; a push that meets its part stands at
// once. No hold input is a safety function.
// Special cases: a press that a probe forbids is left out; what comes after it is done.
// Source: derived here from the kinematics of [motion.Profile.Move] and
// [motion.Junctions].
func Study(in Input) *Cycle {
	s := &in.Station
	home, all := place{s.Home, s.Home}, passes(in.Steps, spot{0, 1})
	c := &Cycle{}
	for i := range c.Places {
		part := Part{Probe: Rest{Position: in.Probe[i]}, Press: Rest{Position: in.Press[i]}}
		c.Places[i] = s.walk(in.Steps, all, home, part)
		end := after(c.Places[i], home)
		c.Again[i] = s.walk(in.Steps, all, end, part)
		c.Drift[i] = end.at - s.Home
	}
	c.Nominal = s.whole(in.Steps, s.walk(in.Steps, all, home, in.Nominal), in.Nominal)
	c.Missing = s.whole(in.Steps, s.walk(in.Steps, all, home, in.Missing), in.Missing)
	if in.Hold != nil {
		c.Held = s.hold(in.Steps, c.Nominal, in.Nominal, *in.Hold)
	}
	c.Cycles = s.inStroke(in.Steps, all, c.Places[Typical], in)
	return c
}

// mostLegs is how many legs are walked in search of a cycle that leaves the stroke.
const mostLegs = 1_000_000

// inStroke counts the whole cycles before a nominal place lies outside the stroke; nil
// where the cycles repeat before. A press is an absolute step, and yet a cycle can drift
// on and on: a push that begins past its end stays where it is.
func (s *Station) inStroke(steps []Step, all []spot, legs []Leg, in Input) *int {
	home := place{s.Home, s.Home}
	part := Part{Probe: Rest{Position: in.Probe[Typical]}, Press: Rest{Position: in.Press[Typical]}}
	for n, from := 0, home; n*len(all) < mostLegs; n++ {
		if !within(legs, in.Stroke) {
			return &n
		}
		to := after(legs, from)
		if math.Abs(to.at-from.at) <= Slack && math.Abs(to.target-from.target) <= Slack {
			return nil
		}
		from, legs = to, s.walk(steps, all, to, part)
	}
	return nil
}

func (s *Station) whole(steps []Step, legs []Leg, part Part) *Run {
	r := s.start(steps, part)
	r.follow(legs)
	return r.Run
}

// within tells whether legs stay inside a stroke.
func within(legs []Leg, stroke [2]float64) bool {
	for _, l := range legs {
		if Outside(l, stroke) {
			return false
		}
	}
	return true
}

// Outside tells whether a leg begins or ends outside a stroke.
func Outside(l Leg, stroke [2]float64) bool {
	return min(l.Start, l.End) < stroke[0]-Slack || max(l.Start, l.End) > stroke[1]+Slack
}
