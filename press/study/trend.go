package study

import (
	"math"
	"slices"
)

// Trend is what Mann and Kendall's test says of values in their order.
type Trend struct {
	S   float64 // pairs that rise less pairs that fall
	Tau float64 // S as a share of all pairs
	P   float64 // two-sided
}

// MannKendall tests whether values rise or fall in their order.
//
//	S = Σ sign(x_j − x_i), i < j; Var = (n(n−1)(2n+5) − Σ t(t−1)(2t+5))/18 over ties of t;
//	z = (S − sign S)/√Var; p = 2Φ(−|z|); τ = S/(n(n−1)/2)
//
// Arguments: x, the values in their order.
// Result: S, τ and p, –.
// Range: by the normal distribution, good from ten values on (Kendall). Falling pairs are
// counted while sorting, in n log n steps.
// Special cases: nil under ten values and where all are equal.
// Source: H. B. Mann, Econometrica 13 (1945), 245; M. G. Kendall, Rank Correlation Methods
// (4th ed. 1975), 4.8 and 5.
func MannKendall(x []float64) *Trend {
	n := float64(len(x))
	if n < 10 {
		return nil
	}
	sorted := slices.Clone(x)
	falling := inversions(sorted, make([]float64, len(x)))
	tied, ties := 0.0, 0.0
	for _, t := range runs(sorted) {
		tied += t * (t - 1) / 2
		ties += t * (t - 1) * (2*t + 5)
	}
	pairs := n * (n - 1) / 2
	variance := (n*(n-1)*(2*n+5) - ties) / 18
	if variance <= 0 {
		return nil
	}
	s := pairs - tied - 2*falling
	z := (math.Abs(s) - 1) / math.Sqrt(variance)
	if s == 0 {
		z = 0
	}
	return &Trend{S: s, Tau: s / pairs, P: math.Erfc(z / math.Sqrt2)}
}

// inversions sorts values by merging and counts the pairs that stood falling.
func inversions(x, room []float64) float64 {
	if len(x) < 2 {
		return 0
	}
	left, right := x[:len(x)/2], x[len(x)/2:]
	count := inversions(left, room) + inversions(right, room)
	merged := room[:0]
	i, j := 0, 0
	for i < len(left) && j < len(right) {
		if left[i] <= right[j] {
			merged = append(merged, left[i])
			i++
			continue
		}
		count += float64(len(left) - i)
		merged = append(merged, right[j])
		j++
	}
	merged = append(append(merged, left[i:]...), right[j:]...)
	copy(x, merged)
	return count
}

// runs gives how often each value stands in a sorted list.
func runs(sorted []float64) []float64 {
	var lengths []float64
	for i := range sorted {
		if i == 0 || sorted[i] != sorted[i-1] {
			lengths = append(lengths, 0)
		}
		lengths[len(lengths)-1]++
	}
	return lengths
}
