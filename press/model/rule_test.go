package model

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// randomRule draws a station whose window is proposed by one of the rules.
func randomRule(t *rapid.T, rule string) *Input {
	in := randomInput(t)
	in.Window = Window{GuardFactor: in.Window.GuardFactor, Rule: rule, ProcessSD: rapid.Float64Range(0.5, 6).Draw(t, "process sd")}
	in.Window.TargetsFor = rapid.SampledFrom([]string{"", OnAverage, OnWorstDay}).Draw(t, "day")
	in.Targets.FalseAcceptPPM = math.Pow(10, rapid.Float64Range(-1, 5).Draw(t, "accept"))
	in.Targets.FalseRejectPPM = math.Pow(10, rapid.Float64Range(-1, 5).Draw(t, "reject"))
	return in
}

// judged is the measure of an evaluated window by the risks of the result itself, of the
// average or of the worst day; not known where the nominal part stalls.
func judged(out *Outcome, in *Input) (float64, bool) {
	accept, reject := max(in.Targets.FalseAcceptPPM, 0.01), max(in.Targets.FalseRejectPPM, 0.01)
	if in.Window.TargetsFor == OnWorstDay {
		d := out.WorstDay()
		if d == nil || d.Worst == nil {
			return 0, false
		}
		return max(d.Worst.ConsumerPPM/accept, d.Worst.ProducerPPM/reject), true
	}
	if out.Risk.ConsumerPPM == nil {
		return 0, false
	}
	return max(*out.Risk.ConsumerPPM/accept, *out.Risk.ProducerPPM/reject), true
}

// doubtOf is what the risks are known to, in terms of the targets.
func doubtOf(in *Input) float64 {
	return 1e-2 / max(min(in.Targets.FalseAcceptPPM, in.Targets.FalseRejectPPM), 0.01)
}

// Every window that is proposed for the targets stands within the drawing and after the
// approach, and is found to do what is said of it.
func TestTargetsAreMetAsSaid(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := randomRule(t, ByTarget)
		out := Evaluate(in)
		if !out.Pressable() {
			return
		}
		target := out.Window.Target
		if target.Measure == nil {
			if out.Window.Acceptance != nil || target.Met || out.Count(Blocker) == 0 {
				t.Fatalf("no window, and %+v", out.Window)
			}
			return
		}
		z1, e := *out.Window.Zone[0], *out.Travel.PushEnd
		if good := out.Window.GoodRange; z1 < good[0]-1e-9 || e > good[1]+1e-9 || z1 >= e || z1 < out.Travel.ApproachEnd-1e-9 {
			t.Fatalf("proposed %v to %v, good %v, approach end %v", z1, e, good, out.Travel.ApproachEnd)
		}
		if target.Met != (*target.Measure <= 1) {
			t.Fatalf("%+v", *target)
		}
		m, known := judged(out, in)
		if known && math.Abs(m-*target.Measure) > doubtOf(in)+1e-9*m {
			t.Fatalf("said %v, found %v", *target.Measure, m)
		}
	})
}

// No other pair of positions does better, each set by hand and evaluated.
func TestNoOtherWindowIsBetter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := randomRule(t, ByTarget)
		in.Station.PositionStep = 0.03 // six positions or so
		out := Evaluate(in)
		if !out.Pressable() || out.Window.Target.Measure == nil {
			return
		}
		doubt := 2 * doubtOf(in)
		m := *out.Window.Target.Measure
		width := *out.Travel.PushEnd - *out.Window.Zone[0]
		places := positions(out.Window.GoodRange, in.Station.PositionStep)
		for i, z1 := range places {
			for _, e := range places[i+1:] {
				if z1 < out.Travel.ApproachEnd-1e-9 {
					continue
				}
				other := *in
				other.Window.ZoneStart, other.Window.PushStroke = &z1, ptr(e-out.Travel.ApproachEnd)
				by := Evaluate(&other)
				n, known := judged(by, &other)
				if !known {
					continue
				}
				if n < m*(1-2e-6)-doubt && m > 0.1+doubt {
					t.Fatalf("%v to %v has %v, the proposed one %v", z1, e, n, m)
				}
				if m <= 0.1 && n < 0.1-doubt && e-z1 < width-1e-9 {
					t.Fatalf("%v to %v has %v and is narrower than the proposed one, %v wide with %v", z1, e, n, width, m)
				}
			}
		}
	})
}

