package curves_test

import (
	"errors"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/curves"
)

// ram is a made-up force curve; its figures have no source and need none.
var ram = []curves.Point{{10, 60}, {20, 190}, {40, 480}, {60, 840}, {80, 1150}, {100, 1350}}

func mustNew(t testing.TB, points []curves.Point, how curves.Interpolation) *curves.Curve {
	t.Helper()
	c, err := curves.New(points, how)
	require.NoError(t, err)
	return c
}

// TestNewRefuses holds every refusal with the point that it names.
func TestNewRefuses(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	for _, c := range []struct {
		name   string
		points []curves.Point
		how    curves.Interpolation
		want   string
	}{
		{"none", nil, curves.Monotone, "curves: a curve needs at least 2 points, got 0"},
		{"one", ram[:1], curves.Linear, "curves: a curve needs at least 2 points, got 1"},
		{"setting nan", []curves.Point{{10, 1}, {nan, 2}}, curves.Linear, "curves: point 2: setting NaN % is not a finite number"},
		{"setting infinite", []curves.Point{{-inf, 1}, {2, 2}}, curves.Linear, "curves: point 1: setting -Inf % is not a finite number"},
		{"force nan", []curves.Point{{10, nan}, {20, 2}}, curves.Monotone, "curves: point 1: force NaN N is not a finite number"},
		{"force infinite", []curves.Point{{10, 1}, {20, inf}}, curves.Monotone, "curves: point 2: force +Inf N is not a finite number"},
		{"force zero", []curves.Point{{10, 0}, {20, 2}}, curves.Monotone, "curves: point 1: force 0 N is not above 0"},
		{"force negative", []curves.Point{{10, -3}, {20, 2}}, curves.Monotone, "curves: point 1: force -3 N is not above 0"},
		{"setting again", []curves.Point{{10, 1}, {20, 2}, {20, 3}}, curves.Linear, "curves: point 3: setting 20 % is not above the 20 % of the point before"},
		{"setting falls", []curves.Point{{10, 1}, {9, 2}}, curves.Linear, "curves: point 2: setting 9 % is not above the 10 % of the point before"},
		{"force again", []curves.Point{{10, 5}, {20, 5}}, curves.Linear, "curves: point 2: force 5 N is not above the 5 N of the point before"},
		{"force falls", []curves.Point{{10, 5}, {20, 4}}, curves.Linear, "curves: point 2: force 4 N is not above the 5 N of the point before"},
		{"interpolation", ram, "cubic", `curves: interpolation "cubic" is not "monotone" or "linear"`},
		{"overflow", []curves.Point{{-1e308, 1}, {1e308, 2}}, curves.Linear, "curves: point 2: too close to or too far from point 1 to interpolate"},
		{"overflow of slope", []curves.Point{{0, 1}, {1e-300, 1e300}}, curves.Monotone, "curves: point 2: too close to or too far from point 1 to interpolate"},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, err := curves.New(c.points, c.how)
			assert.EqualError(t, err, c.want)
			assert.Nil(t, got)
		})
	}
}

// TestNewCopies holds that a curve does not change with the caller's points.
func TestNewCopies(t *testing.T) {
	points := append([]curves.Point(nil), ram...)
	for _, how := range []curves.Interpolation{curves.Monotone, curves.Linear} {
		c := mustNew(t, points, how)
		before, err := c.Force(50)
		require.NoError(t, err)
		points[2].Force, points[3].Force = 500, 600
		after, err := c.Force(50)
		require.NoError(t, err)
		assert.Equal(t, before, after)
	}
}

// TestEnds holds the ranges and that points are met exactly, both ways.
func TestEnds(t *testing.T) {
	for _, how := range []curves.Interpolation{curves.Monotone, curves.Linear} {
		c := mustNew(t, ram, how)
		lo, hi := c.Settings()
		assert.Equal(t, [2]float64{10, 100}, [2]float64{lo, hi})
		lo, hi = c.Forces()
		assert.Equal(t, [2]float64{60, 1350}, [2]float64{lo, hi})
		for _, p := range ram {
			force, err := c.Force(p.Setting)
			require.NoError(t, err)
			assert.Equal(t, p.Force, force)
			setting, err := c.Setting(p.Force)
			require.NoError(t, err)
			assert.Equal(t, p.Setting, setting)
		}
	}
}

// TestSlack holds the width of what still counts as the end: 1e-9 % of
// setting, 1e-12 of the force, and no more.
func TestSlack(t *testing.T) {
	c := mustNew(t, ram, curves.Monotone)
	for setting, want := range map[float64]float64{10 - 0.9e-9: 60, 100 + 0.9e-9: 1350} {
		got, err := c.Force(setting)
		require.NoError(t, err)
		assert.Equal(t, want, got)
		_, err = c.Slope(setting)
		assert.NoError(t, err)
	}
	for force, want := range map[float64]float64{60 * (1 - 0.9e-12): 10, 1350 * (1 + 0.9e-12): 100} {
		got, err := c.Setting(force)
		require.NoError(t, err)
		assert.Equal(t, want, got)
	}
	for _, setting := range []float64{10 - 1.1e-9, 100 + 1.1e-9, math.NaN(), math.Inf(1), math.Inf(-1)} {
		_, err := c.Force(setting)
		assert.Error(t, err, setting)
		_, err = c.Slope(setting)
		assert.Error(t, err, setting)
	}
	for _, force := range []float64{60 * (1 - 1.1e-12), 1350 * (1 + 1.1e-12), 0, -60, math.NaN(), math.Inf(1)} {
		_, err := c.Setting(force)
		assert.Error(t, err, force)
	}
}

// TestRangeError holds what the refusal tells.
func TestRangeError(t *testing.T) {
	c := mustNew(t, ram, curves.Linear)
	_, err := c.Force(101)
	assert.EqualError(t, err, "curves: setting 101 % is outside the curve, which runs from 10 % to 100 %")
	_, err = c.Setting(59.5)
	assert.EqualError(t, err, "curves: force 59.5 N is outside the curve, which runs from 60 N to 1350 N")
	var outside *curves.RangeError
	require.True(t, errors.As(err, &outside))
	assert.Equal(t, curves.RangeError{Quantity: "force", Value: 59.5, Low: 60, High: 1350, Unit: "N"}, *outside)
}

// TestLine holds that two points make a line under either interpolation, with
// figures that can be checked in the head.
func TestLine(t *testing.T) {
	for _, how := range []curves.Interpolation{curves.Monotone, curves.Linear} {
		c := mustNew(t, []curves.Point{{20, 100}, {60, 500}}, how)
		force, err := c.Force(35)
		require.NoError(t, err)
		assert.InDelta(t, 250, force, 1e-12)
		slope, err := c.Slope(35)
		require.NoError(t, err)
		assert.InDelta(t, 10, slope, 1e-13)
		setting, err := c.Setting(250)
		require.NoError(t, err)
		assert.InDelta(t, 35, setting, 1e-13)
	}
}

// TestLinearSlope holds whose slope a corner has.
func TestLinearSlope(t *testing.T) {
	c := mustNew(t, []curves.Point{{0, 10}, {1, 20}, {2, 50}}, curves.Linear)
	for setting, want := range map[float64]float64{0: 10, 0.5: 10, 1: 30, 1.5: 30, 2: 30} {
		got, err := c.Slope(setting)
		require.NoError(t, err)
		assert.InDelta(t, want, got, 1e-12, setting)
	}
}
