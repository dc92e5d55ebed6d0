package press

import (
	"bytes"
	"context"
	"encoding/json"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/simulate"
)

func simulated(t *testing.T, p *Plan, parts int64) *Simulation {
	t.Helper()
	s := Evaluate(p).Simulate(context.Background(), SimulationOptions{Parts: parts, Seed: 1, Precision: 0.5})
	require.True(t, s.Complete)
	return s
}

func derivedPlan(t *testing.T, name string) *Plan {
	t.Helper()
	data, err := os.ReadFile("../testdata/plans/derived/" + name + ".json")
	require.NoError(t, err)
	p, problems := Decode(data)
	require.Empty(t, problems)
	return p
}

// The document has the keys that other programs rely on, and its figures agree with each
// other.
func TestSimulationDocument(t *testing.T) {
	s := simulated(t, example(t), 100_000)
	data, err := s.JSON()
	require.NoError(t, err)
	assert.Equal(t, 1, bytes.Count(data, []byte("\n")), "one line")
	var d map[string]any
	require.NoError(t, json.Unmarshal(data, &d))

	truths := []string{"unseated", "long", "short", "loose", "conforming"}
	verdicts := []string{"on_on", "on_off", "off_on", "off_off", "early_contact"}
	shares := d["shares"].(map[string]any)
	var parts float64
	for _, truth := range truths {
		counted, estimated := d["matrix"].(map[string]any)[truth].(map[string]any), shares["matrix"].(map[string]any)[truth].(map[string]any)
		require.Len(t, counted, 5)
		require.Len(t, estimated, 5)
		for _, verdict := range verdicts {
			parts += counted[verdict].(float64)
			assert.Len(t, estimated[verdict], 3)
		}
	}
	assert.EqualValues(t, 100_000, parts)
	for i, pair := range d["verdicts"].([]any) {
		assert.Equal(t, verdicts[i], pair.(map[string]any)["pair"])
		assert.NotNil(t, pair.(map[string]any)["words"])
	}
	assert.Len(t, d["counted"], 13)
	assert.Len(t, shares["named"], 13)
	for _, name := range shareNames {
		assert.Contains(t, d["counted"], name)
		assert.Contains(t, shares["named"], name)
	}
	readings := d["readings"].(map[string]any)
	assert.Len(t, readings["seated"], 200)
	assert.Len(t, readings["stalled"], 200)
	good := Evaluate(example(t)).Window.GoodRange
	assert.InDelta(t, good[0]-(good[1]-good[0])/2, readings["from"], 1e-9)
	assert.InDelta(t, (good[1]-good[0])/100, readings["width"], 1e-12)
	assert.Equal(t, shares["points"], 512.0)
	assert.Equal(t, shares["replications"], 16.0)
	closed := Evaluate(example(t)).Risk
	assert.InDelta(t, *closed.ProducerPPM, d["closed_form"].(map[string]any)["producer_ppm"], 1e-9)
}

// Counts sort by truth and verdict, and the named shares add up from them.
func TestSimulatedSharesAddUp(t *testing.T) {
	p := with(t, example(t), "ram.force_tolerance", "25", "joint.holding_required", "600", "requirement.height_high", "25.02", "motion.clearance", "0")
	s := simulated(t, p, 200_000)
	m, c := s.Matrix, s.Counted
	sum := func(cells ...int64) (n int64) {
		for _, k := range cells {
			n += k
		}
		return n
	}
	row := func(b ByVerdict[int64]) int64 { return sum(b.OnOn, b.OnOff, b.OffOn, b.OffOff, b.EarlyContact) }
	assert.Equal(t, row(m.Unseated), c.Unseated.Count)
	assert.Equal(t, row(m.Long), c.Long.Count)
	assert.Equal(t, row(m.Short), c.Short.Count)
	assert.Equal(t, row(m.Loose), c.Loose.Count)
	assert.Equal(t, row(m.Conforming), c.Conforming.Count)
	assert.Equal(t, sum(m.Unseated.OnOn, m.Long.OnOn, m.Short.OnOn, m.Loose.OnOn, m.Conforming.OnOn), c.Accepted.Count)
	assert.Equal(t, sum(m.Long.OnOn, m.Short.OnOn), c.FalseAcceptHeight.Count)
	assert.Equal(t, m.Unseated.OnOn, c.FalseAcceptUnseated.Count)
	assert.Equal(t, m.Loose.OnOn, c.FalseAcceptLoose.Count)
	assert.Equal(t, sum(c.FalseAcceptHeight.Count, c.FalseAcceptUnseated.Count, c.FalseAcceptLoose.Count), c.FalseAccept.Count)
	assert.Equal(t, sum(m.Conforming.OnOff, m.Conforming.OffOn, m.Conforming.OffOff), c.FalseReject.Count)
	assert.Equal(t, sum(m.Unseated.EarlyContact, m.Long.EarlyContact, m.Short.EarlyContact, m.Loose.EarlyContact, m.Conforming.EarlyContact), c.EarlyContact.Count)
	for i, share := range c.All() {
		assert.InDelta(t, float64(share.Count)*5, share.PPM, 1e-9, shareNames[i])
		assert.LessOrEqual(t, share.Low, share.PPM)
		assert.LessOrEqual(t, share.PPM, share.High)
	}
	early := c.EarlyContact.Count
	seen := s.Readings.Below + s.Readings.Above
	for i := range s.Readings.Seated {
		seen += s.Readings.Seated[i] + s.Readings.Stalled[i]
	}
	assert.EqualValues(t, 200_000-early, seen, "each part that is not met early has a reading")
}

