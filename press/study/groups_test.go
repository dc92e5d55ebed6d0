package study

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var uneven = [][]float64{{1.1, 1.3, 1.2}, {1.6, 1.8}, {1.0, 0.9, 1.4, 1.2}}

// TestGroups: F and p are scipy.stats.f_oneway(*uneven) of SciPy 1.10.1 (derived), the rest by
// hand.
func TestGroups(t *testing.T) {
	g := AnalyseGroups(uneven)
	assert.InEpsilon(t, 7.488888888888891, *g.F, 1e-12)
	assert.InEpsilon(t, 0.023397815365129825, *g.P, 1e-9)
	assert.Equal(t, []float64{2, 6}, []float64{g.DF1, g.DF2})
	assert.InDeltaSlice(t, []float64{1.2, 1.7, 1.125}, g.Means, 1e-15)
	assert.InEpsilon(t, 3/(1.0/3+1.0/2+1.0/4), g.Harmonic, 1e-15)
	// n₀ = (9 − (9 + 4 + 16)/9)/2; MSW = (0.02 + 0.02 + 0.1475)/6
	within := (0.02 + 0.02 + 0.1475) / 6
	assert.InEpsilon(t, within, g.Within, 1e-12)
	assert.InEpsilon(t, within, square(*g.SDWithin), 1e-12)
	assert.InEpsilon(t, (g.Between-within)/((9-29.0/9)/2), square(*g.SDBetween), 1e-12)

	alike := AnalyseGroups([][]float64{{1, 3}, {1.5, 2.5}})
	assert.Zero(t, *alike.SDBetween, "means closer than the scatter: nothing is added")
}

func TestGroupsOfFew(t *testing.T) {
	assert.Nil(t, AnalyseGroups(nil))
	for name, groups := range map[string][][]float64{
		"one each": {{1}, {2}, {4}}, "nothing varies within": {{1, 1}, {2, 2}}, "nothing varies": {{1, 1}, {1, 1}},
	} {
		g := AnalyseGroups(groups)
		require.NotNil(t, g, name)
		assert.Nil(t, g.F, name)
		assert.Nil(t, g.P, name)
		assert.NotNil(t, g.SD, name)
	}
	one := AnalyseGroups([][]float64{{1, 2, 4}})
	assert.Nil(t, one.F)
	assert.Nil(t, one.SD)
	assert.Nil(t, one.SDBetween)
	assert.NotNil(t, one.SDWithin)
}

// TestWelch: half width by t.ppf(0.975, df)·√(s²/n + s²/n) with SciPy 1.10.1 (derived).
func TestWelch(t *testing.T) {
	d, limits := Welch(uneven[0], uneven[2])
	require.NotNil(t, limits)
	assert.InEpsilon(t, 0.07500000000000018, d, 1e-12)
	assert.InEpsilon(t, -0.260874511601964, limits[0], 1e-9)
	assert.InEpsilon(t, 0.41087451160196437, limits[1], 1e-9)

	d, limits = Welch([]float64{3, 4}, []float64{1})
	assert.Equal(t, 2.5, d)
	assert.Nil(t, limits, "one value has no spread")
	_, limits = Welch([]float64{3, 3}, []float64{1, 1})
	assert.Equal(t, &[2]float64{2, 2}, limits)
	_, limits = Welch([]float64{0, 1e-100}, []float64{0, 3e-100})
	assert.Less(t, limits[0], limits[1])
	assert.True(t, finite(limits[0]))
}
