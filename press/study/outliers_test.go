package study

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// rosner are the values of the worked example, NIST/SEMATECH e-Handbook of Statistical
// Methods, 1.3.5.17.3 (from memory).
var rosner = []float64{
	-0.25, 0.68, 0.94, 1.15, 1.20, 1.26, 1.26, 1.34, 1.38, 1.43, 1.49, 1.49, 1.55, 1.56, 1.58, 1.65, 1.69, 1.70,
	1.76, 1.77, 1.81, 1.91, 1.94, 1.96, 1.99, 2.06, 2.09, 2.10, 2.14, 2.15, 2.23, 2.24, 2.26, 2.35, 2.37, 2.40,
	2.47, 2.54, 2.62, 2.64, 2.90, 2.92, 2.92, 2.93, 3.21, 3.26, 3.30, 3.59, 3.68, 4.30, 4.64, 5.34, 5.42, 6.01,
}

// TestRosner: the ten deviates and limits at 5 % as the handbook prints them (from memory;
// some are cut, not rounded), three outliers.
func TestRosner(t *testing.T) {
	r := []float64{3.118, 2.942, 3.179, 2.810, 2.815, 2.848, 2.279, 2.310, 2.101, 2.067}
	limits := []float64{3.158, 3.151, 3.143, 3.136, 3.128, 3.120, 3.111, 3.103, 3.094, 3.085}
	last := 0
	for i, d := range deviates(rosner, 10, 0.05) {
		assert.InDelta(t, r[i], d.r, 0.0011, "R of %d", i+1)
		assert.InDelta(t, limits[i], d.limit, 0.0011, "limit of %d", i+1)
		if d.r > d.limit {
			last = i + 1
		}
	}
	assert.Equal(t, 3, last)
	assert.Empty(t, Outliers(rosner), "at 1 % none: R is 3.179 at most, by the limits of SciPy 1.10.1 over 3.5")
}

// The first of equally distant values, all up to the last that is one, at most three.
func TestOutliers(t *testing.T) {
	x := []float64{1, -1, 1, -1, 1, -1, 1, -1, 1, -1, 1, -1, 1, -1, 1, -1, 30, -30}
	assert.Equal(t, []int{16, 17}, Outliers(x), "by hand: one alone is hidden by the other (R₁ = 2.8), the second is plain")
	assert.Equal(t, 16, deviates(x, 1, 0.01)[0].place, "of equally distant ones the first")
	assert.Empty(t, Outliers(append([]float64{30}, x[:10]...)), "eleven are too few")
	assert.Equal(t, []int{0}, Outliers(append([]float64{30}, x[:11]...)))
	many := append([]float64{100, 200, 300, 400}, x[:16]...)
	assert.LessOrEqual(t, len(Outliers(many)), 3)
}
