package simulate

import (
	"ramplan/press/stack"
)

// source is one thing that scatters, with what it adds to a variance.
type source struct {
	variance float64
	normal   bool // without an end; else it has hard limits
}

// Tails tells what a small share hangs on: on the tails that a normal law is assumed to
// have, or on the limits beyond which a row, or another quantity with limits, is taken not
// to go.
//
// Argument: a named share.
// Result: each is true where such laws carry more than 1 % of the variance of what decides:
// height, reading, contact, or push against force, taken in a straight line about the mean.
// Range: any.
// Source: first-order propagation, JCGM 100:2008, 5.1.2; the 1 % is a choice of our own.
func (s *Station) Tails(share Share) (assumed, limited bool) {
	for _, of := range s.decides(share) {
		var all, normal float64
		for _, x := range of {
			all += x.variance
			if x.normal {
				normal += x.variance
			}
		}
		const counts = 0.01
		assumed = assumed || normal > counts*all
		limited = limited || all-normal > counts*all
	}
	return assumed, limited
}

// decides lists what a share hangs on, each with what it scatters by.
func (s *Station) decides(share Share) [][]source {
	height := s.rowSources(func(r row) float64 { return r.of.height })
	reading := append(s.rowSources(func(r row) float64 { return r.of.seat }), s.positionSources()...)
	bend := s.bend(s.force, 0)
	reading = append(reading, source{square(s.scatter * s.compliance), true}, source{square(bend * s.complianceSpread), true})
	contact := append(s.rowSources(func(r row) float64 { return r.of.contact }), s.positionSources()...)
	grip := s.pushSources()
	push := append(grip[:len(grip):len(grip)], source{square(s.scatter), true})
	if s.joint.kind == touch && s.joint.counter == 0 {
		push = nil // nothing stalls
	}
	if s.joint.kind != interference {
		grip = nil // nothing is known of what it holds
	}
	switch share {
	case LongShare, ShortShare:
		return [][]source{height}
	case EarlyContact:
		return [][]source{contact}
	case UnseatedShare:
		return [][]source{push}
	case FalseAcceptUnseated:
		return both(push, reading)
	case LooseShare, LooseFails:
		return [][]source{grip}
	case FalseAcceptLoose:
		return both(grip, reading)
	case FalseAccept:
		return [][]source{height, reading, push}
	}
	return [][]source{height, reading}
}

// both are the sources of two things that must come together; none where the first cannot
// be.
func both(first, second []source) [][]source {
	if first == nil {
		return nil
	}
	return [][]source{first, second}
}

func (s *Station) rowSources(times func(row) float64) []source {
	var out []source
	for _, r := range s.rows {
		t := r.term(times(r))
		out = append(out, source{square(t.Times * t.SD()), r.shape == stack.Normal})
	}
	return out
}

func (s *Station) positionSources() []source {
	return []source{{square(s.repeatability), true}, {square(s.reference), true}, {square(s.drift) / 3, false}}
}

// pushSources are what the force at the seat scatters by, relative to friction and
// interference at their means.
func (s *Station) pushSources() []source {
	q := &s.joint
	switch q.kind {
	case measured:
		a, b, c := q.forceLow, q.forceMode, q.forceHigh
		return []source{{(a*a + b*b + c*c - a*b - a*c - b*c) / 18, false}}
	case interference:
		perMicron := q.grip * q.engaged(max(0, s.mean.travel))
		friction, effective := (q.frictionLow+q.frictionHigh)/2, max(0, q.middle-(q.roughLow+q.roughHigh)/2)
		return []source{
			{square(perMicron*friction) * (square(q.hole) + square(q.shaft)) / 9, true},
			{square(perMicron*friction*(q.roughHigh-q.roughLow)) / 12, false},
			{square(perMicron*effective*(q.frictionHigh-q.frictionLow)) / 12, false},
		}
	}
	return nil
}

func square(x float64) float64 { return x * x }
