package study

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestQuantiles: SciPy 1.10.1, t.ppf(q, df) (derived); φ of one degree of freedom by hand,
// tan(0.475π).
func TestQuantiles(t *testing.T) {
	for _, c := range []struct{ q, df, want float64 }{
		{0.975, 1, 12.7062047364321}, {0.975, 2.5, 3.574654842011877}, {0.975, 28, 2.048407141795244},
		{0.97725, 28, 2.093328020084091}, {0.99999, 9997, 4.266938280273489}, {0.025, 7, -2.3646242510103}, {0.5, 3, 0},
	} {
		assert.InDelta(t, c.want, TQuantile(c.q, c.df), 1e-9, "%v of %v", c.q, c.df)
	}
	assert.InEpsilon(t, -TQuantile(0.975, 9), TQuantile(0.025, 9), 1e-14)
}

// TestProbabilities: SciPy 1.10.1, 2*t.sf(|t|, df) and f.sf(f, df1, df2) (derived).
func TestProbabilities(t *testing.T) {
	assert.InEpsilon(t, 0.1019394788298583, TwoSidedP(2, 5), 1e-12)
	assert.InEpsilon(t, 6.28107681179775e-07, TwoSidedP(-6.4, 28), 1e-12)
	assert.Equal(t, 1.0, TwoSidedP(0, 3))
	assert.Zero(t, TwoSidedP(1e200, 3), "far beyond")
	assert.InEpsilon(t, 0.1392974922444715, FUpperP(3, 2, 5), 1e-12)
	assert.InEpsilon(t, 2.278921298936382e-07, FUpperP(14.2, 6, 28), 1e-12)
	assert.InEpsilon(t, 1.499644471818994e-33, FUpperP(15.9, 24, 189), 1e-10)
	assert.InEpsilon(t, 1.09682210680021e-25, FUpperP(40, 3, 9990), 1e-10)
	assert.Equal(t, 1.0, FUpperP(0, 3, 4))
}
