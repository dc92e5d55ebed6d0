package motion_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/press/motion"
)

// TestMoveBetweenSpeeds holds moves with a speed at both ends, by hand: from 40 mm/s
// 100 mm/s are reached in 0.3 s after 21 mm, and left for 20 mm/s in 0.2 s after 12 mm.
func TestMoveBetweenSpeeds(t *testing.T) {
	base := motion.Profile{Speed: 100, Accel: 200, Decel: 400, StartSpeed: 40, EndSpeed: 20}
	up, fast, cut := base, base, base
	up.EndSpeed, fast.StartSpeed, fast.EndSpeed, cut.StartSpeed, cut.EndSpeed = 100, 60, 0, 300, 100
	for _, c := range []struct {
		name     string
		profile  motion.Profile
		distance float64
		want     motion.Move
	}{
		{"trapezoid", base, 83, motion.Move{Time: 1, Peak: 100, TAccel: 0.3, TCruise: 0.5, TDecel: 0.2, Start: 40, End: 20}},
		// 60 mm/s: (3600−1600)/400 = 5 up and (3600−400)/800 = 4 down.
		{"triangle", base, 9, motion.Move{Time: 0.2, Peak: 60, TAccel: 0.1, TDecel: 0.1, Start: 40, End: 20}},
		// √(1600+2·200·5) = 60.
		{"short", up, 5, motion.Move{Time: 0.1, Peak: 60, TAccel: 0.1, Start: 40, End: 60}},
		// √(3600−2·400·4) = 20.
		{"too fast", fast, 4, motion.Move{Time: 0.1, Peak: 60, TDecel: 0.1, Start: 60, End: 20}},
		{"just braked", fast, 4.5, motion.Move{Time: 0.15, Peak: 60, TDecel: 0.15, Start: 60}},
		{"cut to the set speed", cut, 50, motion.Move{Time: 0.5, Peak: 100, TCruise: 0.5, Start: 100, End: 100}},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := c.profile.Move(c.distance)
			for _, f := range [][2]float64{
				{c.want.Time, got.Time}, {c.want.Peak, got.Peak}, {c.want.TAccel, got.TAccel}, {c.want.TCruise, got.TCruise},
				{c.want.TDecel, got.TDecel}, {c.want.Start, got.Start}, {c.want.End, got.End},
			} {
				assert.InDelta(t, f[0], f[1], 1e-12)
			}
			assert.InDelta(t, c.distance, got.AccelWay()+got.CruiseWay()+got.DecelWay(), 1e-12)
		})
	}
}

// TestWhenIsTheWayBackOfAt holds place and speed at a time against time and speed at a
// place.
func TestWhenIsTheWayBackOfAt(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anyProfile(t)
		p.StartSpeed = p.Speed * rapid.Float64Range(0, 1).Draw(t, "start")
		s := rapid.Float64Range(1e-3, 2000).Draw(t, "distance")
		at := p.Move(s).Time * rapid.Float64Range(0, 1).Draw(t, "time")
		x, v := p.At(s, at)
		back, speed := p.When(s, x)
		require.InDelta(t, v, speed, 1e-6*(1+v), "speed")
		if v > 1e-3*p.Speed { // where it nearly stands, a place is no time
			require.InDelta(t, at, back, 1e-9*(1+at)+1e-9*s/v)
		}
	})
}

// TestJunctions holds junctions by hand.
func TestJunctions(t *testing.T) {
	link := func(speed, distance float64) motion.Link {
		return motion.Link{Profile: motion.Profile{Speed: speed, Accel: 200, Decel: 400}, Distance: distance}
	}
	toward := link(80, 5)
	toward.EndSpeed = 30
	for _, c := range []struct {
		name  string
		links []motion.Link
		want  []motion.Junction
	}{
		{"alone", []motion.Link{link(60, 21)}, nil},
		{"the lower set speed", []motion.Link{link(60, 21), link(100, 50)}, []motion.Junction{{Speed: 60}}},
		{"the lower set speed after", []motion.Link{link(100, 50), link(60, 21)}, []motion.Junction{{Speed: 60}}},
		// √(2·400·2) = 40.
		{"braking limits", []motion.Link{link(60, 21), link(100, 2)}, []motion.Junction{{Speed: 40, Braked: true}}},
		// √(2·200·1) = 20.
		{"what can be reached", []motion.Link{link(60, 1), link(100, 50)}, []motion.Junction{{Speed: 20}}},
		// Both: √(2·200·1) = 20 lies under √(2·400·2) = 40.
		{"reached, not braked", []motion.Link{link(60, 1), link(100, 2)}, []motion.Junction{{Speed: 20}}},
		// √(2·400·1) = 28.28, then √(800+2·400·1) = 40.
		{"through three", []motion.Link{link(60, 21), link(60, 1), link(60, 1)}, []motion.Junction{{Speed: 40, Braked: true}, {Speed: math.Sqrt(800), Braked: true}}},
		// √(30²+2·400·5) = 70.
		{"into a push", []motion.Link{link(100, 50), toward}, []motion.Junction{{Speed: 70, Braked: true}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := motion.Junctions(c.links)
			require.Len(t, got, len(c.want))
			for i, w := range c.want {
				assert.InDelta(t, w.Speed, got[i].Speed, 1e-12)
				assert.Equal(t, w.Braked, got[i].Braked)
			}
		})
	}
}

// TestHandOverOfEqualSpeedsChangesNothing holds that a move cut into pieces with the
// same profile is the same move.
func TestHandOverOfEqualSpeedsChangesNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anyProfile(t)
		s := rapid.Float64Range(1e-2, 2000).Draw(t, "distance")
		whole := p.Move(s)
		parts := rapid.SliceOfN(rapid.Float64Range(0.05, 1), 1, 6).Draw(t, "parts")
		sum := 0.0
		for _, x := range parts {
			sum += x
		}
		links := make([]motion.Link, len(parts))
		for i, x := range parts {
			links[i] = motion.Link{Profile: p, Distance: s * x / sum}
		}
		chain, _ := motion.Chain(links)
		time, peak := 0.0, 0.0
		for _, l := range chain {
			m := l.Move(l.Distance)
			time += m.Time
			peak = max(peak, m.Peak)
		}
		require.InEpsilon(t, whole.Time, time, 1e-7) // a place near a stop is known to the root of its noise
		require.InEpsilon(t, whole.Peak, peak, 1e-9)
	})
}

// TestBrake holds a stop by hand: 120 mm/s at 400 mm/s² takes 0.3 s and 18 mm.
func TestBrake(t *testing.T) {
	s := motion.Brake(120, 400)
	assert.InDelta(t, 0.3, s.Time, 1e-15)
	assert.InDelta(t, 18, s.Way, 1e-12)
	assert.InDelta(t, 0.5, s.Resume(0.5), 1e-15, "the hold is longer")
	assert.InDelta(t, 0.3, s.Resume(0.1), 1e-15, "it stands first")
}
