package motion_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/press/motion"
)

// profile has figures for working by hand: 100 mm/s is reached in 0.5 s after
// 25 mm, and left for 20 mm/s in 0.2 s after 12 mm.
var profile = motion.Profile{Speed: 100, Accel: 200, Decel: 400, EndSpeed: 20}

// TestMove holds moves worked by hand from the profile above.
func TestMove(t *testing.T) {
	for _, c := range []struct {
		name     string
		distance float64
		want     motion.Move
	}{
		{"trapezoid", 87, motion.Move{Time: 1.2, Peak: 100, TAccel: 0.5, TCruise: 0.5, TDecel: 0.2}},
		{"just a triangle", 37, motion.Move{Time: 0.7, Peak: 100, TAccel: 0.5, TDecel: 0.2}},
		// v² = (s + 400/800)·2·200·400/600: 60 mm/s for s = 13 mm, 9 up and 4 down.
		{"triangle", 13, motion.Move{Time: 0.4, Peak: 60, TAccel: 0.3, TDecel: 0.1}},
		{"just the end speed", 1, motion.Move{Time: 0.1, Peak: 20, TAccel: 0.1}},
		{"too short for the end speed", 0.25, motion.Move{Time: 0.05, Peak: 10, TAccel: 0.05}},
		{"none", 0, motion.Move{}},
		{"back", -5, motion.Move{}},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := profile.Move(c.distance)
			assert.InDelta(t, c.want.Time, got.Time, 1e-12)
			assert.InDelta(t, c.want.Peak, got.Peak, 1e-12)
			assert.InDelta(t, c.want.TAccel, got.TAccel, 1e-12)
			assert.InDelta(t, c.want.TCruise, got.TCruise, 1e-12)
			assert.InDelta(t, c.want.TDecel, got.TDecel, 1e-12)
		})
	}
	fast := profile
	fast.EndSpeed = 300
	level := profile
	level.EndSpeed = level.Speed
	assert.Equal(t, level.Move(87), fast.Move(87), "an end speed above the set speed is cut to it")
	assert.Zero(t, level.Move(87).TDecel)
}

// TestAt holds positions along the trapezoid worked by hand.
func TestAt(t *testing.T) {
	for _, c := range []struct{ t, position, speed float64 }{
		{-1, 0, 0}, {0, 0, 0}, {0.1, 1, 20}, {0.5, 25, 100}, {0.75, 50, 100}, {1, 75, 100}, {1.1, 83, 60}, {1.2, 87, 20}, {9, 87, 20},
	} {
		position, speed := profile.At(87, c.t)
		assert.InDelta(t, c.position, position, 1e-12, c.t)
		assert.InDelta(t, c.speed, speed, 1e-12, c.t)
	}
	position, speed := profile.At(0.25, 1)
	assert.InDelta(t, 0.25, position, 1e-15)
	assert.InDelta(t, 10, speed, 1e-12, "a short move ends before the end speed")
	position, speed = profile.At(-5, 1)
	assert.Zero(t, position)
	assert.Zero(t, speed)
}

func anyProfile(t *rapid.T) motion.Profile {
	v := rapid.Float64Range(1, 2000).Draw(t, "speed")
	return motion.Profile{
		Speed:    v,
		Accel:    rapid.Float64Range(10, 50e3).Draw(t, "accel"),
		Decel:    rapid.Float64Range(10, 50e3).Draw(t, "decel"),
		EndSpeed: v * rapid.Float64Range(0, 1).Draw(t, "end"),
	}
}

// TestMoveCoversItsDistance holds the three areas under the speed, by another
// route than the program's, and what no move may exceed.
func TestMoveCoversItsDistance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anyProfile(t)
		s := rapid.Float64Range(1e-6, 2000).Draw(t, "distance")
		m := p.Move(s)
		end := m.Peak - p.Decel*m.TDecel
		covered := m.Peak*m.TAccel/2 + m.Peak*m.TCruise + (m.Peak+end)/2*m.TDecel
		require.InEpsilon(t, s, covered, 1e-9)
		require.InEpsilon(t, m.Time, m.TAccel+m.TCruise+m.TDecel, 1e-15)
		require.InEpsilon(t, m.Peak, p.Accel*m.TAccel, 1e-12)
		require.LessOrEqual(t, m.Peak, p.Speed)
		require.LessOrEqual(t, end, p.EndSpeed+1e-9*p.Speed)
		require.GreaterOrEqual(t, min(m.TAccel, m.TCruise, m.TDecel), 0.0)
	})
}

// TestMoveTakesLonger holds that more way takes more time and no less speed.
func TestMoveTakesLonger(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anyProfile(t)
		s := rapid.Float64Range(1e-6, 2000).Draw(t, "distance")
		near, far := p.Move(s), p.Move(s*rapid.Float64Range(1, 3).Draw(t, "factor"))
		require.GreaterOrEqual(t, far.Time, near.Time*(1-1e-12))
		require.GreaterOrEqual(t, far.Peak, near.Peak*(1-1e-12))
	})
}

// TestAtIsSmooth holds that the position is the integral of the speed: between
// two near times it grows by the mean speed, within what the ramps can change.
func TestAtIsSmooth(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anyProfile(t)
		s := rapid.Float64Range(1e-3, 2000).Draw(t, "distance")
		whole := p.Move(s).Time
		from := whole * rapid.Float64Range(0, 0.999).Draw(t, "time")
		step := whole * 1e-3
		x1, v1 := p.At(s, from)
		x2, v2 := p.At(s, from+step)
		require.InDelta(t, (v1+v2)/2*step, x2-x1, max(p.Accel, p.Decel)*step*step+1e-9*s)
		require.GreaterOrEqual(t, x2, x1-1e-9*s)
		require.LessOrEqual(t, x2, s*(1+1e-12))
		require.GreaterOrEqual(t, v1, 0.0)
	})
}
