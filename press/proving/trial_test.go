package proving_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/proving"
)

func onTrial(rows ...proving.Row) *proving.Study {
	return &proving.Study{Format: proving.Format, Kind: proving.Trial, TakenAt: "2026-11-24", Rows: rows}
}

func read(reading float64, arrival, zone bool) proving.Row {
	return proving.Row{Reading: of(reading), Arrival: of(arrival), Zone: of(zone)}
}

// What lamps go with a reading. The example's zone is 115.08 to 115.35 and its push ends at 115.19, by
// model.md section 7; an edge blurs by its repeatability of 0.02.
func TestLampsOfAReading(t *testing.T) {
	plan := station(t, nil)
	sig, ok := plan.Signals()
	require.True(t, ok)
	require.Equal(t, [3]float64{115.08, 115.19, 115.35}, [3]float64{sig.ZoneStart, sig.End, sig.ZoneEnd})
	for _, c := range []struct {
		row   proving.Row
		right bool
	}{
		{read(115.14, true, true), true}, {read(115.14, true, false), false},
		{read(115.05, true, false), true}, {read(115.05, true, true), false},
		{read(115.065, true, true), true}, {read(115.095, true, false), true}, // closer than 0.02 to the zone's start
		{read(115.06, true, true), true}, {read(115.059, true, true), false}, {read(115.101, true, false), false},
		{read(115.205, true, true), true}, {read(115.211, true, true), false}, // past the end there is no arrival
		{read(115.19, false, true), true}, {read(115.205, false, true), true}, {read(115.15, false, true), false},
		{read(115.19, false, false), false}, // the zone is lit at the end
	} {
		j := one(t, plan, onTrial(c.row))
		want := []int{}
		if !c.right {
			want = []int{1}
		}
		assert.Equal(t, want, j.Result.(*proving.TrialResult).LampMismatch, "%v %v %v", *c.row.Reading, *c.row.Arrival, *c.row.Zone)
	}
}

// Three parts on and one off: 1 of 4 seen, limits by Clopper and Pearson from 1 − 0.975^¼ to the root
// of Beta(2, 3) = 0.975, one-sided 99 % from 1 − 0.99^¼. By hand.
func TestTrialShares(t *testing.T) {
	r := one(t, station(t, nil), onTrial(read(115.14, true, true), read(115.13, true, true), read(115.15, true, true), read(115.19, false, true))).Result.(*proving.TrialResult)
	assert.Equal(t, 4, r.N)
	assert.Equal(t, 3, r.Used)
	assert.Equal(t, []int{3, 0, 1, 0}, []int{r.Shares[0].Seen, r.Shares[1].Seen, r.Shares[2].Seen, r.Shares[3].Seen})
	assert.Equal(t, 1, r.Rejects.Seen)
	assert.Equal(t, 0.25, *r.Rejects.Share)
	assert.InDelta(t, 1-math.Pow(0.975, 0.25), r.Rejects.Limits[0], 1e-9)
	assert.InDelta(t, 0.805880, r.Rejects.Limits[1], 1e-6) // 1 of 4, as printed in tables, from memory
	assert.InDelta(t, 1-math.Pow(0.99, 0.25), *r.Rejects.Lower, 1e-9)
	sum := 0.0
	for _, s := range r.Shares {
		sum += *s.Predicted
	}
	assert.InDelta(t, 1, sum, 1e-9)
	assert.InDelta(t, 1-*r.Shares[0].Predicted, *r.Rejects.Predicted, 1e-12)
	assert.Nil(t, r.Truth)
	assert.Equal(t, 115.14, *r.Mean)
	assert.InDelta(t, 115.14-r.Nominal, r.Shift.Value, 1e-9)
	assert.Nil(t, r.StationShift)
	assert.Equal(t, proving.OfReadings, r.Capability.Of)
	assert.Equal(t, 3, r.Capability.N)
}

// The shift of a station is what is left when the parts are taken out of that of the readings. By
// hand: the simple station reads 140.1 − height; parts 0.01 too low for their mean, readings 0.02 too deep.
func TestShiftsByHand(t *testing.T) {
	var rows []proving.Row
	for _, off := range []float64{-0.002, -0.001, 0, 0.001, 0.002} {
		rows = append(rows, part(115.12+off, 24.99, true, true))
	}
	s := onTrial(rows...)
	s.HeightUncertainty = of(0.003)
	r := one(t, station(t, simple), s).Result.(*proving.TrialResult)
	near := func(want, got float64) { t.Helper(); assert.InDelta(t, want, got, 1e-8) }
	near(115.1, r.Nominal)
	near(0.02, r.Shift.Value)
	near(0.01, r.StationShift.Value)
	near(-0.01, r.PartsShift.Value)
	// s = √2.5 µm, t_0.975,4 = 2.776445105, from memory.
	within := 2.776445105 * 0.001 * math.Sqrt(2.5/5)
	near(within, *r.Shift.Uncertainty)
	near(math.Hypot(within, 0.003), *r.StationShift.Uncertainty)
	near(0.003, *r.PartsShift.Uncertainty)
	near(2*math.Sqrt(17e-6), *r.StationShift.Allowed)
	assert.Nil(t, r.PartsShift.Allowed)
	require.NotNil(t, r.Correction)
	assert.Equal(t, 1, r.Correction.Steps)
	assert.Equal(t, proving.ByStationShift, r.Correction.Basis)
	assert.Equal(t, proving.OfReadings, r.Capability.Of) // five heights are too few to tell of the process

	s.Rows = s.Rows[:4] // four heights are too few to take the parts out
	r = one(t, station(t, simple), s).Result.(*proving.TrialResult)
	assert.Nil(t, r.StationShift)
	assert.Nil(t, r.PartsShift)
	assert.Equal(t, proving.ByShift, r.Correction.Basis)
}