// The process's window lies within the guard's and holds the process where the guard lets
// it; each edge says which of the two it is.
func TestProcessNeverPassesTheGuard(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := randomRule(t, ByProcess)
		other := *in
		other.Window.Rule = ByGuard
		out, guard := Evaluate(in), Evaluate(&other)
		if !out.Pressable() {
			return
		}
		if guard.Window.Acceptance == nil {
			if out.Travel.PushEnd != nil || out.Window.Acceptance != nil {
				t.Fatalf("a window without one by the guard: %+v", out.Window)
			}
			return
		}
		z1, e := *out.Window.Zone[0], *out.Travel.PushEnd
		g1, ge := *guard.Window.Zone[0], *guard.Travel.PushEnd
		if z1 < g1 || e > ge {
			t.Fatalf("process %v to %v, guard %v to %v", z1, e, g1, ge)
		}
		for _, edge := range []struct {
			by   string
			same bool
		}{{*out.Window.By.ZoneStart, z1 == g1}, {*out.Window.By.PushEnd, e == ge}} {
			if edge.by == ByGuard && !edge.same || edge.by != ByGuard && edge.by != ByProcess {
				t.Fatalf("%v at %v to %v, guard %v to %v", edge.by, z1, e, g1, ge)
			}
		}
		if *out.Window.By.ZoneStart == ByProcess && *out.Window.By.PushEnd == ByProcess {
			w := evaluated(in)
			reach := in.Window.ProcessSD * in.readingSpread(&w.parts, &w.seated)
			if out.Travel.SeatReading-z1 < reach-1e-8 || e-out.Travel.SeatReading < reach-1e-8 {
				t.Fatalf("%v to %v does not hold %v ± %v", z1, e, out.Travel.SeatReading, reach)
			}
		}
	})
}

// The process of the example, by hand: sd(C)² = (0.02/3)² + 0.015²/3 = 1.1944e-4 mm²; with
// the uncertainty of the reading, 0.013902 mm, the spread is √(1.1944e-4 + 1.9327e-4) =
// 0.017684 mm, and two of them reach 0.035367 mm to both sides of the nominal reading.
func TestProcessByHand(t *testing.T) {
	in := example()
	in.Window.Rule, in.Window.ProcessSD = ByProcess, 2
	out := Evaluate(in)
	w := evaluated(in)
	assert.InDelta(t, 0.017684, in.readingSpread(&w.parts, &w.seated), 2e-6)
	nominal := out.Travel.SeatReading
	assert.InDelta(t, math.Floor((nominal-0.035367)*100)/100, *out.Window.Zone[0], 1e-9)
	assert.InDelta(t, math.Ceil((nominal+0.035367)*100)/100, *out.Travel.PushEnd, 1e-9)
	assert.Equal(t, ByProcess, *out.Window.By.ZoneStart)
	assert.Equal(t, Pair{*out.Window.Zone[0], *out.Travel.PushEnd}, *out.Window.Acceptance)
}

// What is set by hand stays, and the other edge is found for it.
func TestHandStays(t *testing.T) {
	in := example()
	in.Window.Rule = ByTarget
	z1 := 115.0951 // on no step
	in.Window.ZoneStart = &z1
	out := Evaluate(in)
	assert.Equal(t, z1, *out.Window.Zone[0])
	assert.Equal(t, ByHand, *out.Window.By.ZoneStart)
	assert.Equal(t, ByTarget, *out.Window.By.PushEnd)
	best := math.Inf(1)
	for _, e := range positions(out.Window.GoodRange, 0.01) {
		if e > z1 {
			other := *in
			other.Window.PushStroke = ptr(e - out.Travel.ApproachEnd)
			m, known := judged(Evaluate(&other), in)
			require.True(t, known)
			best = min(best, m)
		}
	}
	m, _ := judged(out, in)
	assert.InDelta(t, best, m, 1e-6)

	push := 7.8
	in.Window.PushStroke = &push
	out = Evaluate(in)
	assert.Equal(t, ByHand, *out.Window.By.PushEnd)
	m, _ = judged(out, in)
	assert.InDelta(t, m, *out.Window.Target.Measure, 1e-6, "nothing is left to propose, and it is judged all the same")

	in = example()
	in.Window.Rule, in.Station.PositionStep = ByTarget, 0.5
	out = Evaluate(in)
	assert.Nil(t, out.Window.Target.Measure)
	assert.False(t, out.Window.Target.Met)
	assert.Nil(t, out.Window.By.ZoneStart)
	assert.Equal(t, NoAcceptance, out.Findings[0].Code)
}

