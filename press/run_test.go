package press

import (
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"ramplan/press/strict"
)

// exampleRun is the worked example of probe and sequence. Its data is invented.
func exampleRun(t testing.TB) *Plan {
	t.Helper()
	data, err := os.ReadFile("../static/examples/pivot-bush.json")
	require.NoError(t, err)
	p, ps := Decode(data)
	require.Empty(t, ps)
	return p
}

// Derived values: the figures of the worked example, from the description of the run,
// computed there by other hands.
func TestWorkedExampleOfTheRun(t *testing.T) {
	p := exampleRun(t)
	r := Evaluate(p)
	assert.True(t, strings.HasPrefix(r.PlanDigest(), "sha256:e43363f52674"), r.PlanDigest())
	near := func(want, got, within float64, what string) { assert.InDelta(t, want, got, within, what) }
	near(66, r.Force.Setting, 0, "setting")
	near(154.02, *r.Window.Zone[0], 1e-9, "zone start")
	near(154.33, *r.Window.Zone[1], 1e-9, "zone end")
	near(154.21, *r.Travel.PushEnd, 1e-9, "push end")

	q := r.Probe
	require.True(t, q.InUse && q.Possible)
	near(12, *q.Setting, 0, "probe setting")
	near(257.573, *q.Low, 5e-4, "low")
	near(294.351, *q.High, 5e-4, "high")
	near(153.89, *q.End, 1e-9, "probe end")
	near(153.89565, *q.LatestEnd, 5e-6, "latest end")
	near(150.336214, *q.StallNominal, 5e-7, "nominal stall")
	near(153.635407, *q.StallLoosest, 5e-7, "loosest stall")
	near(0.112504, *q.Room, 5e-7, "room")
	near(4.7473, q.CaughtBelow.Effective, 5e-5, "caught below")
	near(161.135, q.CaughtBelow.Holding, 5e-4, "holding")
	near(8.5115, *q.PassedAbove, 5e-5, "passed above")
	near(0.1008, *q.FalseRefusalPPM, 5e-5, "refused wrongly")
	near(2.760816, *q.WatchTime, 5e-7, "watch time of the probe")
	near(1, rowOfName(t, r, RowLoose).Probe.Detection, 1e-9, "loose")
	near(0, rowOfName(t, r, RowLoose).Detection, 1e-9, "loose without the probe")

	c := r.Cycle
	near(1.005816, c.Approach, 5e-7, "approach")
	near(1.162702, c.Probe, 5e-7, "probe")
	near(0.629594, c.Press, 5e-7, "press")
	near(1.66778, c.Retract, 5e-7, "retract")
	near(7.715892, c.Total, 5e-7, "total")
	near(7.423001, *c.MissingTotal, 5e-7, "missing")
	near(2.864149, *c.WatchTime, 5e-7, "watch time")

	s := r.Sequence
	require.NotNil(t, s)
	for i, want := range []float64{154.02, 154.113777, 154.21} {
		near(want, s.Steps[4].End[i], 5e-7, "where the press leaves the ram")
	}
	near(220, s.Hold.Speed, 1e-9, "hold speed")
	near(13.444444, s.Hold.StoppingDistance, 5e-7, "stopping distance")
	near(76.555556, s.Hold.Rest, 5e-7, "rest")
	near(5.901299, s.Hold.Total, 5e-7, "held total")
	zone := s.Nominal.Signals.StepZone
	require.Len(t, zone.Changes, 4)
	for i, want := range []float64{0.313971, 0.511111, 2.782482, 3.048112} {
		near(want, zone.Changes[i], 5e-7, "zone")
	}
	require.Len(t, s.Elsewhere, 3)
	for i, want := range []struct {
		signal string
		from   float64
		step   int
	}{{"station_zone", 0, 0}, {"step_zone", 0.313971, 0}, {"station_zone", 4.658157, 8}} {
		assert.Equal(t, want.signal, s.Elsewhere[i].Signal)
		assert.Equal(t, want.step, s.Elsewhere[i].Step)
		near(want.from, s.Elsewhere[i].From, 5e-7, "elsewhere")
	}
	assert.Empty(t, s.Missing.Signals.Arrival.Changes, "no arrival without the part")
	for _, m := range s.Missing.Timeline {
		assert.NotEqual(t, 4, m.Step, "home without the press")
	}

	var said []string
	for _, f := range r.Findings {
		said = append(said, string(f.Severity)+" "+f.Code)
	}
	assert.Subset(t, said, []string{"caution probe-overrun", "caution lamp-second-meaning", "note second-start", "note loose-fit-probed"})
	assert.False(t, r.Blocked())
	for _, f := range r.Findings {
		assert.NotEqual(t, LooseFitUnseen, f.Code)
	}
}

