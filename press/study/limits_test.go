package study

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestSDLimits: SciPy 1.10.1, sqrt(df/chi2.ppf(q, df)) at q = 0.975, 0.025 and 0.05, and
// chi2.sf(1.5*df, df) (derived).
func TestSDLimits(t *testing.T) {
	for _, c := range []struct{ df, low, high, upper, p float64 }{
		{2, 0.520658266698817, 6.28473469648538, 4.4153964427018, 0.22313016014843},
		{9, 0.687835206749, 1.82561018251957, 1.64519757439422, 0.14125582649328},
		{24, 0.780828370220409, 1.39115216750688, 1.31645321289676, 0.0548874244881891},
		{999, 0.958012349125163, 1.04586535739744, 1.03831539616412, 1.09660269382824e-22},
		{9999, 0.986331237499758, 1.01405564877282, 1.01177922293745, 6.20252023981574e-208},
	} {
		l := SDLimits(0.01, c.df)
		assert.InEpsilon(t, 0.01*c.low, l[0], 1e-12, "%v", c.df)
		assert.InEpsilon(t, 0.01*c.high, l[1], 1e-12, "%v", c.df)
		assert.InEpsilon(t, 0.01*c.upper, SDUpper(0.01, c.df), 1e-12, "%v", c.df)
		// s² = 1.5σ²
		assert.InEpsilon(t, c.p, SDAgainst(1.224744871391589, c.df, 1), 1e-9, "%v", c.df)
	}
	assert.Equal(t, [2]float64{}, SDLimits(0, 4))
	assert.Equal(t, 1.0, SDAgainst(0, 4, 0), "nothing planned, nothing scatters")
	assert.Zero(t, SDAgainst(1e-9, 4, 0), "nothing planned, something scatters")
	assert.Equal(t, 1.0, SDAgainst(0, 4, 0.1))
	assert.Zero(t, SDAgainst(1e200, 4, 1e-200))
}
