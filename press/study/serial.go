package study

import (
	"math"

	"gonum.org/v1/gonum/mathext"
)

// Serial is what von Neumann's test says of values in their order.
type Serial struct {
	Ratio float64 // squares of the steps to squares about the mean; about 2 of values that know nothing of each other
	P     float64 // how often it is as small
}

// VonNeumann tests whether neighbouring values are closer to each other than values of the
// same spread that know nothing of each other: only a small ratio tells.
//
//	Q = Σ(x_i+1 − x_i)²/Σ(x − x̄)²; p = I_Q/4(a, a), a = ((n²−1)/(n−2) − 1)/2
//
// Arguments: x, the values in their order.
// Result: Q and p, –.
// Range: normal values; Q/4 taken as a symmetric beta variable with the exact variance of Q.
// Special cases: nil under ten values and where all are equal.
// Source: J. von Neumann, Annals of Mathematical Statistics 12 (1941), 367; L. C. Young,
// the same, 293; both from memory.
func VonNeumann(x []float64) *Serial {
	if len(x) < 10 {
		return nil
	}
	_, squares := deviations(x)
	if !(squares > 0) {
		return nil
	}
	steps := 0.0
	for i := range x[1:] {
		steps += square(x[i+1] - x[i])
	}
	n, q := float64(len(x)), steps/squares
	a := ((n*n-1)/(n-2) - 1) / 2
	return &Serial{Ratio: q, P: mathext.RegIncBeta(a, a, math.Min(q/4, 1))}
}