func rowOfName(t require.TestingT, r *Result, name string) FaultRow {
	for _, f := range r.Faults {
		if f.Name == name && !f.Own {
			return f
		}
	}
	require.Fail(t, "no row "+name)
	return FaultRow{}
}

// The plain cycle written as steps gives the figures of the plan without them, to the
// last bit, but for the peak speed, which is that of every step.
func TestPlainCycleAsSteps(t *testing.T) {
	compared := 0
	rapid.Check(t, func(t *rapid.T) {
		p := randomPlan(t)
		r := Evaluate(p)
		home := p.Station.Home
		if r.Travel.PushEnd == nil || home > min(r.Travel.ApproachEnd, *r.Travel.PushEnd) || r.Cycle.Retract == 0 {
			return // by hand it rests before home, and a move home goes forward
		}
		if r.Cycle.Press == 0 {
			return // the approach already met the part, and a push has no way back to there
		}
		compared++
		d := p.Draft()
		for _, e := range plainSteps(p) {
			d.Set(e.Path, e.Text)
		}
		q, ps := d.Check()
		require.Empty(t, ps)
		s := Evaluate(q)
		require.NotNil(t, s.Sequence)
		want, got := r.Cycle, s.Cycle
		want.PeakSpeed, got.PeakSpeed = 0, 0
		require.Equal(t, want, got)
		require.Equal(t, r.Heating, s.Heating)
		require.Equal(t, r.Faults, s.Faults)
		require.True(t, s.Sequence.Closes)
	})
	assert.Positive(t, compared)
}

func plainSteps(p *Plan) []Entry {
	return []Entry{
		{"sequence.steps[0].kind", StepPress}, {"sequence.steps[1].kind", StepMove},
		{"sequence.steps[1].to", strict.PlainNumber(p.Station.Home)}, {"sequence.steps[1].speed", strict.PlainNumber(p.Motion.RetractSpeed)},
	}
}

// A plan without the two sections has no figure of theirs, and one that has them and does
// not use them has the figures of one without.
func TestWithoutProbeAndSequence(t *testing.T) {
	p := example(t)
	r := Evaluate(p)
	assert.Nil(t, r.Sequence)
	assert.Zero(t, r.Cycle.Probe)
	assert.Equal(t, Probe{Possible: true, HighestSetting: r.Probe.HighestSetting}, r.Probe)
	for _, f := range r.Faults {
		assert.Nil(t, f.Probe)
	}
	q := with(t, p, "probe.use", "false", "probe.setting", "11")
	s := Evaluate(q)
	assert.NotEqual(t, r.PlanDigest(), s.PlanDigest())
	of := func(r *Result) string {
		data, err := r.JSON(false)
		require.NoError(t, err)
		return strings.Replace(string(data), r.PlanDigest(), "", 1)
	}
	assert.Equal(t, of(r), of(s))
}

