package stack

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/integrate/quad"
)

func uniform(half float64) Term { return Term{Row{Half: half}, 1} }

func normal(sigma float64) Term { return Term{Row{Half: sigma, Shape: Normal, Sigmas: 1}, 1} }

// exactUniforms is the distribution function of a sum of uniforms about 0 by the
// alternating formula in 400 bits:
//
//	F(x) = Σ ± (x ± a ± a …)₊ⁿ / (n! Π 2a)
func exactUniforms(widths []float64, x float64) float64 {
	big400 := func(v float64) *big.Float { return new(big.Float).SetPrec(400).SetFloat64(v) }
	total := big400(0)
	for mask := range 1 << len(widths) {
		z, sign := big400(x), 1.0
		for i, a := range widths {
			if mask>>i&1 == 0 {
				z.Add(z, big400(a))
			} else {
				z.Sub(z, big400(a))
				sign = -sign
			}
		}
		if z.Sign() <= 0 {
			continue
		}
		power := big400(sign)
		for range widths {
			power.Mul(power, z)
		}
		total.Add(total, power)
	}
	for i, a := range widths {
		total.Quo(total, big400(2*a*float64(i+1)))
	}
	v, _ := total.Float64()
	return v
}

// smoothed is the distribution function of a normal with uniforms about 0 by
// repeated averaging, a route that shares nothing with the series.
func smoothed(sigma float64, widths []float64, x float64) float64 {
	if len(widths) == 0 {
		return math.Erfc(-x/sigma/math.Sqrt2) / 2
	}
	a, rest := widths[0], widths[1:]
	panels := int(math.Ceil(a/sigma)) + 1
	var v float64
	for i := range panels {
		lo := x - a + 2*a*float64(i)/float64(panels)
		v += quad.Fixed(func(y float64) float64 { return smoothed(sigma, rest, y) }, lo, lo+2*a/float64(panels), 20, nil, 0)
	}
	return v / (2 * a)
}

func TestSumsOfUniformsAreExact(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 1))
	for range 400 {
		n := 1 + r.IntN(9)
		widths, terms := make([]float64, n), make([]Term, n)
		for i := range widths {
			widths[i] = math.Exp(-7 * r.Float64() * r.Float64())
			terms[i] = uniform(widths[i])
		}
		s := NewSum(terms)
		for range 20 {
			x := (2*r.Float64() - 1) * sum(widths)
			// Derived: the alternating formula in 400 bits.
			require.InDelta(t, exactUniforms(widths, x), s.CDF(x), 2e-10, "widths %v at %v, %d boxes", widths, x, s.m)
		}
	}
}

func TestNormalWithUniformsIsExact(t *testing.T) {
	r := rand.New(rand.NewPCG(2, 1))
	for range 120 {
		sigma := math.Exp(-5 * r.Float64())
		widths, terms := []float64{}, []Term{normal(sigma)}
		for range r.IntN(3) {
			a := math.Exp(-5 * r.Float64())
			widths, terms = append(widths, a), append(terms, uniform(a))
		}
		s := NewSum(terms)
		for range 10 {
			x := (2*r.Float64() - 1) * s.reach
			// Derived: repeated averaging by Gauss's rule.
			require.InDelta(t, smoothed(sigma, widths, x), s.CDF(x), 2e-10, "sigma %v widths %v at %v", sigma, widths, x)
		}
	}
}

// A triangular row is a uniform one of half its width added to itself.
func TestTriangularRow(t *testing.T) {
	s := NewSum([]Term{{Row{Mean: 5, Half: 2, Shape: Triangular}, -1}})
	assert.InDelta(t, -5, s.Mean(), 1e-12)
	// Derived: the triangle's area left of x is (x+2)²/8 below its middle.
	for _, x := range []float64{-2, -1.5, -1, -0.2, 0} {
		assert.InDelta(t, square(x+2)/8, s.CDF(x-5), 1e-11)
		assert.InDelta(t, (x+2)/4, s.PDF(x-5), 1e-9)
	}
}

