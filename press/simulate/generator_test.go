package simulate

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/stat/distuv"
	"pgregory.net/rapid"

	"ramplan/press/stack"
)

// The generator gives the bits of the standard library's, from every state.
func TestGeneratorIsTheLibrarys(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := generator{rapid.Uint64().Draw(t, "high"), rapid.Uint64().Draw(t, "low")}
		library := rand.NewPCG(g.hi, g.lo)
		for range 20 {
			var x uint64
			g, x = g.next()
			require.Equal(t, library.Uint64(), x)
		}
	})
}

// The finaliser gives the first numbers of SplitMix64 from the seed 1234567 (values from
// memory, as they stand in public test vectors).
func TestMix(t *testing.T) {
	for i, want := range []uint64{6457827717110365317, 3203168211198807973, 9817491932198370423} {
		assert.Equal(t, want, mix(1234567+uint64(i+1)*weyl))
	}
}

// Neighbouring seeds and streams share no bits: of the 128 of two states about half
// differ (by chance under 30 in 1e-9 of the pairs).
func TestStreamsLieApart(t *testing.T) {
	differ := func(a, b generator) int {
		return ones(a.hi^b.hi) + ones(a.lo^b.lo)
	}
	for n := range uint64(1000) {
		assert.Greater(t, differ(newStream(n, 0), newStream(n+1, 0)), 30)
		assert.Greater(t, ones(newStream(1, n).lo^newStream(1, n+1).lo), 8)
	}
}

func ones(x uint64) int {
	n := 0
	for ; x != 0; x &= x - 1 {
		n++
	}
	return n
}

// The 256 layers close at the density's peak, and have one area.
func TestZigguratCloses(t *testing.T) {
	x := func(i int) float64 { return zigguratWidth[i] * 0x1p54 }
	area := x(0) * math.Exp(-tailFrom*tailFrom/2)
	for i := 1; i < layers; i++ {
		assert.InDelta(t, area, x(i)*(zigguratHeight[i+1]-zigguratHeight[i]), 1e-12, "layer %d", i)
		assert.Equal(t, x(i), zigguratInner[i-1])
	}
	assert.InDelta(t, 0.00492867323399, area, 1e-13, "as Marsaglia and Tsang print it")
	assert.Zero(t, zigguratInner[layers-1])
}

// fits holds draws to a distribution: by chi-square over equal shares, and by counts far
// out. The draws are the same each time.
func fits(t *testing.T, name string, draws []float64, cdf func(float64) float64) {
	t.Helper()
	const cells = 200
	counts := make([]float64, cells)
	for _, x := range draws {
		counts[min(int(cdf(x)*cells), cells-1)]++
	}
	want := float64(len(draws)) / cells
	chi := 0.0
	for _, n := range counts {
		chi += (n - want) * (n - want) / want
	}
	assert.Less(t, chi, distuv.ChiSquared{K: cells - 1}.Quantile(0.999), "%s: χ²", name)
	assert.Greater(t, chi, distuv.ChiSquared{K: cells - 1}.Quantile(0.001), "%s: χ²", name)
	for _, share := range []float64{1e-5, 1e-4, 1e-3} {
		for _, upper := range []bool{false, true} {
			n := 0
			for _, x := range draws {
				if p := cdf(x); !upper && p < share || upper && p > 1-share {
					n++
				}
			}
			assert.InDelta(t, share, float64(n)/float64(len(draws)), near(share, int64(len(draws))), "%s beyond %v", name, share)
		}
	}
}

func TestDrawsFollowTheirLaws(t *testing.T) {
	const n = 1_000_000
	draws := make([]float64, n)
	g := newStream(42, 0)
	for name, c := range map[string]struct {
		add func([]float64, float64)
		cdf func(float64) float64
	}{
		"normal":     {g.addNormal, func(x float64) float64 { return distuv.Normal{Sigma: 0.5}.CDF(x) }},
		"uniform":    {g.addUniform, func(x float64) float64 { return (x + 0.5) }},
		"triangular": {g.addTriangular, func(x float64) float64 { return triangle{-0.5, 0, 0.5}.below(x) }},
	} {
		g = newStream(42, uint64(len(name)))
		clear(draws)
		c.add(draws, 0.5)
		fits(t, name, draws, c.cdf)
	}
	g.fillOpen(draws)
	q := joint{forceLow: 1, forceMode: 2, forceHigh: 5}
	for i, u := range draws {
		draws[i] = q.measured(u)
	}
	fits(t, "measured", draws, triangle{1, 2, 5}.below)
}

// Draws beside each other, and of both signs of one place, are not correlated.
func TestDrawsAreNotCorrelated(t *testing.T) {
	const n = 1_000_000
	draws := make([]float64, n)
	g := newStream(7, 3)
	g.addNormal(draws, 1)
	for _, lag := range []int{1, 2, 255, 256} {
		sum, square := 0.0, 0.0
		for i := lag; i < n; i++ {
			sum += draws[i] * draws[i-lag]
			square += draws[i] * draws[i] * draws[i-lag] * draws[i-lag]
		}
		assert.Less(t, math.Abs(sum), 4*math.Sqrt(square), "lag %d", lag)
	}
}

// Rows of one proportion are one group, and the group's rows spread as they did.
func TestGroups(t *testing.T) {
	both := sums{contact: 1, seat: 1, height: 1}
	twice := sums{contact: -2, seat: -2, height: -2}
	lead := sums{contact: 1, travel: 1}
	all := groups([]row{{both, stack.Uniform, 0.1}, {twice, stack.Normal, 0.1}, {lead, stack.Triangular, 0.3}})
	require.Len(t, all, 2)
	assert.Equal(t, group{both, []row{{both, stack.Uniform, 0.1}, {twice, stack.Normal, 0.2}}}, all[0])
	assert.Equal(t, lead, all[1].of)
	assert.True(t, slices.Equal([]row{{lead, stack.Triangular, 0.3}}, all[1].rows))
}
