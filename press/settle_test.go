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
	a, b := evaluated(example(t)), evaluated(with(t, example(t), "motion.settle_time", "0.4"))
	assert.Equal(t, 0.4, b.r.Cycle.Settle)
	assert.InDelta(t, a.r.Cycle.Total+0.4, b.r.Cycle.Total, 1e-12)
	assert.InDelta(t, *a.r.Cycle.WatchTime+0.4, *b.r.Cycle.WatchTime, 1e-12)
	assert.InDelta(t, *a.r.Cycle.MissingTotal, *b.r.Cycle.MissingTotal, 1e-12)
	assert.InDelta(t, *a.r.Cycle.MissingTotal+0.4, *b.r.Cycle.MissingWatched, 1e-12)
	require.Len(t, b.r.Faults, len(a.r.Faults))
	for i, row := range b.r.Faults {
		if row.Time != nil {
			assert.InDelta(t, *a.r.Faults[i].Time+0.4, *row.Time, 1e-12, row.Name)
		}
	}
	assert.Greater(t, *b.r.Heating.RMSSetting, *a.r.Heating.RMSSetting)

	// Without an insert the ram meets the shoulder inside the zone: something is met.
	met := []string{"parts[1].insert", "false"}
	a, b = evaluated(with(t, example(t), met...)), evaluated(with(t, example(t), append(met, "motion.settle_time", "0.4")...))
	assert.InDelta(t, *a.r.Cycle.MissingTotal+0.4, *b.r.Cycle.MissingTotal, 1e-12)
	assert.InDelta(t, *b.r.Cycle.MissingTotal, *b.r.Cycle.MissingWatched, 1e-12)
}
