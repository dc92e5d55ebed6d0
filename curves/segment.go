package curves

import "math"

// segment is the cubic between two points, in s that runs from 0 to 1:
//
//	force(s) = c0 + c1·s + c2·s² + c3·s³,  setting = start + width·s
//
// A straight piece has c2 = c3 = 0.
type segment struct {
	start, width   float64 // %
	c0, c1, c2, c3 float64 // N
}

// segment returns the cubic between point k and the next one, from the two
// forces and the two slopes (Hermite form).
func (c *Curve) segment(k int) segment {
	s := segment{
		start: c.settings[k],
		width: c.settings[k+1] - c.settings[k],
		c0:    c.forces[k],
	}
	rise := c.forces[k+1] - c.forces[k]
	if c.slopes == nil {
		s.c1 = rise
		return s
	}
	left, right := c.slopes[k]*s.width, c.slopes[k+1]*s.width
	s.c1 = left
	s.c2 = 3*rise - 2*left - right
	s.c3 = left + right - 2*rise
	return s
}

// rise is the force above the left point, N.
func (s segment) rise(at float64) float64 {
	return at * (s.c1 + at*(s.c2+at*s.c3))
}

// slope is the derivative against s, N.
func (s segment) slope(at float64) float64 {
	return s.c1 + at*(2*s.c2+at*3*s.c3)
}

// solve returns the s in 0…1 at which a rising segment reaches the force.
// Newton steps are taken while they stay inside the bracket, otherwise the
// bracket is halved; a step that no longer moves ends it.
func (s segment) solve(force float64) float64 {
	const most = 200 // halving alone needs about 60 for float64 near 1, Newton about 5
	target := force - s.c0
	lo, hi := 0.0, 1.0
	at := target / (s.c1 + s.c2 + s.c3)
	for range most {
		miss := s.rise(at) - target
		switch {
		case math.Abs(miss) <= force*1e-16:
			return at
		case miss > 0:
			hi = at
		default:
			lo = at
		}
		next := at - miss/s.slope(at)
		if !(next > lo && next < hi) {
			next = lo + (hi-lo)/2
		}
		if next == at {
			return at
		}
		at = next
	}
	return at
}
