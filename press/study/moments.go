package study

import (
	"gonum.org/v1/gonum/floats"
	"gonum.org/v1/gonum/stat"
)

// Mean is the arithmetic mean.
//
//	x̄ = x₁ + Σ(x_i − x₁)/n
//
// Arguments: x, at least one value.
// Result: the mean, –, in the unit of x.
// Range: any; counted from the first value, so that a great offset common to all costs no
// digits.
// Special cases: equal values: exactly that value; panics without values.
// Source: NIST StRD, univariate summary statistics (what is certified); two passes by
// T. F. Chan, G. H. Golub, R. J. LeVeque, The American Statistician 37 (1983), 242, from
// memory.
func Mean(x []float64) float64 {
	if len(x) == 0 {
		panic("study: no values, no mean")
	}
	return x[0] + floats.SumCompensated(fromFirst(x))/float64(len(x))
}

// SD is the standard deviation of a sample.
//
//	s = √(Σ(x_i − x̄)²/(n − 1))
//
// Arguments: x, the values.
// Result: s, –, in the unit of x.
// Range: any; counted from the first value, then in two passes with the sum of the
// deviations put right.
// Special cases: equal values: exactly 0; nil under two values.
// Source: as [Mean].
func SD(x []float64) *float64 {
	if len(x) < 2 {
		return nil
	}
	s := stat.StdDev(fromFirst(x), nil)
	return &s
}

// fromFirst counts values from the first of them.
func fromFirst(x []float64) []float64 {
	y := make([]float64, len(x))
	for i := range x {
		y[i] = x[i] - x[0]
	}
	return y
}

// deviations gives the values less their mean, and the sum of their squares.
func deviations(x []float64) (d []float64, squares float64) {
	d = fromFirst(x)
	floats.AddConst(-floats.SumCompensated(d)/float64(len(d)), d)
	return d, floats.Dot(d, d)
}

// HarmonicMean is the harmonic mean of counts.
//
//	ñ = a/Σ(1/n_i)
//
// Arguments: n, counts, each at least 1.
// Result: ñ, –.
// Range: any.
// Special cases: no counts: 0.
// Source: common practice for unequal groups, no source.
func HarmonicMean(n []int) float64 {
	sum := 0.0
	for _, k := range n {
		sum += 1 / float64(k)
	}
	if sum == 0 {
		return 0
	}
	return float64(len(n)) / sum
}

func square(x float64) float64 { return x * x }
