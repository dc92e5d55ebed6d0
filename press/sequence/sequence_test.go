package sequence_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/press/motion"
	"ramplan/press/sequence"
)

// station has figures for working by hand: the push begins at 100 and is slow, 10 mm/s.
var station = sequence.Station{
	ApproachSpeed: 100, Accel: 200, Decel: 400, A: 100, SlowSpeed: 10,
	E: 110, Settle: 0.1, Confirm: 0.05, Hold: 0.2, Zone: &[2]float64{107, 112}, ProbeEnd: 105, ProbeConfirm: 0.08,
}

func move(to float64) sequence.Step {
	return sequence.Step{Kind: sequence.Move, To: to, Speed: 100, Accel: 200, Decel: 400}
}

func shift(by float64, times int, pause float64) sequence.Step {
	return sequence.Step{Kind: sequence.Shift, By: by, Times: times, Pause: pause, Speed: 100, Accel: 200, Decel: 400}
}

func wait(time float64) sequence.Step { return sequence.Step{Kind: sequence.Wait, Time: time} }

var (
	press = sequence.Step{Kind: sequence.Press}
	probe = sequence.Step{Kind: sequence.Probe}
	over  = func(s sequence.Step) sequence.Step { s.HandOver = true; return s }
)

// good is a part that the probe meets at 104 and the press at 108; without one, nothing
// is met.
var (
	good = sequence.Part{Probe: sequence.Rest{Position: 104, Arrives: true, Waits: true}, Press: sequence.Rest{Position: 108, Arrives: true, Waits: true}}
	none = sequence.Part{Probe: sequence.Rest{Position: math.Inf(1)}, Press: sequence.Rest{Position: math.Inf(1)}}
)

func input(steps ...sequence.Step) sequence.Input {
	return sequence.Input{
		Station: station, Steps: steps, Nominal: good, Missing: none,
		Probe: [3]float64{103, 104, 105}, Press: [3]float64{107, 108, 109}, Stroke: [2]float64{0, 150},
	}
}

// TestPlainCycle holds home, press, move home to the last bit against the moves that the
// plain cycle is made of.
func TestPlainCycle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := func(name string, low, high float64) float64 { return rapid.Float64Range(low, high).Draw(t, name) }
		s := station
		s.Home = f("home", -20, 90)
		s.ApproachSpeed, s.Accel, s.Decel = f("approach", 20, 300), f("accel", 100, 5000), f("decel", 100, 5000)
		reading, retract := f("reading", 101, 110), f("retract", 20, 300)
		part := sequence.Part{Press: sequence.Rest{Position: reading, Arrives: true, Waits: true}}
		home := sequence.Step{Kind: sequence.Move, To: s.Home, Speed: retract, Accel: s.Accel, Decel: s.Decel}
		c := sequence.Study(sequence.Input{Station: s, Steps: []sequence.Step{press, home}, Nominal: part, Missing: none})

		there := motion.Profile{Speed: s.ApproachSpeed, Accel: s.Accel, Decel: s.Decel, EndSpeed: s.SlowSpeed}
		back := motion.Profile{Speed: retract, Accel: s.Accel, Decel: s.Decel}
		require.Equal(t, there.Move(s.A-s.Home).Time, c.Nominal.Times.Before)
		require.Equal(t, (reading-s.A)/s.SlowSpeed, c.Nominal.Times.Push)
		require.Equal(t, back.Move(reading-s.Home).Time, c.Nominal.Times.After)
		require.Equal(t, (s.E-s.A)/s.SlowSpeed, c.Missing.Times.Push)
		require.Equal(t, back.Move(s.E-s.Home).Time, c.Missing.Times.After)
		require.Equal(t, [3]float64{}, c.Drift)
	})
}

// TestPlaces holds low, nominal and high by hand, counted from where the ram is and from
// the last target.
func TestPlaces(t *testing.T) {
	in := input(move(60), probe, press, shift(-10, 2, 0), move(0))
	c := sequence.Study(in)
	ends := func(leg int) (out [3]float64) {
		for i, legs := range c.Places {
			out[i] = legs[leg].End
		}
		return out
	}
	assert.Equal(t, [3]float64{103, 104, 105}, ends(1))
	assert.Equal(t, [3]float64{107, 108, 109}, ends(2))
	assert.Equal(t, [3]float64{97, 98, 99}, ends(3))
	assert.Equal(t, [3]float64{87, 88, 89}, ends(4), "the second pass")
	assert.Equal(t, [3]float64{}, c.Drift)
	in.FromTarget = true
	c = sequence.Study(in)
	assert.Equal(t, [3]float64{100, 100, 100}, ends(3), "from the end of the press, 110")
	assert.Equal(t, 100.0, c.Places[0][3].Target)
	assert.Equal(t, [3]float64{90, 90, 90}, ends(4))
}