// randomRun adds a probe, a sequence or both to a plan.
func randomRun(t *rapid.T, p *Plan) *Plan {
	d := p.Draft()
	probe := rapid.Bool().Draw(t, "probe")
	text := func(low, high float64, what string) string {
		return strict.PlainNumber(math.Round(rapid.Float64Range(low, high).Draw(t, what)*100) / 100)
	}
	maybe := func(path string, low, high float64) {
		if rapid.IntRange(0, 3).Draw(t, path+" given") == 0 {
			d.Set(path, text(low, high, path))
		}
	}
	if probe {
		d.Set("probe.use", "true")
		maybe("probe.setting", p.Ram.SettingMin+0.01, p.Ram.SettingMax-0.01)
		maybe("probe.end", 40, 140)
		maybe("probe.confirm_time", 0, 0.2)
		d.Set("probe.zone_live", strconv.FormatBool(rapid.Bool().Draw(t, "alive")))
	}
	n := 0
	step := func(kind string, entries ...string) {
		d.Set(stepPath(n, "kind"), kind)
		for i := 0; i < len(entries); i += 2 {
			d.Set(stepPath(n, entries[i]), entries[i+1])
		}
		n++
	}
	going := func() []string {
		var out []string
		if rapid.Bool().Draw(t, "own speed") {
			out = append(out, "speed", text(5, 320, "speed"), "accel", text(100, 3200, "accel"), "decel", text(100, 3200, "decel"))
		}
		out = append(out, "hand_over", strconv.FormatBool(rapid.Bool().Draw(t, "hand over")), "on_hold", rapid.SampledFrom([]string{GoOn, Cancel}).Draw(t, "on hold"))
		if rapid.IntRange(0, 2).Draw(t, "zone") == 0 {
			from := rapid.Float64Range(-1, 100).Draw(t, "zone start")
			out = append(out, "zone[0]", strict.PlainNumber(math.Round(from*10)/10), "zone[1]", strict.PlainNumber(math.Round(from*10)/10+rapid.SampledFrom([]float64{0.2, 3, 40}).Draw(t, "zone")))
		}
		return out
	}
	some := func(most int) {
		for range rapid.IntRange(0, most).Draw(t, "steps") {
			switch rapid.SampledFrom([]string{StepMove, StepMove, StepShift, StepWait}).Draw(t, "kind") {
			case StepMove:
				step(StepMove, append([]string{"to", text(-2, 120, "to")}, going()...)...)
			case StepShift:
				by := rapid.SampledFrom([]string{"-10", "-3", "0.5", "7", "30"}).Draw(t, "by")
				step(StepShift, append([]string{"by", by, "times", strconv.Itoa(rapid.IntRange(1, 3).Draw(t, "times")), "pause", rapid.SampledFrom([]string{"0", "0.1"}).Draw(t, "pause")}, going()...)...)
			default:
				step(StepWait, "time", text(0, 1, "wait"))
			}
		}
	}
	if rapid.IntRange(0, 4).Draw(t, "sequence") > 0 {
		d.Set("sequence.relative_from", rapid.SampledFrom([]string{FromActual, FromTarget}).Draw(t, "from"))
		some(4)
		if probe {
			step(StepProbe)
		}
		step(StepPress)
		some(4)
		if rapid.Bool().Draw(t, "home") {
			step(StepMove, append([]string{"to", strict.PlainNumber(p.Station.Home)}, going()...)...)
		}
		if rapid.Bool().Draw(t, "station zone") {
			d.Set("sequence.station_zone[0]", "-1")
			d.Set("sequence.station_zone[1]", text(0, 150, "station zone"))
		}
		if i := rapid.IntRange(0, n-1).Draw(t, "hold"); rapid.Bool().Draw(t, "holds") {
			if kind, _ := d.Get(stepPath(i, "kind")); kind != StepWait {
				d.Set("sequence.hold.step", strconv.Itoa(i))
				d.Set("sequence.hold.at", text(0, 120, "at"))
				d.Set("sequence.hold.time", text(0, 1, "time"))
			}
		}
	}
	q, ps := d.Check()
	if len(ps) > 0 {
		t.Fatalf("the random run is refused: %v", ps)
	}
	return q
}

