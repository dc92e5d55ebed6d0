package press

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The settle time counts wherever an arrival is waited for: 0.4 s more in the
// cycle, the watch time and every time of the catalogue; a missing insert that
// nothing stops has none in missing_total, and the station that waits for the watch
// time has. By hand.
func TestSettleTimeCountsWhereAnArrivalIsWaitedFor(t *testing.T) {
	a, b := Evaluate(example(t)), Evaluate(with(t, example(t), "motion.settle_time", "0.4"))
	assert.Equal(t, 0.4, b.Cycle.Settle)
	assert.InDelta(t, a.Cycle.Total+0.4, b.Cycle.Total, 1e-12)
	assert.InDelta(t, *a.Cycle.WatchTime+0.4, *b.Cycle.WatchTime, 1e-12)
	assert.InDelta(t, *a.Cycle.MissingTotal, *b.Cycle.MissingTotal, 1e-12)
	assert.InDelta(t, *a.Cycle.MissingTotal+0.4, *b.Cycle.MissingWatched, 1e-12)
	require.Len(t, b.Faults, len(a.Faults))
	for i, row := range b.Faults {
		if row.Time != nil {
			assert.InDelta(t, *a.Faults[i].Time+0.4, *row.Time, 1e-12, row.Name)
		}
	}
	assert.Greater(t, *b.Heating.RMSSetting, *a.Heating.RMSSetting)

	// Without an insert the ram meets the shoulder inside the zone: something is met.
	met := []string{"parts[1].insert", "false"}
	a, b = Evaluate(with(t, example(t), met...)), Evaluate(with(t, example(t), append(met, "motion.settle_time", "0.4")...))
	assert.InDelta(t, *a.Cycle.MissingTotal+0.4, *b.Cycle.MissingTotal, 1e-12)
	assert.InDelta(t, *b.Cycle.MissingTotal, *b.Cycle.MissingWatched, 1e-12)
}
