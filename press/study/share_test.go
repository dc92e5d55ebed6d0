package study

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// ShareLimits are those that SciPy 1.10.1 computes by scipy.stats.beta.ppf (derived).
func TestShareLimits(t *testing.T) {
	for _, c := range []struct {
		k, n      int64
		low, high float64
	}{
		{0, 1, 0, 0.975}, {1, 1, 0.025, 1}, {0, 10, 0, 0.308497107818761}, {3, 10, 0.0667395111777345, 0.652452850059997},
		{13, 1e6, 6.921970066095e-06, 2.22302933204873e-05}, {500000, 1e6, 0.499019519195312, 0.500980480804688},
		{999999, 1e6, 0.999994428369345, 0.999999974682192}, {7, 1e9, 2.81436305600264e-09, 1.44226753640886e-08},
	} {
		low, high := ShareLimits(c.k, c.n)
		assert.InDelta(t, c.low, low, 1e-6*c.low, "%d of %d", c.k, c.n)
		assert.InDelta(t, c.high, high, 1e-6*c.high, "%d of %d", c.k, c.n)
	}
	// Derived likewise. With so many parts the library's incomplete beta function has lost
	// digits, none that anybody would read.
	_, high := ShareLimits(0, 1e12)
	assert.InEpsilon(t, 3.68887945410713e-12, high, 1e-3)
	low, high := ShareLimits(1e6, 1e12)
	assert.InEpsilon(t, 9.98040984317496e-07, low, 1e-6)
	assert.InEpsilon(t, 1.00196191096255e-06, high, 1e-6)
	low, high = ShareLimits(0, 0)
	assert.Equal(t, [2]float64{0, 1}, [2]float64{low, high}, "nothing counted, nothing known")
}

// ShareLower is SciPy 1.10.1: beta.ppf(0.01, k, n − k + 1) (derived).
func TestShareLower(t *testing.T) {
	assert.Zero(t, ShareLower(0, 30))
	assert.InEpsilon(t, 0.01112106255814478, ShareLower(3, 40), 1e-9)
	assert.InEpsilon(t, 0.01, ShareLower(1, 1), 1e-9, "by hand: Beta(1, 1) is uniform")
}
