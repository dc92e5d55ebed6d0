package simulate

import (
	"math"
	"sort"

	"ramplan/press/stack"
)

// stratum draws what rows add up to from a stretch: given the rows that are sampled, a
// class of heights is such a stretch. Every shape is symmetric, so half of the law tells
// all of it.
//
// Source: stratification, S. Asmussen, P. W. Glynn, Stochastic Simulation, 2007, V.7.
type stratum struct {
	law   *stack.Sum // about nothing
	step  float64
	above []float64 // the share above each step from the middle on
}

// steps is into how many the half of a law is cut; a draw begins in one of them.
const steps = 256

// newStratum is nil where rows have no spread.
func newStratum(rows []stack.Term) *stratum {
	s := &stratum{law: stack.NewSum(rows)}
	if s.law.Point() {
		return nil
	}
	_, end := s.law.Support()
	s.step = end / steps
	for k := range steps {
		s.above = append(s.above, s.law.Above(float64(k)*s.step))
	}
	s.above = append(s.above, 0)
	return s
}

// within gives the share from a to b, and what a share u of that share lies under. Both
// are taken on the side on which nothing cancels.
func (s *stratum) within(a, b, u float64) (share, x float64) {
	if !(a < b) {
		return 0, 0
	}
	if a >= 0 {
		above := s.tail(b)
		share = max(0, s.tail(a)-above)
		return share, min(max(s.upper(above+(1-u)*share), a), b)
	}
	if b <= 0 {
		share, x = s.within(-b, -a, 1-u)
		return share, -x
	}
	below, above := s.tail(-a), s.tail(b)
	share = max(0, 1-below-above)
	if under := below + u*share; under < 0.5 {
		return share, max(-s.upper(under), a)
	}
	return share, min(s.upper(above+(1-u)*share), b)
}

func (s *stratum) tail(x float64) float64 {
	if math.IsInf(x, 1) {
		return 0
	}
	return s.law.Above(x)
}

// upper gives the value, from the middle on, that a share up to a half lies above.
func (s *stratum) upper(share float64) float64 {
	k := sort.Search(steps, func(k int) bool { return s.above[k] < share })
	if k == 0 {
		return 0
	}
	// Regula falsi after Illinois, to a share of the step that no figure shows.
	a, b := float64(k-1)*s.step, float64(k)*s.step
	fa, fb := s.above[k-1]-share, s.above[k]-share
	if fb == 0 {
		return b
	}
	for range 60 {
		x := b - fb*(b-a)/(fb-fa)
		f := s.law.Above(x) - share
		if math.Abs(f) <= 1e-9*share || b-a <= 1e-9*s.step {
			return x
		}
		if f > 0 {
			a, fa = x, f
			fb /= 2
		} else {
			b, fb = x, f
			fa /= 2
		}
	}
	return (a + b) / 2
}
