package risk_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/risk"
	"ramplan/press/stack"
)

func row(mean, half float64, shape stack.Shape) stack.Term {
	return stack.Term{Row: stack.Row{Mean: mean, Half: half, Shape: shape, Sigmas: 3}, Times: 1}
}

// convolve is the slow way: a fine walk over the heights, each with its share
// of all parts by the distribution function and its chance at the middle.
func convolve(p risk.Population, w risk.Window) (consumer, producer float64) {
	const n = 200000
	first, last := p.Height.Support()
	step := (last - first) / n
	below := 0.0
	for i := range n {
		above := p.Height.CDF(first + step*float64(i+1))
		c := first + step*(float64(i)+0.5)
		share, a := above-below, w.Accept(p.Base-c)
		below = above
		if c < p.Low || c > p.High {
			consumer += share * a
		} else {
			producer += share * (1 - a)
		}
	}
	return consumer, producer
}

// The risks of all parts equal a fine convolution.
func TestGlobalEqualsAFineConvolution(t *testing.T) {
	r := rand.New(rand.NewPCG(4, 4))
	for range 25 {
		var product []stack.Term
		for range 1 + r.IntN(4) {
			product = append(product, row(5*r.Float64(), 0.1*r.Float64(), stack.Shape(r.IntN(3))))
		}
		var noise []stack.Term
		for range r.IntN(3) {
			noise = append(noise, row(0, 0.03*r.Float64(), stack.Shape(r.IntN(3))))
		}
		height := stack.NewSum(product)
		sigma := 0.02 * r.Float64()
		if r.IntN(4) == 0 && len(noise) > 0 {
			sigma = 0
		}
		p := risk.Population{Height: height, Low: height.Mean() - 0.1*r.Float64(), High: height.Mean() + 0.1*r.Float64(), Base: 100}
		mid := 100 - height.Mean() + 0.05*(r.Float64()-0.5)
		w := risk.Window{Low: mid - 0.08*r.Float64(), High: mid + 0.08*r.Float64(), Error: stack.NewError(sigma, noise)}
		consumer, producer := p.Global(w)
		slowConsumer, slowProducer := convolve(p, w)
		// Derived: the walk's cells are of about 1e-6 mm and cut at the limits by their middles.
		require.InDelta(t, slowConsumer, consumer, 3e-5)
		require.InDelta(t, slowProducer, producer, 3e-5)
		require.InDelta(t, p.Conforming(), height.CDF(p.High)-height.CDF(p.Low), 1e-12)
	}
}

// A wider window never accepts less.
func TestWiderAcceptsMore(t *testing.T) {
	e := stack.NewError(0.01, []stack.Term{row(0, 0.02, stack.Uniform)})
	for _, r := range []float64{-0.1, -0.05, 0, 0.02, 0.08} {
		before := 0.0
		for width := 0.0; width < 0.2; width += 0.001 {
			a := risk.Window{Low: -width, High: width / 2, Error: e}.Accept(r)
			assert.GreaterOrEqual(t, a, before-1e-13)
			before = a
		}
	}
}

func TestWithoutSpread(t *testing.T) {
	point := stack.NewSum([]stack.Term{row(25, 0, stack.Uniform)})
	exact := stack.NewError(0, nil)
	at := func(low, high float64) (float64, float64) {
		return risk.Population{Height: point, Low: low, High: high, Base: 140}.
			Global(risk.Window{Low: 114.9, High: 115, Error: exact})
	}
	consumer, producer := at(25, 25.1) // on both limits, which are inside
	assert.Equal(t, [2]float64{0, 0}, [2]float64{consumer, producer})
	consumer, producer = at(25.01, 25.1)
	assert.Equal(t, [2]float64{1, 0}, [2]float64{consumer, producer})

	spread := stack.NewSum([]stack.Term{row(25, 0.1, stack.Uniform)})
	consumer, producer = risk.Population{Height: spread, Low: 24.95, High: 25.05, Base: 140}.
		Global(risk.Window{Low: 114.98, High: 115.08, Error: exact})
	// Derived: of the width 0.2, 24.92 to 24.95 passes wrongly, 25.02 to 25.05 is refused.
	assert.InDelta(t, 0.15, consumer, 1e-9)
	assert.InDelta(t, 0.15, producer, 1e-9)
}

func TestEmptyWindowRefusesAll(t *testing.T) {
	p := risk.Population{Height: stack.NewSum([]stack.Term{row(25, 0.1, stack.Uniform)}), Low: 24.9, High: 25.1, Base: 140}
	consumer, producer := p.Global(risk.Window{Empty: true})
	assert.Zero(t, consumer)
	assert.InDelta(t, 1, producer, 1e-12)
}

func TestLimitSamples(t *testing.T) {
	w := risk.Window{Low: 115, High: 115.2, Error: stack.NewError(0.01, nil)}
	l := w.Limits(0.999)
	require.True(t, l.HasGood)
	// Derived: far from the other edge, 3.0902 standard deviations (normal quantile of 0.999).
	assert.InDelta(t, 115-0.030902, l.Low, 1e-6)
	assert.InDelta(t, 115.2+0.030902, l.High, 1e-6)
	assert.InDelta(t, 115+0.030902, l.GoodLow, 1e-6)
	assert.InDelta(t, 0.999, w.Accept(l.GoodHigh), 1e-9)
	assert.InDelta(t, 0.001, w.Accept(l.Low), 1e-9)

	narrow := risk.Window{Low: 115, High: 115.00001, Error: stack.NewError(0.01, nil)}
	l = narrow.Limits(0.999)
	assert.False(t, l.HasGood)
	assert.True(t, l.EvenMiddleIsRefused)
	assert.InDelta(t, 115.000005, l.Low, 1e-9)

	exact := risk.Window{Low: 115, High: 115.2, Error: stack.NewError(0, nil)}
	l = exact.Limits(0.999)
	assert.InDelta(t, 115, l.Low, 1e-12)
	assert.InDelta(t, 115.2, l.GoodHigh, 1e-12)
}

func TestNothingIsNotANumber(t *testing.T) {
	for _, scale := range []float64{1e-9, 1, 1e6} {
		p := risk.Population{Height: stack.NewSum([]stack.Term{row(0, scale, stack.Triangular)}), Low: -scale / 2, High: scale / 3}
		consumer, producer := p.Global(risk.Window{Low: -scale, High: scale / 5, Error: stack.NewError(scale/7, nil)})
		assert.False(t, math.IsNaN(consumer+producer))
		assert.GreaterOrEqual(t, consumer, 0.0)
		assert.LessOrEqual(t, consumer+producer, 1.0)
	}
}

func BenchmarkGlobal(b *testing.B) {
	p := risk.Population{Height: stack.NewSum([]stack.Term{row(22, 0.02, stack.Normal), row(3, 0.015, stack.Uniform)}), Low: 24.91, High: 25.09, Base: 140.13}
	w := risk.Window{Low: 115.08, High: 115.19, Error: stack.NewError(0.0126, []stack.Term{row(0, 0.01, stack.Uniform)})}
	b.ReportAllocs()
	for b.Loop() {
		p.Global(w)
	}
}
