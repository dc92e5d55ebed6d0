package study

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestGaugeSpecialCases(t *testing.T) {
	cg, cgk := ChosenGaugeRule.Indices(0.18, 0, 0.01)
	assert.Nil(t, cg)
	assert.Nil(t, cgk)
	assert.Equal(t, "0.2T/6s", ChosenGaugeRule.Name)
	// By hand: 0.2·0.18/(6·0.003) = 2, and (0.018 − 0.009)/0.009 = 1, on either side.
	for _, bias := range []float64{0.009, -0.009} {
		cg, cgk = ChosenGaugeRule.Indices(0.18, 0.003, bias)
		assert.InEpsilon(t, 2, *cg, 1e-14)
		assert.InEpsilon(t, 1, *cgk, 1e-12)
	}
	q, c := MeasuringSystem{}.Performance(0.18)
	assert.Zero(t, *q)
	assert.Nil(t, c, "nothing is uncertain")
	q, c = MeasuringSystem{SD: 1}.Performance(0)
	assert.Nil(t, q)
	assert.Nil(t, c)
	// By hand: of resolution and repeatability the larger counts: 0.012/√12 over 0.003.
	assert.InEpsilon(t, 0.0034641016151377544, MeasuringSystem{Resolution: 0.012, SD: 0.003}.Uncertainty(), 1e-14)
}

// TestPerformance: SciPy 1.10.1, sqrt(chi2.ppf(q, 9)/9) and norm.ppf(0.975) (derived), the rest
// by hand: mean 5.5, s² = 82.5/9.
func TestPerformance(t *testing.T) {
	p := ProcessPerformance([]float64{1, 2, 3, 4, 5, 6, 7, 8, 9, 10}, -5, 20)
	require.NotNil(t, p)
	const s = 3.0276503540974917
	assert.InEpsilon(t, 25/(6*s), p.Pp, 1e-14)
	assert.InEpsilon(t, 10.5/(3*s), p.Ppk, 1e-14)
	assert.InEpsilon(t, p.Pp/1.82561018251957, p.PpLimits[0], 1e-12)
	assert.InEpsilon(t, p.Pp/0.687835206749, p.PpLimits[1], 1e-12)
	assert.InEpsilon(t, 1.959963984540054*1.959963984540054*(1.0/90+p.Ppk*p.Ppk/18), square(p.PpkLimits[1]-p.Ppk), 1e-12)
	assert.InEpsilon(t, 2*p.Ppk, p.PpkLimits[0]+p.PpkLimits[1], 1e-14)
	assert.Nil(t, ProcessPerformance([]float64{1}, 0, 2))
}
