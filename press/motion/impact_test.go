package motion_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/press/motion"
)

// TestImpactForce holds one figure by hand: 0.5 m/s, 8e6 N/m and 2 kg give
// 0.5·√16e6 = 2000 N.
func TestImpactForce(t *testing.T) {
	assert.InEpsilon(t, 2000.0, motion.ImpactForce(500, 8000, 2), 1e-14)
	assert.Zero(t, motion.ImpactForce(0, 8000, 2))
	assert.Zero(t, motion.ImpactForce(500, 8000, 0))
}

// TestSeat holds both figures at the seat by hand, with an impact of 400 N:
// expected up to 800 + 400, bound 800 + √(300² + 400²).
func TestSeat(t *testing.T) {
	s := motion.Seat{Force: 800, Demand: 500, Speed: 100, Stiffness: 8000, Mass: 2}
	assert.InEpsilon(t, 1200.0, s.Expected(), 1e-14)
	assert.InEpsilon(t, 1300.0, s.Bound(), 1e-14)
	s.Demand = 100
	assert.InEpsilon(t, 1200.0, s.Expected(), 1e-14, "the demand plays no part")
	s.Demand, s.Speed = 0, 0
	assert.Equal(t, 1600.0, s.Bound(), "a load applied suddenly counts double")
}

// TestBoundBounds holds that the bound is never below what is expected from the
// same figures while the ram can push the part at all.
func TestBoundBounds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		force := rapid.Float64Range(0, 1e5).Draw(t, "force")
		s := motion.Seat{
			Force:     force,
			Demand:    force * rapid.Float64Range(0, 1).Draw(t, "share"),
			Speed:     rapid.Float64Range(0, 500).Draw(t, "speed"),
			Stiffness: rapid.Float64Range(10, 1e6).Draw(t, "stiffness"),
			Mass:      rapid.Float64Range(0, 200).Draw(t, "mass"),
		}
		require.GreaterOrEqual(t, s.Bound()*(1+1e-12), s.Expected())
	})
}

// TestRMS holds one figure by hand, a quarter of the time is half the setting,
// and that a cycle of no length has none.
func TestRMS(t *testing.T) {
	got, ok := motion.RMS(80, 0.5, 2)
	assert.True(t, ok)
	assert.Equal(t, 40.0, got)
	for _, total := range []float64{0, -1} {
		got, ok = motion.RMS(80, 0, total)
		assert.False(t, ok)
		assert.Zero(t, got)
	}
}