// What the stages of a cycle add up to is the time of its steps; every timeline runs on
// and ends at rest; every step begins where the one before ended; and every finding obeys
// its rule.
func TestRandomRunsAreWhole(t *testing.T) {
	seen := map[string]bool{}
	runs := 0
	rapid.Check(t, func(t *rapid.T) {
		base := randomPlan(t)
		if rapid.Bool().Draw(t, "the example") {
			base = exampleBase
		}
		p := randomRun(t, base)
		r := Evaluate(p)
		for _, f := range r.Findings {
			obeys(t, f)
			seen[f.Code] = true
		}
		c, s := r.Cycle, r.Sequence
		require.InDelta(t, c.Total, c.Approach+c.Probe+c.Press+c.Settle+c.Confirm+c.Hold+c.Retract+c.Handling, 1e-9)
		if s == nil {
			return
		}
		runs++
		require.InDelta(t, c.Total, s.Nominal.Total+c.Handling, 1e-9)
		require.InDelta(t, *c.MissingTotal, s.Missing.Total+c.Handling, 1e-9)
		at := 0.0
		for i, step := range s.Steps {
			require.InDelta(t, at, step.Begins, 1e-9)
			at += step.Duration
			if i > 0 {
				require.Equal(t, s.Steps[i-1].End, step.Start)
			}
		}
		require.InDelta(t, s.Nominal.Total, at, 1e-9)
		for _, step := range s.Steps {
			if step.Kind != StepPress && step.Kind != StepProbe {
				continue
			}
			for k := range step.End { // a push has no way back
				require.GreaterOrEqual(t, step.End[k], max(step.Start[k], r.Travel.ApproachEnd)-1e-9)
			}
		}
		whole(t, s.Nominal)
		whole(t, s.Missing)
		if s.Hold != nil {
			whole(t, s.Hold.RunTrace)
			require.GreaterOrEqual(t, s.Hold.StoppingDistance, 0.0)
		}
	})
	assert.Positive(t, runs)
	// What is said often; that each code can be met is held by its lead and the derived runs.
	for _, code := range []string{ProbeNoFit, SequenceNotClosed, NotRetracted} {
		assert.True(t, seen[code], "%s was never said", code)
	}
}

var exampleBase = func() *Plan {
	data, err := os.ReadFile("../static/examples/example-plan.json")
	if err != nil {
		panic(err)
	}
	p, _ := Decode(data)
	return p
}()

// whole wants a run without a jump in time or place.
func whole(t require.TestingT, r RunTrace) {
	rows := r.Timeline
	for i := 1; i < len(rows); i++ {
		a, b := rows[i-1], rows[i]
		dt := b.Time - a.Time
		require.GreaterOrEqual(t, dt, 0.0)
		require.InDelta(t, a.Position+a.Speed*dt+a.Acceleration*dt*dt/2, b.Position, 1e-6)
	}
	last := rows[len(rows)-1]
	require.Zero(t, last.Speed)
	require.Zero(t, last.Acceleration)
	require.Equal(t, r.Total, last.Time)
	for _, s := range []*Changes{&r.Signals.Arrival, &r.Signals.StepZone, r.Signals.StationZone} {
		if s == nil {
			continue
		}
		for i := 1; i < len(s.Changes); i++ {
			require.Greater(t, s.Changes[i], s.Changes[i-1])
		}
	}
}

// Nothing that is allowed makes the probe's figures contradict each other.
func TestProbeFiguresAgree(t *testing.T) {
	found := 0
	rapid.Check(t, func(t *rapid.T) {
		p := randomRun(t, exampleBase)
		r := Evaluate(p)
		q := r.Probe
		if q.End == nil {
			return
		}
		found++
		require.LessOrEqual(t, *q.Low, *q.High)
		require.LessOrEqual(t, *q.PassLimit, *q.End)
		last := 1.0
		for _, x := range q.Detection.Refused {
			require.LessOrEqual(t, x, last+1e-9)
			last = x
		}
		require.InDelta(t, *q.RefusedAtZero, q.Detection.Refused[0], 1e-12)
		if q.CaughtBelow != nil && q.PassedAbove != nil {
			require.Less(t, q.CaughtBelow.Effective, *q.PassedAbove)
		}
		for _, f := range r.Faults {
			row := f.Probe
			require.NotNil(t, row, f.Name)
			require.GreaterOrEqual(t, row.Detection, 0.0)
			require.LessOrEqual(t, row.Detection, 1.0)
			if row.Verdict == EarlyContact {
				require.Nil(t, row.Arrival)
				continue
			}
			require.Equal(t, !*row.Passed, row.Verdict == RefusedByProbe, f.Name)
			if !*row.Passed {
				require.LessOrEqual(t, *row.Time, *q.WatchTime+1e-9, f.Name)
			}
		}
	})
	assert.Positive(t, found)
}

