package fit_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/press/fit"
)

// TestPush holds the push along the way, by hand: over 12 mm, 2 mm of them
// free, at 0.1·50 MPa·π·20 mm = 100π N per mm and 30 N of drag.
func TestPush(t *testing.T) {
	g := fit.Push{Diameter: 20, Engagement: 8, Pilot: 2, Drag: 30}
	for z, engaged := range map[float64]float64{-1: 0, 0: 0, 2: 0, 3: 1, 10: 8, 12: 8} {
		assert.Equal(t, engaged, g.Engaged(z), z)
		assert.InDelta(t, 100*math.Pi*engaged+30, g.Force(0.1, 50, z), 1e-9, z)
		assert.InDelta(t, 100*math.Pi*engaged, g.Grip(0.1, 50, z), 1e-9, z)
	}
}

// TestPushGrows holds that a push never gets easier on its way, nor with more
// friction or pressure, and that the joint holds what the push took but drag.
func TestPushGrows(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		positive := func(name string, most float64) float64 { return rapid.Float64Range(0, most).Draw(t, name) }
		g := fit.Push{
			Diameter: positive("diameter", 500), Engagement: positive("engagement", 200),
			Pilot: positive("pilot", 50), Drag: positive("drag", 1000),
		}
		mu, p, z := positive("friction", 2), positive("pressure", 500), positive("depth", 300)
		force := g.Force(mu, p, z)
		require.GreaterOrEqual(t, force, g.Drag)
		require.GreaterOrEqual(t, g.Force(mu, p, z+positive("further", 300)), force)
		require.GreaterOrEqual(t, g.Force(mu+positive("rougher", 2), p, z), force)
		require.GreaterOrEqual(t, g.Force(mu, p+positive("tighter", 500), z), force)
		require.InDelta(t, force-g.Drag, g.Grip(mu, p, z), 1e-12*force)
	})
}
