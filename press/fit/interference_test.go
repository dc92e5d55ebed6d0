package fit_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/press/fit"
)

// TestInterference holds a fit worked by hand: a hole of 0 … +21 µm and a shaft
// of +35 … +48 µm, 20 H7/s6, interfere by 14 to 48 µm.
func TestInterference(t *testing.T) {
	got := fit.Interference(fit.Limits{Low: 0, High: 21}, fit.Limits{Low: 35, High: 48})
	assert.Equal(t, fit.Triple{Low: 14, Mean: 31, High: 48}, got)
}

// TestSmoothing holds who loses how much, by hand: the low end the most, the
// high end the least, the mean the middle, and nothing below zero.
func TestSmoothing(t *testing.T) {
	s := fit.Smoothing{Least: 0.2, Most: 0.8, RzSum: 10}
	i := fit.Triple{Low: 5, Mean: 20, High: 35}
	assert.Equal(t, fit.Triple{Low: -3, Mean: 15, High: 33}, s.Raw(i))
	assert.Equal(t, fit.Triple{Low: 0, Mean: 15, High: 33}, s.Apply(i))
	assert.Equal(t, fit.Triple{}, s.Apply(fit.Triple{Low: -30, Mean: -20, High: -10}))
	assert.Equal(t, i, fit.Smoothing{Least: 0, Most: 0.8}.Apply(i), "smooth parts lose nothing")
}

// TestThermal holds a change by hand: 40 mm, 80 K, 12e-6 in a hub of 23e-6
// loosen by 1000·40·80·11e-6 = 35.2 µm, and tighten by as much when cold.
func TestThermal(t *testing.T) {
	joint := fit.Thermal{Diameter: 40, InsertExpansion: 12e-6, HubExpansion: 23e-6}
	assert.InDelta(t, -35.2, joint.Change(80), 1e-12)
	assert.InDelta(t, 35.2, joint.Change(-80), 1e-12)
	assert.Zero(t, joint.Change(0))
}

// TestTriplesInOrder holds low ≤ mean ≤ high from the limits to the force, and
// that smoothing never adds.
func TestTriplesInOrder(t *testing.T) {
	ordered := func(t *rapid.T, what string, x fit.Triple) {
		require.LessOrEqual(t, x.Low, x.Mean, what)
		require.LessOrEqual(t, x.Mean, x.High, what)
	}
	limits := func(t *rapid.T, name string) fit.Limits {
		low := rapid.Float64Range(-500, 500).Draw(t, name)
		return fit.Limits{Low: low, High: low + rapid.Float64Range(0, 200).Draw(t, name+" width")}
	}
	rapid.Check(t, func(t *rapid.T) {
		i := fit.Interference(limits(t, "hole"), limits(t, "shaft"))
		ordered(t, "interference", i)
		least := rapid.Float64Range(0, 1).Draw(t, "least")
		s := fit.Smoothing{
			Least: least,
			Most:  rapid.Float64Range(least, 1).Draw(t, "most"),
			RzSum: rapid.Float64Range(0, 60).Draw(t, "roughness"),
		}
		ordered(t, "raw", s.Raw(i))
		effective := s.Apply(i)
		ordered(t, "effective", effective)
		require.GreaterOrEqual(t, effective.Low, 0.0)
		require.LessOrEqual(t, effective.High, max(0, i.High))
		require.LessOrEqual(t, effective.Low, max(0, i.Low))

		r := anyRings(t)
		ordered(t, "pressure", fit.Triple{
			Low: r.Pressure(effective.Low), Mean: r.Pressure(effective.Mean), High: r.Pressure(effective.High),
		})
	})
}
