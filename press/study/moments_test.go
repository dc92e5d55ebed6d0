package study

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// NumAcc are the sets with which NIST StRD tries the digits of a mean and a standard
// deviation; their values are exact in decimals (from memory; the certified answers follow by
// hand).
func TestNumAcc(t *testing.T) {
	alternating := func(first, low, high float64, n int) []float64 {
		x := []float64{first}
		for i := 1; i < n; i++ {
			x = append(x, []float64{high, low}[i%2])
		}
		return x
	}
	for name, c := range map[string]struct {
		x        []float64
		mean, sd float64
		digits   float64 // relative, of the standard deviation: what the decimals leave of it in binary
	}{
		"NumAcc1": {[]float64{10000001, 10000003, 10000002}, 10000002, 1, 1e-15},
		"NumAcc2": {alternating(1.2, 1.1, 1.3, 1001), 1.2, 0.1, 1e-14},
		"NumAcc3": {alternating(1000000.2, 1000000.1, 1000000.3, 1001), 1000000.2, 0.1, 1e-9},
		"NumAcc4": {alternating(10000000.2, 10000000.1, 10000000.3, 1001), 10000000.2, 0.1, 1e-8},
	} {
		assert.InEpsilon(t, c.mean, Mean(c.x), 1e-15, name)
		assert.InEpsilon(t, c.sd, *SD(c.x), c.digits, name)
	}
}

func TestFewAndEqual(t *testing.T) {
	assert.Nil(t, SD(nil))
	assert.Nil(t, SD([]float64{3}))
	assert.Panics(t, func() { Mean(nil) })
	for _, v := range []float64{0.1, -3e8 / 7, 140.049, 1e-300} {
		x := make([]float64, 10000)
		for i := range x {
			x[i] = v
		}
		assert.Equal(t, v, Mean(x), "equal values")
		assert.Zero(t, *SD(x), "equal values")
		assert.Nil(t, MannKendall(x))
		assert.Nil(t, VonNeumann(x))
		assert.Nil(t, AndersonDarling(x))
		assert.Nil(t, ProcessPerformance(x, v-1, v+1))
		assert.Empty(t, Outliers(x))
	}
	assert.InDelta(t, 2.4, HarmonicMean([]int{2, 3}), 1e-15, "by hand: 2/(1/2 + 1/3)")
	assert.Zero(t, HarmonicMean(nil))
}

// An offset common to all moves the mean and nothing else; a unit scales both.
func TestOffsetAndUnit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.SliceOfN(rapid.IntRange(-1000, 1000), 2, 40).Draw(t, "x")
		offset := float64(rapid.IntRange(-1e9, 1e9).Draw(t, "offset"))
		a, b, c := make([]float64, len(x)), make([]float64, len(x)), make([]float64, len(x))
		for i := range x {
			a[i], b[i], c[i] = float64(x[i]), float64(x[i])+offset, 8*float64(x[i])
		}
		require.InDelta(t, Mean(a)+offset, Mean(b), 1e-15*math.Abs(offset)+1e-12)
		require.InDelta(t, *SD(a), *SD(b), 1e-12*(1+*SD(a)))
		require.InDelta(t, 8**SD(a), *SD(c), 1e-12*(1+*SD(a)))
	})
}

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }
