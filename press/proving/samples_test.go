package proving_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/proving"
)

func sample(name string, height float64, arrival, zone bool) proving.Row {
	return proving.Row{Sample: name, Height: of(height), Arrival: of(arrival), Zone: of(zone)}
}

func nothing(name string, arrival, zone bool) proving.Row {
	return proving.Row{Sample: name, Arrival: of(arrival), Zone: of(zone)}
}

func onSamples(rows ...proving.Row) *proving.Study {
	return &proving.Study{Format: proving.Format, Kind: proving.Samples, TakenAt: "2026-11-25", PlanDigest: "sha256:b74624aea0e6", Rows: rows}
}

// sampled is a whole study of the example: three of each, as its limit samples ask for.
func sampled(s *proving.Study) *proving.Study {
	for range 3 {
		s.Rows = append(s.Rows, sample("T1", 25.11, true, false), sample("G1", 25.0, true, true), sample("S1", 24.9, false, true), nothing(proving.BareNest, false, true))
	}
	return s
}

// The samples of the simple station: it reads 140.1 − height, so 25 mm reads 115.1. Its u is by hand
// √(0.01² + 0.003² + 0.002² + 0.002²) = 0.010817, the bands 0.021633, so the zone is from
// 115.01 + 0.0217 rounded up, 115.04, to 115.19 − 0.0217 rounded down, 115.16, where the push ends.
func TestSampleRows(t *testing.T) {
	plan := station(t, simple)
	sig, ok := plan.Signals()
	require.True(t, ok)
	require.Equal(t, [2]float64{115.04, 115.16}, [2]float64{sig.ZoneStart, sig.End})
	own := math.Sqrt(0.01*0.01 + 9e-6 + 4e-6 + 4e-6)
	for name, c := range map[string]struct {
		row           proving.Row
		role          string
		reading       float64
		arrival, zone bool
		lamps         proving.Answer
	}{
		"good":           {sample("a", 25, true, true), "good", 115.1, true, true, proving.Pass},
		"good, refused":  {sample("a", 25, true, false), "good", 115.1, true, true, proving.Fail},
		"tall":           {sample("a", 25.11, true, false), "long", 114.99, true, false, proving.Pass},
		"tall, accepted": {sample("a", 25.11, true, true), "long", 114.99, true, false, proving.Fail},
		"low":            {sample("a", 24.88, false, true), "short", 115.16, false, true, proving.Pass},
		"at the edge":    {sample("a", 25.05, true, false), "", 115.05, true, true, proving.Open},
		"no insert":      {nothing(proving.NoInsert, false, true), "empty", 115.16, false, true, proving.Pass},
		"bare nest":      {nothing(proving.BareNest, true, true), "empty", 115.16, false, true, proving.Fail},
	} {
		row := one(t, plan, onSamples(c.row)).Result.(*proving.SamplesResult).Rows[0]
		if c.role == "" {
			assert.Nil(t, row.Role, name)
		} else if assert.NotNil(t, row.Role, name) {
			assert.Equal(t, c.role, *row.Role, name)
		}
		assert.InDelta(t, c.reading, *row.PredictedReading, 1e-9, name)
		assert.Equal(t, []bool{c.arrival, c.zone}, []bool{*row.Arrival, *row.Zone}, name)
		assert.Equal(t, c.lamps, row.Lamps, name)
		assert.Nil(t, row.Reading, name)
	}
	// The chance at the edge: a reading of 115.05 is 0.01 from the zone's start and 0.11 from the end.
	row := one(t, plan, onSamples(sample("a", 25.05, true, true))).Result.(*proving.SamplesResult).Rows[0]
	assert.InDelta(t, phi(0.01/own), *row.Chance, 1e-9)
	// Known to ± 0.008 only, the height doubts as well.
	doubted := onSamples(sample("a", 25.05, true, true))
	doubted.HeightUncertainty = of(0.008)
	row = one(t, plan, doubted).Result.(*proving.SamplesResult).Rows[0]
	assert.InDelta(t, phi(0.01/math.Hypot(own, 0.004)), *row.Chance, 1e-9)

	// Met before the push begins: nobody knows what the lamps say.
	row = one(t, plan, onSamples(sample("a", 35, true, false))).Result.(*proving.SamplesResult).Rows[0]
	assert.Nil(t, row.Arrival)
	assert.Nil(t, row.PredictedReading)
	assert.Equal(t, proving.Open, row.Lamps)
}

