package study

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestAndersonDarling: A² is scipy.stats.anderson(x).statistic of SciPy 1.10.1 (derived); B by
// hand from it.
func TestAndersonDarling(t *testing.T) {
	for _, c := range []struct {
		x     []float64
		a2, b float64
	}{
		{mixed, 2.19956148667521, 2.3315351758757243},
		{rosner, 1.73568916284344, 1.7611352231011708},
	} {
		got := AndersonDarling(c.x)
		require.NotNil(t, got)
		assert.InEpsilon(t, c.a2, got.A2, 1e-10)
		assert.InEpsilon(t, c.b, got.A2Adjusted, 1e-10)
		assert.InEpsilon(t, math.Exp(1.2937-5.709*c.b+0.0186*c.b*c.b), got.P, 1e-9)
	}
	assert.Nil(t, AndersonDarling(mixed[:7]), "too few")
}

// TestAndersonDarlingP: D'Agostino & Stephens 1986, table 4.7 (from memory): 0.631 leaves 10 %,
// 0.752 5 %, 0.873 2.5 %, 1.035 1 %. The formula keeps to them within 3 %.
func TestAndersonDarlingP(t *testing.T) {
	for b, p := range map[float64]float64{0.631: 0.1, 0.752: 0.05, 0.873: 0.025, 1.035: 0.01} {
		assert.InEpsilon(t, p, andersonDarlingP(b), 0.05, "%v", b)
	}
	for b := 0.0; b < 200; b += 0.001 {
		p := andersonDarlingP(b)
		require.True(t, p >= 0 && p <= 1, "p of %v is %v", b, p)
	}
	// By hand from the four pieces, at and beside their ends.
	assert.InEpsilon(t, math.Exp(1.2937-5.709*0.6+0.0186*0.36), andersonDarlingP(0.6), 1e-15)
	assert.InEpsilon(t, math.Exp(0.9177-4.279*0.5-1.38*0.25), andersonDarlingP(0.5), 1e-15)
	assert.InEpsilon(t, 1-math.Exp(-8.318+42.796*0.34-59.938*0.34*0.34), andersonDarlingP(0.34), 1e-14)
	assert.InEpsilon(t, 1-math.Exp(-13.436+101.14*0.2-223.73*0.2*0.2), andersonDarlingP(0.2), 1e-14)
	assert.Zero(t, andersonDarlingP(153), "from there on the polynomial would rise again")
}

// Coarse readings are not judged: the step is held against a quarter of the deviation.
func TestCoarse(t *testing.T) {
	fine := []float64{1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16} // s = 4.76: a step of 1 is under s/4
	assert.NotNil(t, AndersonDarling(fine))
	assert.Nil(t, AndersonDarling([]float64{1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13}), "s = 3.89")
}

// One value among ten thousand that is far out: Φ of it is no number, its logarithm is.
func TestFarOut(t *testing.T) {
	x := make([]float64, 10000)
	for i := range x {
		x[i] = float64(i%100) * 1e-9
	}
	x[5000] = 1
	got := AndersonDarling(x)
	require.NotNil(t, got)
	assert.False(t, math.IsInf(got.A2, 0) || math.IsNaN(got.A2), "A² is %v", got.A2)
	assert.Zero(t, got.P)
	// By hand: to the right and to the left of where the expansion begins.
	assert.InEpsilon(t, logPhi(-34.999999), logPhi(-35.000001), 1e-6)
	assert.InEpsilon(t, math.Log(0.5), logPhi(0), 1e-15)
	tail := math.Erfc(6/math.Sqrt2) / 2
	assert.InEpsilon(t, -tail-tail*tail/2, logPhi(6), 1e-15)
}
