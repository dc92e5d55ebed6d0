package study

import (
	"math"
	"slices"
)

// Outliers finds values that stand apart from the others: the generalised extreme
// studentised deviate, at most three, at a level of 1 %.
//
//	R_i = max|x − x̄|/s of what is left, which is then taken away;
//	λ_i = (n−i)t/√((n−i−1+t²)(n−i+1)), t = t_q,n−i−1, q = 1 − 0.01/(2(n−i+1));
//	all up to the last R_i > λ_i
//
// Arguments: x, the values.
// Result: their places from 0 in rising order; a count has the unit –.
// Range: normal values; of equally distant ones the first.
// Special cases: none under twelve values, and where those that are left are equal.
// Source: B. Rosner, Technometrics 25 (1983), 165; NIST/SEMATECH e-Handbook of Statistical
// Methods, 1.3.5.17.3; ISO 16269-4:2010, from memory.
func Outliers(x []float64) []int {
	const most, alpha = 3, 0.01
	found := []int{}
	if len(x) < 12 {
		return found
	}
	all := deviates(x, most, alpha)
	for i := range all {
		if all[i].r > all[i].limit {
			found = found[:0]
			for _, d := range all[:i+1] {
				found = append(found, d.place)
			}
		}
	}
	slices.Sort(found)
	return found
}

// deviate is the value that stands farthest from the others, in standard deviations.
type deviate struct {
	place    int
	r, limit float64
}

// deviates takes away the farthest value again and again, as often as asked.
func deviates(x []float64, most int, alpha float64) []deviate {
	place := make([]int, len(x))
	for i := range place {
		place[i] = i
	}
	left := slices.Clone(x)
	var all []deviate
	for range most {
		d, squares := deviations(left)
		n := float64(len(left)) // n − i + 1
		s := math.Sqrt(squares / (n - 1))
		if !(s > 0) {
			break
		}
		far := 0
		for k := range d {
			// A hair more is no more: of equally distant values the first.
			if math.Abs(d[k]) > math.Abs(d[far])*(1+1e-12) {
				far = k
			}
		}
		t := TQuantile(1-alpha/(2*n), n-2)
		all = append(all, deviate{place[far], math.Abs(d[far]) / s, (n - 1) * t / math.Sqrt((n-2+t*t)*n)})
		left = slices.Delete(left, far, far+1)
		place = slices.Delete(place, far, far+1)
	}
	return all
}
