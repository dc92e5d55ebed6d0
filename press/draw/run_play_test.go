package draw

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/draw/drawtest"
)

// TestRunIsPlayed: what is played is the whole cycle of the worked example, and its hold
// case. Totals without handling, rest and signal changes are those of the worked example.
func TestRunIsPlayed(t *testing.T) {
	p, r := drawtest.OfTheRun(t, nil)
	ways := WaysOfRun(p, r, Options{})
	require.Len(t, ways, 3)
	assert.Equal(t, []string{"The nominal part", "With the hold case", "Without an insert"}, []string{ways[0].Name, ways[1].Name, ways[2].Name})
	last := func(w RunWay) RunPose { return w.Poses[len(w.Poses)-1] }
	assert.InDelta(t, 4.715892, last(ways[0]).Time, 1e-6)
	assert.InDelta(t, 5.901299, last(ways[1]).Time, 1e-6)
	assert.InDelta(t, 4.423001, last(ways[2]).Time, 1e-6)
	rests := 0
	for i, q := range ways[1].Poses {
		if i > 0 {
			assert.GreaterOrEqual(t, q.Time, ways[1].Poses[i-1].Time)
		}
		if q.At > 76.555555 && q.At < 76.555556 {
			rests++
		}
	}
	assert.GreaterOrEqual(t, rests, 2, "it stands where the hold brought it to rest")
	on := false
	for _, q := range ways[0].Poses {
		if q.Time > 2.798 && q.Time < 3.04 {
			on = true
			assert.Contains(t, q.Says, "Arrival on, own zone on, station zone off")
			assert.Contains(t, q.Says, "Step 5")
		}
	}
	assert.True(t, on, "the press is played")
}
