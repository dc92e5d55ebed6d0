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
	assert.Equal(t, "the push alone, to push and blow; with a strong ram to "+Fixed(r.Impact.SeatStrong, 0), say.SeatBlow(r))

	r = press.Evaluate(example(t, changes{"station.max_force": "2800"}))
	require.Less(t, r.Impact.SeatExpected, 2800.0)
	require.Greater(t, r.Impact.SeatStrong, 2800.0)
	for _, f := range r.Findings {
		assert.NotEqual(t, press.ImpactSeat, f.Code)
	}
	assert.Contains(t, say.SeatBlow(r), "with a strong ram to "+Fixed(r.Impact.SeatStrong, 0)+", over the 2800 that may be borne")

	f := found(t, press.ImpactSeat, changes{"motion.slow_speed": "150"})
	strong := press.Evaluate(example(t, changes{"motion.slow_speed": "150"})).Impact.SeatStrong
	assert.Contains(t, f.Message, "with a strong ram "+Force(strong))
	assert.False(t, math.IsNaN(f.Figures.(press.SeatBlowFigures).Strong))
}

// Without the inertia mass every blow is that of what hangs on the ram alone: it is said to
// be at least so hard, and why, at each figure and in each sentence. By hand: the example
// carries 38 kg and 2.4 kg of it hang on the ram, so a blow falls to √(2.4/38), a quarter.
func TestABlowWithoutTheRotorIsALowerBound(t *testing.T) {
	full, bare := press.Evaluate(example(t, nil)), press.Evaluate(example(t, changes{"ram.inertia_mass": ""}))
	require.InDelta(t, math.Sqrt(2.4/38), bare.Impact.Early/full.Impact.Early, 1e-9)
	for r, said := range map[*press.Result]bool{full: false, bare: true} {
		assert.Equal(t, said, WithoutRotor(r))
		for name, text := range map[string]string{"contact": BlowNote(r), "seat": say.SeatBlow(r), "bound": say.BoundNote(r), "early": say.EarlyNote(r)} {
			if said {
				assert.Contains(t, text, "without the rotor: give the ram's inertia mass", name)
			} else {
				assert.NotContains(t, text, "rotor", name)
			}
		}
	}
	assert.Equal(t, "at least "+Fixed(bare.Impact.Contact, 0), say.BlowFigure(bare, bare.Impact.Contact))
	assert.Equal(t, Fixed(full.Impact.Contact, 0), say.BlowFigure(full, full.Impact.Contact))
	for code, c := range map[string]changes{press.ImpactEarly: {"station.max_force": "1100"}, press.ImpactSeat: {"motion.slow_speed": "160", "motion.approach_speed": "180"},
		press.ImpactContact: {"station.max_force": "90", "motion.slow_speed": "160"}} {
		f := found(t, code, with(c, changes{"ram.inertia_mass": ""}))
		assert.Contains(t, f.Message, "at least", code)
		assert.Contains(t, f.Message, "The inertia mass is not given", code)
		assert.NotContains(t, found(t, code, c).Message, "inertia mass", code)
	}
}

// The caution names the speed at which it is none, and that for a strong ram. By hand:
// 26.155 N for each mm/s: (2900 − 2468)/26.155 = 16.5 mm/s, of a strong ram (2900 − 2641)/26.155 = 9.9 mm/s.
func TestTheBlowAtTheSeatNamesItsSpeed(t *testing.T) {
	said := plain(found(t, press.ImpactSeat, changes{"motion.slow_speed": "18"}).Message)
	assert.Contains(t, said, "push no faster than 16.5 mm/s, and for a strong ram no faster than 9.9 mm/s.")
	for speed, want := range map[string]bool{"16.5": false, "16.6": true} {
		r := press.Evaluate(example(t, changes{"motion.slow_speed": speed}))
		assert.Equal(t, want, r.Impact.SeatExpected > r.Force.Cap, speed)
	}
	for speed, want := range map[string]bool{"9.8": false, "10": true} {
		r := press.Evaluate(example(t, changes{"motion.slow_speed": speed}))
		assert.Equal(t, want, r.Impact.SeatStrong > r.Force.Cap, speed)
	}
}

// A blow over what may be borne stands in the headline and on the card of a plan, before
// what the plan catches.
func TestTheHeadlineNamesTheBlow(t *testing.T) {
	p := example(t, changes{"motion.slow_speed": "18"})
	r := press.Evaluate(p)
	require.False(t, r.Blocked())
	assert.Regexp(t, `^May strike part and tool with 29\d\d N at the seat, where they may bear 2900 N; `, plain(Headline(p, r)))
	assert.Contains(t, Glance(p, r), "the blow is more than part and tool may bear")
	for _, c := range []changes{nil, {"station.max_force": "2300"}} { // calm, and the push alone
		p := example(t, c)
		assert.NotContains(t, Headline(p, press.Evaluate(p)), "strike")
	}
}

// What the motor pushes behind the blow in the approach is said where only both together
// are over what may be borne. By hand: at 100 mm/s the blow is 2616 N, and the 2620 N of the
// greatest setting come on top (weight in them: taken at the tool).
func TestTheApproachWithThePushBehindIt(t *testing.T) {
	r := press.Evaluate(example(t, changes{"motion.approach_speed": "100"}))
	require.Less(t, r.Impact.Early, 2900.0)
	points := r.Plan.Ram.Curve.Points
	push := points[len(points)-1][1]
	require.InDelta(t, push, r.Impact.EarlyPush, 1e-6)
	assert.Contains(t, say.EarlyNote(r), "with the "+Fixed(push, 0)+" of its greatest setting "+Fixed(push+r.Impact.Early, 0)+" together, over the 2900")
	assert.NotContains(t, say.EarlyNote(press.Evaluate(example(t, nil))), "together") // the blow alone is over it
}