// BenchmarkHundredSteps evaluates a plan of a hundred steps, with and without a probe.
func BenchmarkHundredSteps(b *testing.B) {
	for name, probe := range map[string]bool{"plain": false, "probe": true} {
		d := example(b).Draft()
		n := 0
		step := func(kind string, entries ...string) {
			d.Set(stepPath(n, "kind"), kind)
			for i := 0; i < len(entries); i += 2 {
				d.Set(stepPath(n, entries[i]), entries[i+1])
			}
			n++
		}
		for n < 60 {
			step(StepMove, "to", strconv.Itoa(20+n%2), "hand_over", "true", "zone[0]", "10", "zone[1]", "20.5")
		}
		if probe {
			d.Set("probe.use", "true")
			step(StepProbe)
		}
		step(StepPress)
		for n < 100 {
			step(StepMove, "to", strconv.Itoa(100-n), "hand_over", "true")
		}
		p, ps := d.Check()
		require.Empty(b, ps)
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				Evaluate(p)
			}
		})
	}
}

// The push is the press: a station zone that is on in the probe alone has no second
// meaning there; and what needs no run is said without one, where the probe serves at no
// setting.
func TestLampsOfTheRun(t *testing.T) {
	says := func(r *Result, code string) (paths []string) {
		for _, f := range r.Findings {
			if f.Code == code {
				paths = append(paths, f.Path)
			}
		}
		return paths
	}
	base := exampleRun(t)
	zone := func(from, to string) *Result {
		return Evaluate(with(t, base, "sequence.station_zone[0]", from, "sequence.station_zone[1]", to))
	}
	assert.NotContains(t, says(zone("140", "148"), LampSecondMeaning), "sequence.station_zone", "off before the press begins, at 150.3 mm")
	assert.Contains(t, says(zone("140", "152"), LampSecondMeaning), "sequence.station_zone")
	assert.Empty(t, says(zone("140", "148"), ZonesAlike))

	r := Evaluate(with(t, base, "sequence.station_zone[0]", "154.02", "sequence.station_zone[1]", "154.33", "joint.fit", "H7/h6", "sequence.hold.step", "4"))
	require.Contains(t, says(r, ProbeNotPossible), "probe.setting")
	require.Nil(t, r.Sequence)
	if z := r.Window.Zone; assert.NotNil(t, z) && assert.NotNil(t, z[0]) {
		r = Evaluate(with(t, base, "sequence.station_zone[0]", strict.PlainNumber(*z[0]), "sequence.station_zone[1]", strict.PlainNumber(*z[1]), "joint.fit", "H7/h6", "sequence.hold.step", "4"))
	}
	assert.NotEmpty(t, says(r, ZonesAlike))
	assert.NotEmpty(t, says(r, HoldInPress))
}

// A fault inside one step hides none of another.
func TestFaultsOfSeveralSteps(t *testing.T) {
	d := exampleRun(t).Draft()
	d.Set("sequence.steps[0].speed", "-1")
	d.Set("sequence.steps[7].by", "0")
	_, ps := d.Check()
	assert.NotEmpty(t, ps.At("sequence.steps[0].speed"))
	assert.NotEmpty(t, ps.At("sequence.steps[7].by"))
}

// What comes to the probe end without arrival is looked at after the probe's watch time;
// a signal that is stuck off is timed as if it had come, by the description of the run.
func TestProbeRowsTime(t *testing.T) {
	r := Evaluate(exampleRun(t))
	for _, f := range r.Faults {
		if q := f.Probe; q.Passed != nil && !*q.Passed && q.Reading == nil {
			assert.InDelta(t, *r.Probe.WatchTime, *q.Time, 1e-9, f.Name)
		}
	}
	assert.InDelta(t, 2.168518, *rowOfName(t, r, RowArrivalStuckOff).Probe.Time, 5e-7) // from a second implementation
}
