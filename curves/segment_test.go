package curves

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestSolveEveryShape holds the inverse on every shape that a rising cubic of
// the monotone interpolant can have: slopes at its ends of 0 to 3 times the
// secant (Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980) 238-246, from
// memory), the target close to either end or between.
func TestSolveEveryShape(t *testing.T) {
	targets := []float64{1e-15, 1e-9, 1e-3, 0.1, 0.25, 1.0 / 3, 0.5, 0.75, 0.9, 0.999, 1 - 1e-9, 1 - 1e-15}
	for left := 0.0; left <= 3; left += 0.25 {
		for right := 0.0; right <= 3; right += 0.25 {
			s := segment{width: 1, c1: left, c2: 3 - 2*left - right, c3: left + right - 2}
			for _, target := range targets {
				at := s.solve(target)
				require.False(t, math.IsNaN(at))
				require.True(t, at >= 0 && at <= 1, "slopes %v and %v, target %v: %v", left, right, target, at)
				require.InDelta(t, target, s.rise(at), 2e-15, "slopes %v and %v, target %v", left, right, target)
			}
		}
	}
}
