package words

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// The blow of the approach is told as one over the set force and over what may be borne,
// with the speed up to which it is not. By hand: 2.6155 N for each mm/s (4708 N at
// 180 mm/s), so 2900 N at 110.87 mm/s, rounded down.
func TestTheBlowOfTheApproachNamesItsSpeed(t *testing.T) {
	f := found(t, press.ImpactEarly, nil)
	assert.Equal(t, press.Note, f.Severity)
	said := plain(f.Message)
	assert.Contains(t, said, "at 180 mm/s it strikes a part in its way with at least 4708 N, over the 2900 N that part and tool may bear and the set force of 2468 N")
	assert.Contains(t, said, "Up to 110 mm/s the blow alone may be borne")

	// At the speed that is named there is no such finding, and 1 mm/s above there is.
	for speed, want := range map[string]bool{"110": false, "111": true} {
		p := example(t, changes{"motion.approach_speed": speed})
		r := press.Evaluate(p)
		assert.Equal(t, want, r.Impact.Early > p.Station.MaxForce, speed)
	}

	// A set force above the blow is not named; no speed below the slow one is.
	f = found(t, press.ImpactEarly, changes{"station.max_force": "100", "motion.approach_speed": "60"})
	said = plain(f.Message)
	assert.NotContains(t, said, "Up to")
	assert.Contains(t, said, "even at the slow speed the blow alone is too much")
	f = found(t, press.ImpactEarly, changes{"station.max_force": "2000", "window.setting": "66", "motion.approach_speed": "85"})
	assert.NotContains(t, f.Message, "set force")
}

func TestSpeedsAreRoundedDown(t *testing.T) {
	for v, want := range map[float64]float64{110.87: 110, 110: 110, 99.99: 99.9, 12.34: 12.3, 7.77: 7.7, 1234: 1230, 0.16: 0.1} {
		assert.InDelta(t, want, down(v), 1e-9)
	}
}

// The force at the seat is told up to that of a strong ram, and where that alone is over
// what may be borne, which no finding speaks of. By hand: 2641 N of a strong ram and the
// 209 N of 8 mm/s (2.6155 N for each mm/s, 2641.3 + 209.2 = 2850.5).
func TestTheBlowAtTheSeatOfAStrongRam(t *testing.T) {
	r := press.Evaluate(example(t, nil))
	assert.InDelta(t, r.Force.High+r.Impact.SeatExpected-r.Force.Typical, r.Impact.SeatStrong, 1e-9)
	assert.InDelta(t, 2850.5, r.Impact.SeatStrong, 1)
	assert.Equal(t, "the push alone, to push and blow; with a strong ram to "+Fixed(r.Impact.SeatStrong, 0), SeatBlow(r))

	r = press.Evaluate(example(t, changes{"station.max_force": "2800"}))
	require.Less(t, r.Impact.SeatExpected, 2800.0)
	require.Greater(t, r.Impact.SeatStrong, 2800.0)
	for _, f := range r.Findings {
		assert.NotEqual(t, press.ImpactSeat, f.Code)
	}
	assert.Contains(t, SeatBlow(r), "with a strong ram to "+Fixed(r.Impact.SeatStrong, 0)+", over the 2800 that may be borne")

	f := found(t, press.ImpactSeat, changes{"motion.slow_speed": "150"})
	strong := press.Evaluate(example(t, changes{"motion.slow_speed": "150"})).Impact.SeatStrong
	assert.Contains(t, f.Message, "with a strong ram "+Force(strong))
	assert.False(t, math.IsNaN(f.Figures["strong"]))
}
