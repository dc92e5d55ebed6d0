package study

import "math"

// Performance is how a process fills its limits while it is not yet shown to be stable.
type Performance struct {
	Pp        float64
	PpLimits  [2]float64
	Ppk       float64
	PpkLimits [2]float64
}

// ProcessPerformance gives the performance indices of a sample with their limits, two-sided 95 %.
//
//	Pp = T/(6s), limits Pp√(χ²_q,ν/ν) at q = 0.025 and 0.975;
//	Ppk = min(high − x̄, x̄ − low)/(3s), limits Ppk ± z_0.975√(1/(9n) + Ppk²/(2(n−1)))
//
// Arguments: x, the values; low, –; high, –, the limits of the process, in the unit of x.
// Result: the indices, –.
// Range: normal values; the limits of Ppk are approximate.
// Special cases: nil under two values and where all are equal.
// Source: ISO 22514-2:2017, from memory; limits of Ppk: A. F. Bissell, Applied Statistics 39
// (1990), 331, from memory.
func ProcessPerformance(x []float64, low, high float64) *Performance {
	s := SD(x)
	if s == nil || !(*s > 0) {
		return nil
	}
	n, mean := float64(len(x)), Mean(x)
	df := n - 1
	c := &Performance{Pp: (high - low) / (6 * *s), Ppk: math.Min(high-mean, mean-low) / (3 * *s)}
	for i, q := range []float64{0.025, 0.975} {
		c.PpLimits[i] = c.Pp * math.Sqrt(ChiSquaredQuantile(q, df)/df)
	}
	half := NormalQuantile(0.975) * math.Sqrt(1/(9*n)+square(c.Ppk)/(2*df))
	c.PpkLimits = [2]float64{c.Ppk - half, c.Ppk + half}
	return c
}
