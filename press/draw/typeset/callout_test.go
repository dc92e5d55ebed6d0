package typeset

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

// TestSpread: labels move no further than they must.
func TestSpread(t *testing.T) {
	for _, c := range []struct {
		name        string
		wish, width []float64
		want        []float64
		ok          bool
	}{
		{"free", []float64{50, 150}, []float64{20, 20}, []float64{50, 150}, true},
		{"pushed apart evenly", []float64{100, 100}, []float64{20, 20}, []float64{85, 115}, true},
		{"held at the edge", []float64{0, 5}, []float64{20, 20}, []float64{10, 40}, true},
		{"a heap of three", []float64{100, 101, 102}, []float64{20, 20, 20}, []float64{71, 101, 131}, true},
		{"no room", []float64{100, 100}, []float64{120, 120}, nil, false},
		{"none", nil, nil, []float64{}, true},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, ok := Spread(c.wish, c.width, 10, 0, 200)
			assert.Equal(t, c.ok, ok)
			if ok {
				assert.InDeltaSlice(t, c.want, got, 1e-9)
			}
		})
	}
}

// TestSpreadNeverOverlaps for any labels that fit.
func TestSpreadNeverOverlaps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 12).Draw(t, "n")
		wish, width := make([]float64, n), make([]float64, n)
		last := 0.0
		for i := range n {
			last += rapid.Float64Range(0, 200).Draw(t, "step")
			wish[i] = math.Min(last, 1000)
			width[i] = rapid.Float64Range(1, 90).Draw(t, "width")
		}
		x, ok := Spread(wish, width, 5, 0, 1000)
		if !ok {
			return
		}
		for i := range x {
			if x[i]-width[i]/2 < -1e-6 || x[i]+width[i]/2 > 1000+1e-6 {
				t.Fatalf("label %d lies outside: %v", i, x)
			}
			if i > 0 && x[i]-width[i]/2 < x[i-1]+width[i-1]/2+5-1e-6 {
				t.Fatalf("labels %d and %d overlap: %v", i-1, i, x)
			}
		}
	})
}
