package drill

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press/words"
)

// Readings are said as the station shows them, to the plan's step of 0.01 mm, and
// finer only beside an edge: the zone of the example starts at 115.08, the push ends
// at 115.19 (by the plan, position step 0.01).
func TestReadingsAsShown(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	d.s.ZoneStart, d.s.End = 115.08, 115.19
	for mm, want := range map[float64]string{
		115.1371: "115.14\u202fmm",
		115.08:   "115.08\u202fmm",  // at the edge itself
		115.079:  "115.079\u202fmm", // 115.08 would be inside the zone
		115.1871: "115.187\u202fmm", // 115.19 would be the push end
	} {
		assert.Equal(t, want, d.at(mm))
	}
}

// TestLateArrival: zone alone may be a seated part whose force was not reported in time,
// in the reason of the question and at the station.
func TestLateArrival(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	e, ok := d.Exercise("read/off-on", 1)
	assert.True(t, ok)
	assert.Contains(t, e.Explain, "not reported in time")
	e, ok = d.Exercise("read/on-off", 1)
	assert.True(t, ok)
	assert.NotContains(t, e.Explain, "not reported in time")
	inside := 115.12 // between zone start and push end
	a, err := AtStation(words.Printer{}, p, r, words.Reactions(p, r), words.Pair{Zone: true}, words.One, &inside)
	assert.NoError(t, err)
	assert.Contains(t, a.Doubt, "not reported in time")
}
