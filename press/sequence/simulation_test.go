package sequence_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/sequence"
)

// stretch is a way with one set speed and one pair of ramps, as the stepping ram below
// sees it.
type stretch struct {
	way, speed, accel, decel float64
	end                      float64 // mm/s, at most, where it stops or goes over to a push
	on                       bool    // the next stretch begins without rest
}

// brakes tells whether a ram at x of the first stretch with a speed can still brake so
// that no later set speed and no stop is overrun.
func brakes(path []stretch, x, v float64) bool {
	for i, s := range path {
		v2 := v*v - 2*s.decel*(s.way-x)
		x = 0
		if v2 <= 0 {
			return true
		}
		v = math.Sqrt(v2)
		switch {
		case !s.on:
			return v <= s.end*(1+1e-12)+1e-12
		case v > math.Min(s.speed, path[i+1].speed)*(1+1e-12):
			return false
		}
	}
	return true
}

// stepping moves along stretches in small steps of time: as fast as it may, and braking
// no sooner than it must. Where one of the two changes within a step, the moment is
// found by halving. It knows nothing of trapezoids. It returns the times at which the
// stretches end.
func stepping(path []stretch, record func(t, x float64)) []float64 {
	const dt = 4e-3
	var ends []float64
	t, x, v := 0.0, 0.0, 0.0
	travelled := 0.0
	for n := 0; len(path) > 0; n++ {
		if n > 100_000 {
			panic("the stepping ram never arrives")
		}
		s := path[0]
		// next is where it would be after some time with an acceleration.
		next := func(a, h float64) (float64, float64) { return x + v*h + a*h*h/2, v + a*h }
		a := 0.0
		may := func(a, h float64) bool {
			x1, v1 := next(a, h)
			return v1 <= s.speed*(1+1e-12) && brakes(path, math.Min(x1, s.way), v1) && x1 <= s.way
		}
		h := dt
		switch {
		case v < s.speed-1e-9 && may(s.accel, 1e-12):
			a = s.accel
			if !may(a, h) {
				h = last(func(h float64) bool { return may(a, h) }, h)
			}
		case v > 0 && may(0, 1e-12):
			if !may(0, h) {
				h = last(func(h float64) bool { return may(0, h) }, h)
			}
		default:
			a = -s.decel
			if stop := v / s.decel; stop > 0 {
				h = math.Min(h, stop)
			}
			still := func(h float64) bool { x1, _ := next(a, h); return x1 <= s.way }
			if !still(h) {
				h = last(still, h)
			}
		}
		x, v = next(a, h)
		t += h
		v = math.Min(v, s.speed)
		record(t, travelled+x)
		if !s.on && a < 0 && s.way-x < 1e-7 { // the last of the braking at once
			t, v, x = t+v/s.decel, 0, s.way
		}
		if s.way-x < 1e-9 {
			travelled += s.way
			ends = append(ends, t)
			if !s.on {
				v = 0
			}
			if x, path = 0, path[1:]; len(path) > 0 && v < path[0].speed+1e-6 {
				v = math.Min(v, path[0].speed) // binary noise
			}
		}
	}
	return ends
}

// last finds by halving the greatest h up to some h0 for which it holds.
func last(holds func(float64) bool, h0 float64) float64 {
	from, to := 0.0, h0
	for range 60 {
		if mid := (from + to) / 2; holds(mid) {
			from = mid
		} else {
			to = mid
		}
	}
	return from
}

// Stretches of a run of moves, as the station would drive them.
func pathOf(steps []sequence.Step, home float64) (paths [][]stretch, starts []float64) {
	at := home
	var path []stretch
	for i, s := range steps {
		way := math.Abs(s.To - at)
		if len(path) == 0 {
			starts = append(starts, at)
		}
		path = append(path, stretch{way: way, speed: s.Speed, accel: s.Accel, decel: s.Decel})
		on := s.HandOver && i+1 < len(steps) && (steps[i+1].To-s.To)*(s.To-at) > 0
		path[len(path)-1].on = on
		at = s.To
		if !on {
			paths = append(paths, path)
			path = nil
		}
	}
	return paths, starts
}

// The closed forms agree with a ram that is moved in small steps of time, to 1e-6 s and
// 1e-6 mm, over random sequences of moves and hand-overs.
func TestRunsAgainstSteppingInTime(t *testing.T) {
	r := rand.New(rand.NewPCG(12, 1))
	handed, braked := 0, 0
	for n := range 2000 {
		steps := make([]sequence.Step, 1+r.IntN(7))
		at := 0.0
		for i := range steps {
			way := math.Pow(10, -1+3*r.Float64())
			if r.IntN(4) == 0 {
				way = -way
			}
			at += way
			steps[i] = sequence.Step{Kind: sequence.Move, To: at, Speed: 5 + 300*r.Float64(), Accel: 100 + 4000*r.Float64(), Decel: 100 + 4000*r.Float64(), HandOver: r.IntN(3) > 0}
		}
		run := sequence.Study(sequence.Input{Station: sequence.Station{SlowSpeed: 1}, Steps: steps}).Nominal
		paths, starts := pathOf(steps, 0)
		now, leg := 0.0, 0
		for i, path := range paths {
			sign := math.Copysign(1, steps[leg].To-starts[i])
			ends := stepping(path, func(dt, x float64) {
				require.InDelta(t, starts[i]+sign*x, where(run, now+dt), 1e-6, "sequence %d at %v s", n, now+dt)
			})
			for _, e := range ends {
				p := run.Passes[leg]
				require.InDelta(t, now+e, p.Begins+p.Duration, 1e-6, "sequence %d, step %d", n, leg)
				leg++
			}
			now += ends[len(ends)-1]
		}
		require.InDelta(t, now, run.Total, 1e-6)
		for _, h := range run.HandOvers {
			if h.Possible {
				handed++
			}
			if h.Braked {
				braked++
			}
		}
	}
	assert.Greater(t, handed, 2000, "hand-overs were tried")
	assert.Greater(t, braked, 100, "and some that braking limits")
}

// where gives the position of a run at a time, from its timeline.
func where(run *sequence.Run, t float64) float64 {
	for i := len(run.Segments) - 1; i >= 0; i-- {
		if g := run.Segments[i]; t >= g.Begin {
			x, _ := g.At(math.Min(t-g.Begin, g.Time))
			return x
		}
	}
	return 0
}
