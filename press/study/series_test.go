package study

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// mixed has ties and no order; what is derived of it comes from NumPy 1.24.2 and SciPy 1.10.1.
var mixed = []float64{10.2, 9.7, 10.9, 11.3, 9.9, 10.4, 12.8, 10.1, 9.6, 10.7, 11.0, 10.3, 9.8, 10.2, 18.0}

// TestSeries: Mann and Kendall by counting all pairs, p by 2*norm.sf(|z|); von Neumann by
// betainc(a, a, Q/4) (derived).
func TestSeries(t *testing.T) {
	trend := MannKendall(mixed)
	require.NotNil(t, trend)
	assert.Equal(t, 10.0, trend.S)
	assert.InEpsilon(t, 0.09523809523809523, trend.Tau, 1e-14)
	assert.InEpsilon(t, 0.6556471855286777, trend.P, 1e-12)

	serial := VonNeumann(mixed)
	require.NotNil(t, serial)
	assert.InEpsilon(t, 1.303727406382427, serial.Ratio, 1e-12)
	assert.InEpsilon(t, 0.07690355735353692, serial.P, 1e-10)
	assert.Nil(t, MannKendall(mixed[:9]), "too few")
	assert.Nil(t, VonNeumann(mixed[:9]), "too few")
}

// Rising values: S is all pairs, and by hand z = (45 − 1)/√125 of ten.
func TestRising(t *testing.T) {
	x := []float64{1, 2, 3, 4, 5, 6, 7, 8, 9, 10}
	trend := MannKendall(x)
	assert.Equal(t, 45.0, trend.S)
	assert.Equal(t, 1.0, trend.Tau)
	assert.InEpsilon(t, math.Erfc(44/math.Sqrt(125)/math.Sqrt2), trend.P, 1e-12)
	// By hand: nine steps of 1, squares about the mean 82.5.
	assert.InEpsilon(t, 9/82.5, VonNeumann(x).Ratio, 1e-14)
}

// The counting while sorting is the counting of all pairs, also with ties.
func TestMannKendallPairs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		whole := rapid.SliceOfN(rapid.IntRange(0, rapid.IntRange(1, 30).Draw(t, "different")), 10, 60).Draw(t, "x")
		x := make([]float64, len(whole))
		s := 0
		for j := range whole {
			x[j] = float64(whole[j])
			for i := range j {
				switch {
				case whole[j] > whole[i]:
					s++
				case whole[j] < whole[i]:
					s--
				}
			}
		}
		trend := MannKendall(x)
		if trend == nil {
			for _, v := range x {
				require.Equal(t, x[0], v, "only equal values have no trend")
			}
			return
		}
		require.Equal(t, float64(s), trend.S)
		require.True(t, trend.P > 0 && trend.P <= 1)
		back := make([]float64, len(x))
		for i := range x {
			back[len(x)-1-i] = x[i]
		}
		require.Equal(t, -trend.S, MannKendall(back).S, "backwards")
	})
}

// A great offset takes nothing from the tests, and ten thousand values are tested in a moment.
func TestManyWithOffset(t *testing.T) {
	x, y := make([]float64, 10000), make([]float64, 10000)
	for i := range x {
		x[i] = float64((i * 7919) % 1009)
		y[i] = x[i] + 1e9
	}
	assert.Equal(t, MannKendall(x), MannKendall(y))
	assert.InEpsilon(t, VonNeumann(x).Ratio, VonNeumann(y).Ratio, 1e-12)
	assert.InEpsilon(t, AndersonDarling(x).A2, AndersonDarling(y).A2, 1e-9)
	assert.Equal(t, Outliers(x), Outliers(y))
}