// TestDrift holds by hand that a relative step before the press begins elsewhere in the
// second cycle.
func TestDrift(t *testing.T) {
	c := sequence.Study(input(shift(20, 1, 0), press, shift(-98, 1, 0)))
	assert.Equal(t, [3]float64{9, 10, 11}, c.Drift)
	assert.Equal(t, 30.0, c.Again[sequence.Typical][0].End)
	assert.Nil(t, c.Cycles)
	in := input(shift(45, 1, 0), press, shift(-8, 1, 0))
	for limit, cycles := range map[float64]int{140: 1, 105: 0} { // the second begins at 100 and goes to 145; the press goes to 108
		in.Stroke[1] = limit
		c = sequence.Study(in)
		require.NotNil(t, c.Cycles)
		assert.Equal(t, cycles, *c.Cycles)
	}
}

// TestMissing holds by hand what is skipped when the probe refuses, and that no push
// settles where nothing is met.
func TestMissing(t *testing.T) {
	in := input(probe, press, wait(1), move(0))
	in.Missing.Refused = true
	m := sequence.Study(in).Missing
	require.Len(t, m.Passes, 3)
	assert.InDelta(t, 0.5+0.08, m.Times.ProbePush+m.Times.ProbeStay, 1e-12, "5 mm at 10 mm/s, confirm; no settling")
	assert.Zero(t, m.Times.Push+m.Times.Stay)
	assert.InDelta(t, 1+m.Passes[2].Duration, m.Times.After, 1e-12)
	in.Missing.Refused = false
	m = sequence.Study(in).Missing
	assert.InDelta(t, 0.5+0.05, m.Times.Push+m.Times.Stay, 1e-12, "on from 105 to 110, confirm")
	in.Nominal.Press.Position = 110 // past its end: settled and held all the same
	assert.InDelta(t, 0.35, sequence.Study(in).Nominal.Times.Stay, 1e-12)
}

// TestImpossibleHandOvers holds every reason why a step cannot hand over.
func TestImpossibleHandOvers(t *testing.T) {
	for name, steps := range map[string][]sequence.Step{
		"a wait":            {over(move(50)), wait(1), press},
		"the other way":     {over(move(50)), move(20), press},
		"no length":         {over(move(50)), move(50), press},
		"a press past A":    {over(move(102)), press},
		"a probe at A":      {over(move(100)), probe, press},
		"a press from over": {press, over(move(90)), press},
		"missing":           {press, over(move(50))},
		"a pause":           {over(shift(20, 2, 0.1)), move(80), press},
	} {
		t.Run(name, func(t *testing.T) {
			r := sequence.Study(input(steps...)).Nominal
			require.Len(t, r.HandOvers, 1)
			assert.False(t, r.HandOvers[0].Possible)
			for _, p := range r.Passes {
				assert.Zero(t, p.EndSpeed, "done as a stop")
			}
		})
	}
}

// TestHandOverIntoPush holds by hand that the approach is the last link: 100 mm/s at 60,
// and 10 mm/s at A.
func TestHandOverIntoPush(t *testing.T) {
	r := sequence.Study(input(over(shift(30, 2, 0)), press)).Nominal
	require.Len(t, r.HandOvers, 1)
	assert.True(t, r.HandOvers[0].Possible)
	assert.False(t, r.HandOvers[0].Braked)
	assert.Equal(t, 0.0, r.Passes[0].EndSpeed, "between passes there is rest")
	assert.Equal(t, 100.0, r.Passes[1].EndSpeed)
	assert.Equal(t, 100.0, r.Passes[2].StartSpeed)
	// 30 mm: 25 up in 0.5, 5 at 100; 40 mm: (10000−100)/800 = 12.375 down in 0.225.
	assert.InDelta(t, 0.5+0.05, r.Passes[1].Duration, 1e-12)
	assert.InDelta(t, r.Passes[1].Begins+0.55+(40-12.375)/100+0.225, r.Times.Before, 1e-12)
}

