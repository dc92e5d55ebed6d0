package curves_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/curves"
)

// anyCurve draws a rising curve of 2 to 12 points, steep and flat pieces mixed.
func anyCurve(t *rapid.T) *curves.Curve {
	n := rapid.IntRange(2, 12).Draw(t, "points")
	how := rapid.SampledFrom([]curves.Interpolation{curves.Monotone, curves.Linear}).Draw(t, "how")
	p := curves.Point{
		Setting: rapid.Float64Range(-50, 50).Draw(t, "first setting"),
		Force:   rapid.Float64Range(1e-3, 1e4).Draw(t, "first force"),
	}
	points := []curves.Point{p}
	for range n - 1 {
		p.Setting += rapid.Float64Range(0.05, 40).Draw(t, "run")
		p.Force += math.Pow(10, rapid.Float64Range(-3, 5).Draw(t, "rise"))
		points = append(points, p)
	}
	c, err := curves.New(points, how)
	require.NoError(t, err)
	return c
}

// within draws a value between two, both ends included.
func within(t *rapid.T, name string, lo, hi float64) float64 {
	return min(lo+rapid.Float64Range(0, 1).Draw(t, name)*(hi-lo), hi)
}

// TestRoundTrip holds force(setting(F)) = F. The slack beyond 1e-13 is what one
// step between neighbouring settings in binary is worth.
func TestRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyCurve(t)
		lo, hi := c.Forces()
		want := within(t, "force", lo, hi)
		setting, err := c.Setting(want)
		require.NoError(t, err)
		got, err := c.Force(setting)
		require.NoError(t, err)
		slope, err := c.Slope(setting)
		require.NoError(t, err)
		step := math.Nextafter(math.Abs(setting), math.Inf(1)) - math.Abs(setting)
		require.InDelta(t, want, got, want*1e-13+2*step*slope)
	})
}

// TestRises holds that a higher setting never gives less force, that the slope
// is never below zero, and that force stays between the ends.
func TestRises(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyCurve(t)
		lo, hi := c.Settings()
		weakest, strongest := c.Forces()
		a, b := within(t, "a", lo, hi), within(t, "b", lo, hi)
		a, b = min(a, b), max(a, b)
		low, err := c.Force(a)
		require.NoError(t, err)
		high, err := c.Force(b)
		require.NoError(t, err)
		noise := strongest * 1e-14
		require.LessOrEqual(t, low, high+noise)
		require.GreaterOrEqual(t, low, weakest-noise)
		require.LessOrEqual(t, high, strongest+noise)
		slope, err := c.Slope(a)
		require.NoError(t, err)
		require.GreaterOrEqual(t, slope, -noise)
	})
}

// TestSlopeIsWork holds the slope by another route: over one piece without a
// corner, its integral by Simpson's rule, exact for these quadratics, is the
// rise of the force.
func TestSlopeIsWork(t *testing.T) {
	for _, how := range []curves.Interpolation{curves.Monotone, curves.Linear} {
		c := mustNew(t, ram, how)
		for k := range len(ram) - 1 {
			a, b := ram[k].Setting, math.Nextafter(ram[k+1].Setting, 0)
			var s [3]float64
			for i, x := range []float64{a, (a + b) / 2, b} {
				slope, err := c.Slope(x)
				require.NoError(t, err)
				s[i] = slope
			}
			require.InEpsilon(t, ram[k+1].Force-ram[k].Force, (b-a)/6*(s[0]+4*s[1]+s[2]), 1e-12)
		}
	}
}

// TestHardInverse holds the inverse where Newton's method alone has trouble:
// beside points of almost no slope, and over a rise of twelve decades.
func TestHardInverse(t *testing.T) {
	for name, points := range map[string][]curves.Point{
		"flat shoulders": {{0, 1}, {10, 1 + 1e-9}, {20, 1e3}, {30, 1e3 + 1e-9}},
		"twelve decades": {{0, 1e-3}, {1, 2e-3}, {2, 1e9}},
		"steep start":    {{0, 1e-6}, {1e-3, 900}, {100, 1000}},
	} {
		t.Run(name, func(t *testing.T) {
			c := mustNew(t, points, curves.Monotone)
			lo, hi := c.Forces()
			for i := range 2001 {
				want := lo * math.Pow(hi/lo, float64(i)/2000)
				want = min(want, hi)
				setting, err := c.Setting(want)
				require.NoError(t, err)
				got, err := c.Force(setting)
				require.NoError(t, err)
				slope, err := c.Slope(setting)
				require.NoError(t, err)
				step := math.Nextafter(setting, math.Inf(1)) - setting
				require.InDelta(t, want, got, want*1e-13+2*step*slope, "force %v", want)
			}
		})
	}
}
