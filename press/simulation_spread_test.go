package press

import (
	"context"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/simulate"
)

// The spread of readings by exact integration is that of the parts that are counted, and
// holds as many stalled ones as the shares say. Source of the expected values: the counts of
// the same plan, a way of its own.
func TestSpreadOfReadings(t *testing.T) {
	const parts = 400_000
	for _, name := range []string{"12", "24", "20"} {
		s := Evaluate(derivedPlan(t, name)).Simulate(context.Background(), SimulationOptions{Parts: parts, Seed: 5, Precision: 0.05, Doublings: 12})
		if s.Shares == nil {
			continue
		}
		spread := s.Spread()
		width := spread.Seated[1][0] - spread.Seated[0][0]
		sum := func(of []Pair, from, to float64) float64 {
			var all float64
			for _, q := range of {
				// The share of the cell that lies between.
				all += q[1] * math.Max(0, math.Min(to, q[0]+width/2)-math.Max(from, q[0]-width/2))
			}
			return all
		}
		early := s.Shares.Named.EarlyContact.PPM / perMillion
		total := sum(spread.Seated, math.Inf(-1), math.Inf(1)) + sum(spread.Stalled, math.Inf(-1), math.Inf(1))
		assert.LessOrEqual(t, total, 1+1e-9, name)
		// Coarse cells, each of ten of the counted ones, and five standard deviations of a count.
		at := s.Readings.From
		for i := 0; i < simulate.Cells; i += 10 {
			var seated, stalled float64
			for j := range 10 {
				seated += float64(s.Readings.Seated[i+j])
				stalled += float64(s.Readings.Stalled[i+j])
			}
			from, to := at+float64(i)*s.Readings.Width, at+float64(i+10)*s.Readings.Width
			for what, q := range map[string]struct{ got, counted float64 }{"seated": {sum(spread.Seated, from, to), seated}, "stalled": {sum(spread.Stalled, from, to), stalled}} {
				sd := math.Sqrt(math.Max(q.counted, 1)) / parts
				assert.InDelta(t, q.counted/parts, q.got, 5*sd+early+0.02*q.got, "plan %s, %s from %g", name, what, from)
			}
		}
	}
}

// More parts cannot stall than may. Source of the expected values: the estimates.
func TestMayStall(t *testing.T) {
	for _, name := range []string{"03", "08", "12", "24", "30", "31", "34", "37"} {
		r := Evaluate(derivedPlan(t, name))
		station, can := simulate.New(&r.Plan.Input, &r.Outcome)
		require.True(t, can, name)
		s := r.PaperShares()
		require.NotNil(t, s.Shares, name)
		assert.GreaterOrEqual(t, station.MayStall()*perMillion, s.Shares.Named.Unseated.Low, name)
	}
	assert.Nil(t, Evaluate(example(t)).PaperSpread(), "nothing stalls in the example")
	assert.True(t, Evaluate(derivedPlan(t, "24")).PaperSpread().Stalls())
}