// Without a window there are readings and nothing that rests on signals.
func TestSimulationWithoutWindow(t *testing.T) {
	p := with(t, example(t), "window.guard_factor", "20")
	require.Nil(t, Evaluate(p).Verdict)
	s := simulated(t, p, 1000)
	assert.Nil(t, s.Matrix)
	assert.Nil(t, s.Counted)
	assert.Nil(t, s.Shares)
	assert.Nil(t, s.Worst)
	assert.Nil(t, s.BadLot)
	assert.Nil(t, s.Verdicts)
	require.NotNil(t, s.Readings)
	assert.EqualValues(t, 1000, s.Parts)
	assert.NotNil(t, s.Closed.ConformingShare)
}

// Somebody who waits is told of each answer on the way.
func TestSimulationIsRefined(t *testing.T) {
	var points []int
	s := Evaluate(derivedPlan(t, "24")).Simulate(context.Background(), SimulationOptions{Seed: 1, Precision: 0.02, Refined: func(s *Simulation) {
		points = append(points, s.Shares.Points)
		assert.Nil(t, s.Counted)
		assert.NotEmpty(t, s.Says)
		assert.False(t, s.Complete)
	}})
	assert.True(t, s.Complete)
	assert.Zero(t, s.Parts)
	assert.Nil(t, s.Readings, "nothing was counted")
	assert.Greater(t, len(points), 1)
	assert.Equal(t, s.Shares.Points, points[len(points)-1])
}

func saying(s *Simulation, code string) *Saying {
	for i := range s.Says {
		if s.Says[i].Code == code {
			return &s.Says[i]
		}
	}
	return nil
}

// What is said beside small shares, by code: of which shares, and with which figures.
func TestSimulationSays(t *testing.T) {
	s := simulated(t, example(t), 100_000)
	assert.Contains(t, saying(s, TailAssumed).Shares, "unseated")
	assert.Contains(t, saying(s, TailHard).Shares, "false_accept")
	assert.NotContains(t, saying(s, TailAssumed).Shares, "false_reject", "over 100 ppm")
	none := saying(s, CountedNone)
	assert.Contains(t, none.Shares, "unseated")
	assert.EqualValues(t, 100_000, *none.Parts)
	assert.InDelta(t, 30, *none.UnderPPM, 1e-12, "by hand: three in so many")
	assert.NotNil(t, saying(s, NotInModel))
	assert.Nil(t, saying(s, WhyDifferent))

	// A lid that only touches has nothing that is loose; its seal may stall the ram.
	data, err := os.ReadFile("../static/examples/rain-gauge-lid.json")
	require.NoError(t, err)
	lid, problems := Decode(data)
	require.Empty(t, problems)
	for _, code := range []string{TailAssumed, TailHard} {
		for _, share := range []string{"loose", "loose_fails", "false_accept_loose"} {
			assert.NotContains(t, saying(simulated(t, lid, 1000), code).Shares, share)
		}
	}
}

// Where closed form and simulation differ, the greatest cause is named. By hand: with half
// of all parts stalled, refusals of the other half are half of what the closed form says;
// with nearly all parts loose, what is refused of them is the difference.
func TestWhyDifferent(t *testing.T) {
	figure := func(ppm float64) EstimatedShare { return EstimatedShare{PPM: ppm, Low: 0.99 * ppm, High: 1.01 * ppm} }
	closed := 1000.0
	why := func(simulated, unseated, loose, early float64) *Saying {
		s := &Simulation{Shares: &EstimatedShares{}}
		s.Shares.Named.Unseated = figure(unseated)
		s.Shares.Matrix.Loose.OnOff = figure(loose)
		s.Shares.Matrix.Conforming.EarlyContact = figure(early)
		s.compare(&closed, "false_reject", figure(simulated))
		return saying(s, WhyDifferent)
	}
	assert.Equal(t, ByStalls, why(500, 5e5, 0, 0).Cause)
	assert.Equal(t, ByLoose, why(100, 0, 900, 0).Cause)
	assert.Equal(t, ByEarly, why(600, 0, 0, 400).Cause)
	assert.Equal(t, ByForce, why(1500, 0, 0, 0).Cause)
	assert.Nil(t, why(1000, 0, 0, 0))
	assert.Nil(t, why(950, 5e4, 0, 0), "within 10 %")
	assert.Equal(t, simulate.Shares, len(shareNames))
}

// What is counted so far may be read while a count goes on, and is what a count of as many
// parts gives: whoever stops keeps it, with its limits. Source: the count of the same blocks.
func TestSimulationSoFar(t *testing.T) {
	r := Evaluate(example(t))
	var read func() *Simulation
	done := int64(0)
	var part *Simulation
	o := SimulationOptions{Parts: 10 * simulate.Block, Seed: 4, Precision: 1, Sofar: func(f func() *Simulation) { read = f }}
	o.Work = simulate.Work{Workers: 1, Progress: func(n int64) {
		if done += n; done == 3*simulate.Block {
			part = read()
		}
	}}
	whole := r.Simulate(context.Background(), o)
	require.NotNil(t, part)
	assert.EqualValues(t, 3*simulate.Block, part.Parts)
	assert.True(t, part.Counting)
	assert.False(t, part.Complete)
	assert.True(t, whole.Complete)
	assert.False(t, whole.Counting)
	o = SimulationOptions{Parts: 3 * simulate.Block, Seed: 4, Precision: 1}
	three := r.Simulate(context.Background(), o)
	assert.Equal(t, three.Counted, part.Counted)
	assert.Equal(t, three.Matrix, part.Matrix)
	assert.Equal(t, three.Says, part.Says)
	assert.Equal(t, whole.Counted, read().Counted, "and after it all of it")
}