// Half a step goes away from 0, and what is no more than its own uncertainty is left alone.
func TestCorrectionIsRoundedAwayFromZero(t *testing.T) {
	for shift, steps := range map[float64]int{0.004: 0, 0.0051: 1, 0.0149: 1, 0.0151: 2, -0.0051: -1, -0.0149: -1, -0.0251: -3} {
		var rows []proving.Row
		for _, off := range []float64{-0.0001, 0, 0.0001} {
			rows = append(rows, read(115.1+shift+off, true, true))
		}
		r := one(t, station(t, simple), onTrial(rows...)).Result.(*proving.TrialResult)
		if steps == 0 {
			assert.Nil(t, r.Correction)
			continue
		}
		require.NotNil(t, r.Correction, shift)
		assert.Equal(t, steps, r.Correction.Steps, shift)
		assert.InDelta(t, 140+0.01*float64(steps), r.Correction.Nest, 1e-12)
	}
	unsure := onTrial(read(115.1, true, true), read(115.12, true, true)) // 0.01 ± 0.127
	assert.Nil(t, one(t, station(t, simple), unsure).Result.(*proving.TrialResult).Correction)
}

// Measured parts against the lamps: what lies nearer to a limit than it is known is not counted.
func TestTruth(t *testing.T) {
	s := onTrial(
		part(115.14, 25.00, true, true),  // good, accepted
		part(115.14, 25.20, true, true),  // long, accepted
		part(115.00, 25.10, true, false), // long, refused
		part(115.19, 24.95, false, true), // good, refused
		part(115.19, 24.80, false, true), // short, refused
		part(115.14, 25.092, true, true), // nobody knows
		read(115.14, true, true),         // not measured
	)
	s.HeightUncertainty = of(0.004)
	plan := station(t, nil)
	tr := one(t, plan, s).Result.(*proving.TrialResult).Truth
	assert.Equal(t, 6, tr.N)
	assert.Equal(t, 1, tr.Doubtful)
	assert.Equal(t, map[string]proving.PairSum{"long": {OnOn: 1, OnOff: 1}, "good": {OnOn: 1, OffOn: 1}, "short": {OffOn: 1}}, tr.Matrix)
	assert.Equal(t, []int{1, 5}, []int{tr.FalseAccept.Seen, tr.FalseAccept.Of})
	assert.Equal(t, 1, tr.FalseReject.Seen)
	assert.InDelta(t, *plan.Risk.ConsumerPPM/1e6, *tr.FalseAccept.Predicted, 1e-15)
	// One of five: at least 1 − 0.99^(1/5) with 99 %, and none is predicted.
	assert.InDelta(t, 1-math.Pow(0.99, 0.2), *tr.FalseAccept.Lower, 1e-9)
	assert.Equal(t, proving.Fail, answers(one(t, plan, s))["false_accept"])
	assert.Contains(t, found(one(t, plan, s)), proving.FalseAccepts)
}

// Nothing is known without arrivals, and a plan without a window has nothing to hold the lamps to.
func TestTrialNulls(t *testing.T) {
	j := one(t, station(t, nil), onTrial(read(115.19, false, true)))
	r := j.Result.(*proving.TrialResult)
	assert.Nil(t, r.Mean)
	assert.Nil(t, r.SD)
	assert.Nil(t, r.Shift)
	assert.Nil(t, r.Spread.P)
	assert.Nil(t, r.Capability)
	assert.Nil(t, r.Correction)
	assert.Nil(t, r.Normality)
	assert.Equal(t, map[string]proving.Answer{"size": proving.Open, "lamps": proving.Pass, "rejects": proving.Fail, "shift": proving.Open, "spread": proving.Open, "drift": proving.Pass}, answers(j))
	// One of one: at least 1 % with 99 %, and 0.16 % are predicted.
	assert.Equal(t, []string{proving.MoreRejects, proving.Censored}, found(j))

	// A drawing narrower than two guard bands leaves no window.
	j = one(t, station(t, map[string]string{"requirement.height_low": "24.99", "requirement.height_high": "25.01"}), onTrial(read(115.14, true, true)))
	r = j.Result.(*proving.TrialResult)
	assert.Nil(t, r.Shares[0].Predicted)
	assert.Nil(t, r.Rejects.Predicted)
	assert.Equal(t, []int{}, r.LampMismatch)
	assert.Equal(t, proving.Open, answers(j)["lamps"])
	assert.Equal(t, proving.Open, answers(j)["rejects"])
}