// Widths a thousandfold apart without a normal row among them are not lost: within the
// wide one, further from its ends than the narrow ones reach, they make no difference.
func TestWidthsFarApart(t *testing.T) {
	triangular := func(half float64) Term { return Term{Row{Half: half, Shape: Triangular}, 1} }
	for _, narrow := range [][]Term{
		{triangular(0.00025)}, {triangular(1e-4)}, {uniform(2e-4), uniform(3e-5)}, {triangular(1e-5), uniform(3e-5)}, {triangular(1e-6)},
		{uniform(1e-3), uniform(9e-4), uniform(8e-4), uniform(1e-5)},
	} {
		s := NewSum(append([]Term{uniform(0.1)}, narrow...))
		require.False(t, s.Point())
		for x := -0.09; x < 0.095; x += 0.01 {
			// By hand: a uniform law of 0.2 mm.
			assert.InDelta(t, 0.5+x/0.2, s.CDF(x), 1e-8, "%v at %v", narrow, x)
			assert.InDelta(t, 5, s.PDF(x), 1e-3, "%v at %v", narrow, x)
		}
	}
}

func TestSumBecomesNormal(t *testing.T) {
	terms := make([]Term, 200)
	for i := range terms {
		terms[i] = uniform(1)
	}
	s := NewSum(terms)
	// Derived: normal with variance 200/3 and the first Edgeworth term, κ4/σ⁴ = −6/5/200.
	sd, kurt := math.Sqrt(200.0/3), -1.2/200
	for _, z := range []float64{-3, -2, -1, -0.5} {
		phi := math.Exp(-z*z/2) / math.Sqrt(2*math.Pi)
		want := math.Erfc(-z/math.Sqrt2)/2 - phi*kurt/24*(z*z*z-3*z)
		assert.InDelta(t, want, s.CDF(z*sd), 3e-6)
	}
}

func TestDensityIsTheSlope(t *testing.T) {
	for _, terms := range [][]Term{
		{normal(0.007), uniform(0.015)},
		{uniform(1), uniform(0.3), uniform(0.001)},
		{normal(1e-5), uniform(0.1)},
		{uniform(0.1), uniform(0.1), uniform(0.1), uniform(0.1), uniform(0.1)},
	} {
		s := NewSum(terms)
		lo, hi := s.Support()
		for i := 1; i < 60; i++ {
			x, h := lo+(hi-lo)*float64(i)/60.3, (hi-lo)*1e-6
			assert.InDelta(t, (s.CDF(x+h)-s.CDF(x-h))/(2*h), s.PDF(x), 2e-3/s.SD(), "%v at %v", terms, x)
		}
	}
}

func TestPointHasNoSpread(t *testing.T) {
	s := NewSum([]Term{{Row{Mean: 3}, 2}})
	assert.True(t, s.Point())
	assert.Equal(t, 0.0, s.CDF(5.99))
	assert.Equal(t, 1.0, s.CDF(6))
	assert.Equal(t, 1.0, s.CDF(6-5e-10))
}

func TestHeights(t *testing.T) {
	h := Add([]Term{{Row{Mean: 22, Half: 0.02, Shape: Normal, Sigmas: 3}, 1}, {Row{Mean: 3, Half: 0.015}, -2}})
	// Derived by hand: 22 − 6; 0.02 + 0.03; √(0.02² + 0.03²); √((0.02/3)² + 0.03²/3).
	assert.InDelta(t, 16, h.Mean, 1e-12)
	assert.InDelta(t, 0.05, h.Worst, 1e-15)
	assert.InDelta(t, 0.036055512755, h.RSS, 1e-12)
	assert.InDelta(t, 0.0185592145427, h.SD, 1e-12)
}

func BenchmarkNewSum(b *testing.B) {
	terms := []Term{normal(0.0067), uniform(0.015)}
	b.ReportAllocs()
	for b.Loop() {
		NewSum(terms)
	}
}

func BenchmarkCDF(b *testing.B) {
	s := NewSum([]Term{normal(0.0067), uniform(0.015)})
	for b.Loop() {
		s.CDF(0.01)
	}
}

// A wide uniform with two very narrow ones is next to the wide one alone: beyond its ends
// by more than the narrow ones reach there is nothing, and within all but them it rises in
// a straight line. By hand.
func TestWideWithVeryNarrow(t *testing.T) {
	for _, narrow := range []float64{1e-3, 1e-4, 6e-5, 1e-5, 1e-6, 1e-7} {
		s := NewSum([]Term{{Row{Half: 0.02}, 1}, {Row{Half: narrow, Shape: Triangular}, 1}})
		for _, x := range []float64{-0.0185, -0.01, 0, 0.003, 0.0185} {
			assert.InDelta(t, (x+0.02)/0.04, s.CDF(x), 2e-8, "%v at %v", narrow, x)
		}
		assert.InDelta(t, 25, s.PDF(0.01), 1e-4, "%v", narrow)
		assert.InDelta(t, 0, s.CDF(-0.0211), 1e-9, "%v", narrow)
	}
}