// TestSignals holds the times of the signals by hand: zone from 50 to 60 on the way at
// 100 mm/s, the press's own from 107, arrival from 0.1 s after the rest at 108.
func TestSignals(t *testing.T) {
	there := move(100 - 5)
	there.Zone = &[2]float64{50, 60}
	in := input(there, wait(0.5), press, wait(0.3), move(0))
	in.StationZone = &[2]float64{-1, 0}
	r := sequence.Study(in).Nominal
	zone := r.Stretches(sequence.StepZone, in.StationZone)
	times := func(all []sequence.Stretch) (out []float64) {
		for _, s := range all[1:] {
			out = append(out, s.From)
		}
		return out
	}
	// 25 mm in 0.5 s, then 50 at 0.75 s, 60 at 0.85 s.
	begin := r.Passes[2].Begins
	push := r.Times.Before
	require.False(t, zone[0].On)
	got := times(zone)
	require.Len(t, got, 4)
	assert.InDelta(t, 0.75, got[0], 1e-9)
	assert.InDelta(t, 0.85, got[1], 1e-9)
	assert.InDelta(t, push+0.7, got[2], 1e-9)
	assert.InDelta(t, push+0.8+0.35+0.3, got[3], 1e-9, "a wait leaves it on; the move home has none")
	assert.Greater(t, push, begin)
	assert.Equal(t, []int{0, 0, 0, 2, 4}, []int{zone[0].Step, zone[1].Step, zone[2].Step, zone[3].Step, zone[4].Step})

	arrival := times(r.Stretches(sequence.Arrival, nil))
	require.Len(t, arrival, 2)
	assert.InDelta(t, push+0.8+0.1, arrival[0], 1e-9)
	assert.InDelta(t, got[3], arrival[1], 1e-9, "until the next command")

	// At home, 0, the closed zone ends: it goes off as the ram leaves.
	station := r.Stretches(sequence.StationZone, in.StationZone)
	assert.False(t, station[0].On, "on for no time")
	assert.Len(t, station, 1)
}

// TestHold holds by hand: at 50 mm the ram runs at 100 mm/s, 12.5 mm and 0.25 s to rest.
func TestHold(t *testing.T) {
	in := input(over(move(60)), move(90), press, move(0))
	in.Hold = &sequence.HoldCase{Step: 0, Pass: 1, At: 50, Time: 1}
	h := sequence.Study(in).Held
	require.NotNil(t, h)
	assert.InDelta(t, 100, h.Speed, 1e-9)
	assert.InDelta(t, 62.5, h.Rest, 1e-9, "past 60: the step counts as done")
	assert.InDelta(t, 0.75+1, h.Resumes, 1e-9)
	assert.False(t, h.Cancelled)
	assert.InDelta(t, 62.5, h.Passes[1].Start, 1e-9)
	assert.Equal(t, 1, h.Passes[1].Step)
	assert.Equal(t, 0.0, h.End)

	in.Hold.At, in.Hold.Time = 40, 0.1
	h = sequence.Study(in).Held
	assert.InDelta(t, 52.5, h.Rest, 1e-9)
	assert.InDelta(t, 0.65+0.25, h.Resumes, 1e-9, "it stands first")
	// On from rest: √(2·200·7.5) = 54.77 at 60, and on to 90 without rest.
	assert.InDelta(t, math.Sqrt(3000), h.Passes[1].EndSpeed, 1e-9)
	assert.InDelta(t, math.Sqrt(3000), h.Passes[2].StartSpeed, 1e-9)

	in.Steps[0].Cancel = true
	h = sequence.Study(in).Held
	assert.True(t, h.Cancelled)
	assert.Equal(t, 1, h.Passes[1].Step, "the next step begins from there")
	assert.InDelta(t, 52.5, h.Passes[1].Start, 1e-9)

	for _, at := range []float64{0, 60, 61, -1} {
		in.Hold.At = at
		assert.Nil(t, sequence.Study(in).Held, "not inside the step: %v", at)
	}
	in.Hold = &sequence.HoldCase{Step: 2, Pass: 1, At: 95, Time: 1}
	assert.Nil(t, sequence.Study(in).Held, "nothing is known of a push")
}

// TestHoldInPass holds that a hold in one pass of a shift leaves the others, and that a
// cancelled one ends them.
func TestHoldInPass(t *testing.T) {
	in := input(move(60), press, shift(-10, 3, 0.5), move(0))
	in.Hold = &sequence.HoldCase{Step: 2, Pass: 2, At: 93, Time: 1}
	whole := sequence.Study(in)
	require.NotNil(t, whole.Held)
	assert.InDelta(t, whole.Nominal.End, whole.Held.End, 1e-9)
	assert.Greater(t, whole.Held.Total, whole.Nominal.Total+1)
	assert.Len(t, whole.Held.Passes, len(whole.Nominal.Passes)+1)
	in.Steps[2].Cancel = true
	held := sequence.Study(in).Held
	require.NotNil(t, held)
	assert.Len(t, held.Passes, len(whole.Nominal.Passes)-1, "the third pass is left out")
}

