package study

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func line(x []float64) [][]float64 {
	one := make([]float64, len(x))
	for i := range one {
		one[i] = 1
	}
	return [][]float64{one, x}
}

// A weight says how often a value was seen: whole weights give what repeated rows give, with
// other degrees of freedom (by hand).
func TestWeights(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(3, 8).Draw(t, "n")
		var x, y, w, rx, ry []float64
		for i := range n {
			x, y = append(x, float64(i)), append(y, float64(rapid.IntRange(-50, 50).Draw(t, "y")))
			times := rapid.IntRange(1, 4).Draw(t, "times")
			w = append(w, float64(times))
			for range times {
				rx, ry = append(rx, x[i]), append(ry, y[i])
			}
		}
		a, b := LeastSquares(line(x), y, w), LeastSquares(line(rx), ry, nil)
		require.NotNil(t, a)
		require.NotNil(t, b)
		require.InDeltaSlice(t, b.Coef, a.Coef, 1e-10)
		// Squares of mean weight 1 against squares of all rows; (XᵀX)⁻¹ likewise.
		squares := square(a.ResidualSD) * a.DF * Mean(w)
		require.InDelta(t, square(b.ResidualSD)*b.DF, squares, 1e-8)
		for j := range 2 {
			require.InDelta(t, square(*b.CoefSD(j))*b.DF, square(*a.CoefSD(j))*a.DF, 1e-8)
		}
		for i := range w {
			w[i] *= 1e-7
		}
		small := LeastSquares(line(x), y, w)
		require.InDeltaSlice(t, a.Coef, small.Coef, 1e-10, "only how weights stand to each other counts")
		require.InDelta(t, *a.CoefSD(1), *small.CoefSD(1), 1e-12*(1+*a.CoefSD(1)))
	})
}

// A parabola through three points with a fourth: by hand, residuals ±(−1, 3, −3, 1)·d.
func TestFit(t *testing.T) {
	x := []float64{0, 1, 2, 3}
	y := []float64{1 - 0.1, 2 + 0.3, 5 - 0.3, 10 + 0.1}
	f := LeastSquares([][]float64{{1, 1, 1, 1}, x, {0, 1, 4, 9}}, y, nil)
	require.NotNil(t, f)
	assert.InDeltaSlice(t, []float64{1, 0, 1}, f.Coef, 1e-13)
	assert.InDeltaSlice(t, []float64{-0.1, 0.3, -0.3, 0.1}, f.Residuals, 1e-13)
	assert.InEpsilon(t, math.Sqrt(0.2), f.ResidualSD, 1e-12)
	assert.Equal(t, 1.0, f.DF)
	tt, p := f.CoefT(2)
	// By hand: s_b = s/√Σ(x² − …)² = √0.2/2; p of t with one degree of freedom is 1 − 2·atan(t)/π.
	assert.InEpsilon(t, 2/math.Sqrt(0.2), *tt, 1e-12)
	assert.InEpsilon(t, 1-2*math.Atan(*tt)/math.Pi, *p, 1e-9)
	// At the first point the fitted value has the variance 1 − (1/√20)² of a residual's complement.
	assert.InEpsilon(t, f.ResidualSD*math.Sqrt(1-1.0/20), *f.ValueSD([]float64{1, 0, 0}), 1e-12)
	assert.InEpsilon(t, f.ResidualSD*math.Sqrt(1-9.0/20), *f.ValueSD([]float64{1, 2, 4}), 1e-12)
	assert.InEpsilon(t, f.ResidualSD*math.Sqrt(1-1.0/20), *f.ValueSD([]float64{1, 3, 9}), 1e-12)
}

func TestFitSpecialCases(t *testing.T) {
	assert.Nil(t, LeastSquares(nil, []float64{1}, nil))
	assert.Nil(t, LeastSquares(line([]float64{1}), []float64{1}, nil), "one value, two columns")
	assert.Nil(t, LeastSquares(line([]float64{2, 2, 2}), []float64{1, 2, 3}, nil), "a column follows from the other")
	assert.Nil(t, LeastSquares(line([]float64{0, 0, 0}), []float64{1, 2, 3}, nil), "a column of nothing")
	two := LeastSquares(line([]float64{1, 2}), []float64{5, 7}, nil)
	require.NotNil(t, two)
	assert.InDeltaSlice(t, []float64{3, 2}, two.Coef, 1e-14)
	assert.Nil(t, two.CoefSD(0))
	assert.Nil(t, two.ValueSD([]float64{1, 0}))
	tt, p := two.CoefT(1)
	assert.Nil(t, tt)
	assert.Nil(t, p)

	var x, y []float64
	for i := range 12 {
		x, y = append(x, 500+100*float64(i)), append(y, 140+float64(500+100*i)/18000)
	}
	exact := LeastSquares(line(x), y, nil)
	assert.Zero(t, exact.ResidualSD, "rounding noise is no scatter")
	tt, _ = exact.CoefT(1)
	assert.Nil(t, tt)
}

// Forces and positions with a great common offset, ten thousand of them.
func TestFitManyWithOffset(t *testing.T) {
	var x, y []float64
	for i := range 10000 {
		f := float64(i % 977)
		x, y = append(x, f), append(y, 3+f/64+float64(i%3-1)/8)
	}
	a := LeastSquares(line(x), y, nil)
	for i := range y {
		y[i] += 1 << 20
	}
	b := LeastSquares(line(x), y, nil)
	assert.InEpsilon(t, a.Coef[1], b.Coef[1], 1e-12)
	assert.InEpsilon(t, a.ResidualSD, b.ResidualSD, 1e-12)
	for i := range x {
		x[i] += 1 << 20
	}
	c := LeastSquares(line(x), y, nil)
	assert.InEpsilon(t, a.Coef[1], c.Coef[1], 1e-9)
	assert.InEpsilon(t, a.ResidualSD, c.ResidualSD, 1e-9)
}
