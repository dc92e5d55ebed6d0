package risk

import (
	"math"

	"ramplan/press/stack"
)

// A memo is a smooth function from 0 on, made ready to be asked very often: stretches on
// which it bends little, each a Chebyshev series that is worked out when it is asked for
// first.
type memo struct {
	of        func(x float64) float64
	length    float64 // of a stretch
	stretches [][]float64
}

const (
	memoTerms = 14 // on a stretch of a normal's standard deviation: 1e-14
	memoMost  = 4096
	memoAngle = math.Pi / memoTerms
)

// newMemo is nil where there would be too many stretches.
func newMemo(far, length float64, of func(x float64) float64) *memo {
	if !(length > 0) || far/length > memoMost {
		return nil
	}
	return &memo{of: of, length: length, stretches: make([][]float64, int(far/length)+1)}
}

func (m *memo) at(x float64) float64 {
	k := min(int(x/m.length), len(m.stretches)-1)
	c := m.stretches[k]
	if c == nil {
		c = m.series(k)
		m.stretches[k] = c
	}
	u := 2*(x/m.length-float64(k)) - 1
	var b1, b2 float64
	for i := len(c) - 1; i > 0; i-- {
		b1, b2 = c[i]+2*u*b1-b2, b1
	}
	return c[0] + u*b1 - b2
}

// series works out one stretch from its values at Chebyshev's points.
func (m *memo) series(k int) []float64 {
	var at [memoTerms]float64
	for i := range at {
		u := math.Cos(memoAngle * (float64(i) + 0.5))
		at[i] = m.of(m.length * (float64(k) + (u+1)/2))
	}
	c := make([]float64, memoTerms)
	for j := range c {
		for i, v := range at {
			c[j] += v * math.Cos(memoAngle*float64(j)*(float64(i)+0.5))
		}
		c[j] *= 2.0 / memoTerms
	}
	c[0] /= 2
	return c
}

// A tail is the lower half of a distribution that is asked very often.
type tail struct {
	e   *stack.Sum
	far float64 // mm
	*memo
}

// newTail is nil where the distribution bends too finely.
func newTail(e *stack.Sum) *tail {
	_, last := e.Support()
	m := newMemo(last-e.Mean(), e.Normal(), func(z float64) float64 { return e.CDF(e.Mean() - z) })
	if m == nil {
		return nil
	}
	return &tail{e, last - e.Mean(), m}
}

// below gives the probability of less than the mean by z or more, z ≥ 0.
func (t *tail) below(z float64) float64 {
	if z >= t.far {
		return 0
	}
	return max(0, t.at(z))
}

// above gives the probability of more than x.
func (t *tail) above(x float64) float64 {
	if z := x - t.e.Mean(); z >= 0 { // both sides are alike
		return t.below(z)
	}
	return 1 - t.below(t.e.Mean()-x)
}

// below gives the probability of an error of at most −z, z ≥ 0.
func (t *Edges) below(z float64) float64 {
	if t.tail == nil {
		return t.e.CDF(-z)
	}
	return t.tail.below(z)
}
