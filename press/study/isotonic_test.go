package study

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestIsotonic(t *testing.T) {
	// By hand: 3 and 2 pool to 2.5, which pools with neither 1 nor 4.
	assert.Equal(t, []Pool{{10, 1, 1, 1}, {25, 2.5, 2, 2}, {40, 4, 1, 1}},
		Isotonic([]float64{10, 20, 30, 40}, []float64{1, 3, 2, 4}, []float64{1, 1, 1, 1}))
	// By hand: weights 3 and 1.
	assert.Equal(t, []Pool{{12.5, 2.75, 4, 2}}, Isotonic([]float64{10, 20}, []float64{3, 2}, []float64{3, 1}))
	assert.Equal(t, []Pool{{15, 2, 2, 2}}, Isotonic([]float64{10, 20}, []float64{2, 2}, []float64{1, 1}), "equal ones pool too")
	// By hand: the last pulls all of them together.
	assert.Equal(t, []Pool{{2, 2, 3, 3}}, Isotonic([]float64{1, 2, 3}, []float64{3, 3, 0}, []float64{1, 1, 1}))
	assert.Empty(t, Isotonic(nil, nil, nil))
}

// Pools rise, keep the weighted mean, and are the best of all ways to cut the points into
// stretches that rise.
func TestIsotonicBest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 8).Draw(t, "n")
		x, y, w := make([]float64, n), make([]float64, n), make([]float64, n)
		for i := range n {
			x[i], y[i], w[i] = float64(i), float64(rapid.IntRange(0, 9).Draw(t, "y")), float64(rapid.IntRange(1, 4).Draw(t, "w"))
		}
		cost := func(sizes []int) (sum float64, rises bool) {
			from, last := 0, -1e300
			for _, size := range sizes {
				top, bottom := 0.0, 0.0
				for i := from; i < from+size; i++ {
					top, bottom = top+w[i]*y[i], bottom+w[i]
				}
				mean := top / bottom
				if mean <= last-1e-12 {
					return 0, false
				}
				for i := from; i < from+size; i++ {
					sum += w[i] * square(y[i]-mean)
				}
				from, last = from+size, mean
			}
			return sum, true
		}
		var sizes []int
		pools := Isotonic(x, y, w)
		for i, p := range pools {
			sizes = append(sizes, p.Points)
			require.True(t, i == 0 || pools[i-1].Y < p.Y, "rises strictly")
		}
		got, rises := cost(sizes)
		require.True(t, rises)
		for cuts := range 1 << (n - 1) {
			sizes := []int{1}
			for i := range n - 1 {
				if cuts>>i&1 == 1 {
					sizes = append(sizes, 1)
				} else {
					sizes[len(sizes)-1]++
				}
			}
			if other, rises := cost(sizes); rises {
				require.LessOrEqual(t, got, other+1e-9)
			}
		}
	})
}
