package risk

import (
	"math"

	"ramplan/press/stack"
)

// A tail is the lower half of a distribution, made ready to be asked very often: stretches as long as the normal part's standard deviation, each a Chebyshev series that
// is worked out when it is asked for first.
type tail struct {
	e         *stack.Sum
	far       float64 // mm
	length    float64 // mm, of a stretch
	stretches [][]float64
}

const (
	tailTerms  = 14 // on a stretch of one standard deviation: 1e-14
	mostTails  = 4096
	tailMoment = math.Pi / tailTerms
)

// newTail is nil where the distribution bends too finely.
func newTail(e *stack.Sum) *tail {
	_, last := e.Support()
	far := last - e.Mean()
	length := e.Normal()
	if length <= 0 || far/length > mostTails {
		return nil
	}
	return &tail{e: e, far: far, length: length, stretches: make([][]float64, int(far/length)+1)}
}

// below gives the probability of an error of at most −z, z ≥ 0.
func (t *Edges) below(z float64) float64 {
	if t.tail == nil {
		return t.e.CDF(-z)
	}
	return t.tail.below(z)
}

// below is the same of its mean less z.
func (t *tail) below(z float64) float64 {
	if z >= t.far {
		return 0
	}
	k := int(z / t.length)
	c := t.stretches[k]
	if c == nil {
		c = t.series(k)
		t.stretches[k] = c
	}
	x := 2*(z/t.length-float64(k)) - 1
	var b1, b2 float64
	for i := len(c) - 1; i > 0; i-- {
		b1, b2 = c[i]+2*x*b1-b2, b1
	}
	return max(0, c[0]+x*b1-b2)
}

// above gives the probability of more than x.
func (t *tail) above(x float64) float64 {
	if z := x - t.e.Mean(); z >= 0 { // both sides are alike
		return t.below(z)
	}
	return 1 - t.below(t.e.Mean()-x)
}

// series works out one stretch from its values at Chebyshev's points.
func (t *tail) series(k int) []float64 {
	var at [tailTerms]float64
	for i := range at {
		x := math.Cos(tailMoment * (float64(i) + 0.5))
		at[i] = t.e.CDF(t.e.Mean() - t.length*(float64(k)+(x+1)/2))
	}
	c := make([]float64, tailTerms)
	for j := range c {
		for i, v := range at {
			c[j] += v * math.Cos(tailMoment*float64(j)*(float64(i)+0.5))
		}
		c[j] *= 2.0 / tailTerms
	}
	c[0] /= 2
	return c
}
