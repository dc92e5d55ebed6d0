package study

import (
	"math"
	"slices"
)

// Normality is what Anderson and Darling's test says.
type Normality struct {
	A2         float64
	A2Adjusted float64 // for the size of the sample
	P          float64 // how often normal values look as little like it
}

// AndersonDarling tests whether values are normal, their mean and standard deviation
// unknown.
//
//	A² = −n − Σ(2i−1)(ln Φ(z_i) + ln(1−Φ(z_n+1−i)))/n, z sorted; B = A²(1 + 0.75/n + 2.25/n²);
//	p = exp(1.2937 − 5.709B + 0.0186B²) from B = 0.6 on, and so on below
//
// Arguments: x, the values.
// Result: A², B and p, –.
// Range: eight values or more, read finely: coarse readings give false alarms.
// Special cases: nil under eight values, where all are equal, and where the smallest step
// between different values is over a quarter of the standard deviation; p is 0 from B = 153
// on, where the polynomial turns.
// Source: R. B. D'Agostino, M. A. Stephens, Goodness-of-Fit Techniques (1986), table 4.9.
func AndersonDarling(x []float64) *Normality {
	if len(x) < 8 {
		return nil
	}
	z, squares := deviations(x)
	n := float64(len(x))
	s := math.Sqrt(squares / (n - 1))
	if !(s > 0) || coarsest(x) > s/4 {
		return nil
	}
	slices.Sort(z)
	sum := 0.0
	for i := range z {
		sum += float64(2*i+1) * (logPhi(z[i]/s) + logPhi(-z[len(z)-1-i]/s))
	}
	a := -n - sum/n
	b := a * (1 + 0.75/n + 2.25/(n*n))
	return &Normality{A2: a, A2Adjusted: b, P: andersonDarlingP(b)}
}

func andersonDarlingP(b float64) float64 {
	switch {
	case b >= 153:
		return 0
	case b >= 0.6:
		return math.Exp(1.2937 - 5.709*b + 0.0186*b*b)
	case b > 0.34:
		return math.Exp(0.9177 - 4.279*b - 1.38*b*b)
	case b > 0.2:
		return 1 - math.Exp(-8.318+42.796*b-59.938*b*b)
	default:
		return 1 - math.Exp(-13.436+101.14*b-223.73*b*b)
	}
}

// coarsest is the smallest step between values that differ.
func coarsest(x []float64) float64 {
	sorted := slices.Clone(x)
	slices.Sort(sorted)
	step := math.Inf(1)
	for i := range sorted[1:] {
		if d := sorted[i+1] - sorted[i]; d > 0 {
			step = math.Min(step, d)
		}
	}
	return step
}

// logPhi is ln Φ(z), also far out on the left, where Φ itself is no number any more.
func logPhi(z float64) float64 {
	if z > -35 {
		if z > 5 {
			return math.Log1p(-math.Erfc(z/math.Sqrt2) / 2)
		}
		return math.Log(math.Erfc(-z/math.Sqrt2) / 2)
	}
	return -z*z/2 - math.Log(-z) - math.Log(2*math.Pi)/2 + math.Log1p(-1/(z*z))
}