// Every change that is told for a missed target does it, and none is told where not even
// its limit does.
func TestChangesDoIt(t *testing.T) {
	told, missed := 0, 0
	check := func(t require.TestingT, in *Input) {
		out := Evaluate(in)
		if out.Window.Target == nil {
			return
		}
		changes := out.TargetChanges()
		if out.Window.Target.Met {
			require.Empty(t, changes)
			return
		}
		missed++
		for _, c := range changes {
			if c.To == nil {
				continue
			}
			told++
			require.NotEmpty(t, c.Entries, c.Path)
			after := Evaluate(in.with(c.Entries))
			require.True(t, after.Window.Target.Met, "%s to %v: %v", c.Path, *c.To, *after.Window.Target.Measure)
		}
	}
	rapid.Check(t, func(t *rapid.T) { check(t, randomRule(t, ByTarget)) })
	in := example()
	in.Window.Rule, in.Targets.FalseRejectPPM, in.Targets.FalseAcceptPPM = ByTarget, 1, 1
	in.Station.ReferenceUncertainty = 0.03
	missed, told = 0, 0
	check(t, in)
	assert.Equal(t, 1, missed)
	assert.Positive(t, told)
	for _, c := range Evaluate(in).TargetChanges() {
		if c.Path == "station.reference_uncertainty" {
			// A thousandth of the way less does not do it.
			in.Station.ReferenceUncertainty = *c.To + 0.03/1000
			assert.False(t, Evaluate(in).Window.Target.Met)
		}
	}
}

// A setting that is chosen for the targets is the best of all steps of the force window,
// and the usual one stays where it meets them.
func TestSettingForTheTargets(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := randomRule(t, rapid.SampledFrom([]string{ByTarget, ByGuard, ByProcess}).Draw(t, "rule"))
		usual := Evaluate(in)
		in.Window.SettingFor = ForTarget
		out := Evaluate(in)
		if !out.Pressable() || out.Force.Steps == nil {
			return
		}
		w := evaluated(in)
		measure := func(c float64) float64 { return w.measureAt(w.force.at(c)) }
		if m := measure(usual.Force.Setting); m <= 1 {
			if out.Force.Setting != usual.Force.Setting || out.Window.By.Setting != ForForce {
				t.Fatalf("%v met the targets with %v, and %v is set", usual.Force.Setting, m, out.Force.Setting)
			}
			return
		}
		least := math.Inf(1)
		for k := math.Round(out.Force.Steps[0] / in.Ram.SettingStep); k <= math.Round(out.Force.Steps[1]/in.Ram.SettingStep); k++ {
			least = min(least, measure(multiple(k, in.Ram.SettingStep)))
		}
		if got := measure(out.Force.Setting); got > least*1.01+1e-12 {
			t.Fatalf("%v is set with %v, the least is %v", out.Force.Setting, got, least)
		}
	})
}

// The usual window is what it was, and tells by what it was found.
func TestOriginsOfTheUsualWindow(t *testing.T) {
	out := Evaluate(example())
	guard, margin := ByGuard, ByMargin
	assert.Equal(t, Origins{ForForce, ByClearance, &guard, &guard, &margin}, out.Window.By)
	assert.Nil(t, out.Window.Target)
	assert.Empty(t, out.TargetChanges())
	assert.Nil(t, new(Outcome).WorstDay())
}

func BenchmarkTarget(b *testing.B) {
	in := example()
	in.Window.Rule = ByTarget
	perCore(b, func() { Evaluate(in) })
}

func BenchmarkTargetChanges(b *testing.B) {
	in := example()
	in.Window.Rule, in.Targets.FalseRejectPPM, in.Targets.FalseAcceptPPM = ByTarget, 1, 1
	in.Station.ReferenceUncertainty = 0.03
	perCore(b, func() { Evaluate(in).TargetChanges() })
}

func BenchmarkWorstDay(b *testing.B) {
	// A new evaluation each time: an outcome works its day out once.
	out := Evaluate(example())
	perCore(b, func() { out.work.worstDay() })
}