func phi(z float64) float64 { return math.Erfc(-z/math.Sqrt2) / 2 }

// Readings of samples, by hand: ± three standard deviations of one where the ram was stopped,
// ± 0.02 where it ran to its end; their mean within what a whole station may be off.
func TestSampleReadings(t *testing.T) {
	plan := station(t, simple)
	within := 1.5 * 2 * math.Sqrt(0.01*0.01+17e-6)
	good := func(reading float64) proving.Row {
		row := sample("a", 25, true, true)
		row.Reading = of(reading)
		return row
	}
	stopped := one(t, plan, onSamples(good(115.1+within-1e-6), good(115.1-within-1e-6))).Result.(*proving.SamplesResult)
	assert.InDelta(t, within, *stopped.Rows[0].Allowed, 1e-9)
	assert.Equal(t, proving.Pass, *stopped.Rows[0].Reading)
	assert.Equal(t, proving.Fail, *stopped.Rows[1].Reading)
	end := nothing(proving.BareNest, false, true)
	end.Reading = of(115.185)
	ran := one(t, plan, onSamples(end)).Result.(*proving.SamplesResult)
	assert.Equal(t, 0.02, *ran.Rows[0].Allowed)
	assert.Equal(t, proving.Fail, *ran.Rows[0].Reading)
	assert.Nil(t, ran.Offset)

	// Four readings, each 0.016 off: each within its own ± 0.0325, their mean not within
	// √(68e-6 + (2·0.010198)²/4) = 0.013116.
	j := one(t, plan, onSamples(good(115.116), good(115.116), good(115.116), good(115.116)))
	r := j.Result.(*proving.SamplesResult)
	assert.InDelta(t, 0.016, r.Offset.Value, 1e-9)
	assert.InDelta(t, math.Sqrt(68e-6+1.04e-4), r.Offset.Allowed, 1e-9)
	assert.Equal(t, proving.Fail, answers(j)["readings"])
	assert.Contains(t, found(j), proving.ReadingsDiffer)
}

func TestSampleChecks(t *testing.T) {
	plan := station(t, nil)
	j := one(t, plan, sampled(onSamples()))
	assert.Equal(t, map[string]proving.Answer{"lamps": proving.Pass, "readings": proving.Open, "long": proving.Pass, "short": proving.Pass, "good": proving.Pass, "empty": proving.Pass}, answers(j))
	assert.Equal(t, proving.Open, j.Verdict) // no reading was written down
	read := sampled(onSamples())
	for i, row := range j.Result.(*proving.SamplesResult).Rows {
		read.Rows[i].Reading = row.PredictedReading
	}
	j = one(t, plan, read)
	assert.Equal(t, proving.Pass, j.Verdict)
	assert.Empty(t, found(j))
	read.Rows[0].Zone = of(true)
	j = one(t, plan, read)
	assert.Equal(t, proving.Fail, j.Verdict)
	assert.Equal(t, []string{proving.LampsDiffer}, found(j))

	// Two of a role are too few; one that any station refuses proves nothing of the limit.
	few := onSamples(sample("T1", 25.4, true, false), sample("T1", 25.4, true, false))
	j = one(t, plan, few)
	assert.Equal(t, proving.Open, answers(j)["long"])
	assert.Equal(t, []string{proving.SampleTooEasy}, found(j))

	// Without a window nothing can be said.
	j = one(t, station(t, map[string]string{"requirement.height_low": "24.99", "requirement.height_high": "25.01"}), sampled(onSamples()))
	for name, a := range answers(j) {
		assert.Equal(t, proving.Open, a, name)
	}
	assert.Equal(t, []string{proving.SampleUndecided, proving.OtherPlan}, found(j)) // the plan is another one
}
