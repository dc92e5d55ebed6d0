package study

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// spreads scatter exactly by a tolerance and a constant part, one standard deviation each.
func spreads(share, constant, df float64) []Spread {
	var all []Spread
	for _, f := range []float64{200, 500, 1000, 2000, 2600} {
		all = append(all, Spread{DF: df, SD: math.Hypot(share*f, constant), X: f * f})
	}
	return all
}

// Scatter that is just what two parts make is split into them, if there are enough pushes to
// tell; κ² is then the mean variance (by hand).
func TestSplitVariance(t *testing.T) {
	for _, c := range []struct{ share, constant float64 }{{0.02, 10}, {0.02, 0}, {0, 10}, {0.01, 40}} {
		groups := spreads(c.share, c.constant, 400)
		meanX := (200*200 + 500*500 + 1000*1000 + 2000*2000 + 2600*2600) / 5.0
		truth := c.share * c.share * meanX / (c.share*c.share*meanX + c.constant*c.constant)
		assumed := 0.5
		if math.Abs(truth-0.5) < 0.3 {
			assumed = 1
		}
		s := SplitVariance(groups, assumed)
		require.NotNil(t, s)
		assert.True(t, s.Fitted, "%v", c)
		assert.InDelta(t, truth, s.Share, 1e-6, "%v", c)
		assert.Equal(t, 1999.0, s.DF, "one is spent on the share")
		assert.InEpsilon(t, (c.share*c.share*meanX+c.constant*c.constant)*2000/1999, square(s.Kappa), 1e-6)
		for _, g := range groups {
			assert.InEpsilon(t, square(g.SD)*2000/1999, square(s.Kappa)*s.At(g.X), 1e-5)
		}

		few := SplitVariance(spreads(c.share, c.constant, 1), 0.7)
		assert.False(t, few.Fitted, "five degrees of freedom cannot tell: %v", c)
		assert.Equal(t, 0.7, few.Share)
		assert.Equal(t, 5.0, few.DF)
	}
}

// The share found is the best of a fine grid, and no group without degrees of freedom counts.
func TestSplitLikeliest(t *testing.T) {
	groups := []Spread{{30, 4.1, 200 * 200}, {30, 9.2, 500 * 500}, {0, 1e9, 900 * 900}, {40, 13.5, 1000 * 1000}, {35, 47, 2000 * 2000}}
	s := SplitVariance(groups, 0)
	require.True(t, s.Fitted)
	top := s.likelihood(groups, s.Share)
	for i := range 100001 {
		require.LessOrEqual(t, s.likelihood(groups, float64(i)/1e5), top+1e-12)
	}
	assert.Equal(t, 134.0, s.DF)
}

func TestSplitSpecialCases(t *testing.T) {
	assert.Nil(t, SplitVariance(nil, 1))
	assert.Nil(t, SplitVariance([]Spread{{0, 0, 5}}, 1))
	still := SplitVariance([]Spread{{4, 0, 5}, {4, 0, 50}}, 0.3)
	assert.Zero(t, still.Kappa)
	assert.Equal(t, 0.3, still.Share)
	assert.False(t, still.Fitted)
	// By hand: nothing to grow with; κ² = (4·1 + 4·9)/8.
	flat := SplitVariance([]Spread{{4, 1, 0}, {4, 3, 0}}, 1)
	assert.Zero(t, flat.Share)
	assert.InEpsilon(t, math.Sqrt(5), flat.Kappa, 1e-15)
	assert.Equal(t, 1.0, flat.At(0))
	// One group scatters where nothing can under the assumed split: the data tell.
	there := SplitVariance([]Spread{{4, 1, 0}, {4, 3, 100}}, 1)
	assert.True(t, there.Fitted)
	assert.True(t, finite(there.Kappa))
	one := SplitVariance([]Spread{{1, 2, 100}}, 0.4)
	assert.False(t, one.Fitted, "one setting tells nothing of a share")
	assert.InEpsilon(t, 2, one.Kappa, 1e-15)
}