// TestHeldRunIsOne holds that a run with a hold has no gap and no jump, wherever it
// begins, and ends where the undisturbed one ends when every step is absolute.
func TestHeldRunIsOne(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := input(over(move(40)), over(move(rapid.Float64Range(45, 90).Draw(t, "to"))), press, over(move(70)), move(0))
		step := rapid.SampledFrom([]int{0, 1, 3, 4}).Draw(t, "step")
		nominal := sequence.Study(in).Nominal.Passes[step]
		in.Hold = &sequence.HoldCase{Step: step, Pass: 1, At: nominal.Start + (nominal.End-nominal.Start)*rapid.Float64Range(0.01, 0.99).Draw(t, "at"), Time: rapid.Float64Range(0, 1).Draw(t, "time")}
		h := sequence.Study(in).Held
		require.NotNil(t, h)
		require.InDelta(t, 0, h.End, 1e-12)
		for i, g := range h.Segments[1:] {
			before := h.Segments[i]
			x, _ := before.At(before.Time)
			require.InDelta(t, before.Begin+before.Time, g.Begin, 1e-9, "no gap")
			require.InDelta(t, x, g.Position, 1e-7, "no jump")
		}
		last := h.Segments[len(h.Segments)-1]
		require.InDelta(t, last.Begin+last.Time, h.Total, 1e-9)
		require.Greater(t, h.Total, nominal.Begins)
	})
}

// TestTimelineEnds holds that a timeline begins at 0 and ends at rest, and that rows are
// apart.
func TestTimeline(t *testing.T) {
	in := input(move(60), wait(0.2), wait(0.3), probe, press, shift(-10, 2, 0), move(0))
	r := sequence.Study(in).Nominal
	rows := r.Timeline()
	require.Zero(t, rows[0].Time)
	for i := range rows[1:] {
		require.Greater(t, rows[i+1].Time, rows[i].Time)
	}
	end := rows[len(rows)-1]
	assert.Equal(t, sequence.Row{Time: r.Total, Step: 6}, end)
	waits := 0
	for _, row := range rows {
		if row.Step == 1 || row.Step == 2 {
			waits++
			assert.Equal(t, 60.0, row.Position)
		}
	}
	assert.Equal(t, 2, waits, "a row each where the step changes")
}

// TestNoWayBack holds by hand that a push which begins past its end, or past where its part
// would stop it, leaves the ram where it stands, with the part and without, and that a push
// without a way to it is slow from its first moment.
func TestNoWayBack(t *testing.T) {
	c := sequence.Study(input(move(120), press, move(0)))
	for _, legs := range c.Places {
		assert.Equal(t, 120.0, legs[1].End)
		assert.Equal(t, 110.0, legs[1].Target, "E")
	}
	for _, r := range []*sequence.Run{c.Nominal, c.Missing} {
		assert.Equal(t, 120.0, r.Passes[1].End)
		assert.Zero(t, r.Times.Push)
		assert.Zero(t, r.Passes[1].StartSpeed, "it does not move")
	}
	c = sequence.Study(input(move(108.5), press, move(0)))
	assert.Equal(t, 108.5, c.Nominal.Passes[1].End, "the part would stop it at 108")
	assert.Equal(t, 109.0, c.Places[sequence.High][1].End)
	assert.Equal(t, station.SlowSpeed, c.Missing.Passes[1].StartSpeed)
	c = sequence.Study(input(move(60), probe, press, move(0)))
	assert.Equal(t, station.SlowSpeed, c.Nominal.Passes[2].StartSpeed, "from where the probe stands")
}

// TestDriftPastTheEnd holds by hand that a cycle drifts on where its push begins past its
// end each time: at 115, 116, 117 mm, and in the fourth cycle at 118 mm, past the stroke.
func TestDriftPastTheEnd(t *testing.T) {
	in := input(shift(115, 1, 0), press, shift(-114, 1, 0))
	in.Stroke[1] = 117.5
	c := sequence.Study(in)
	require.NotNil(t, c.Cycles)
	assert.Equal(t, 3, *c.Cycles)
}
