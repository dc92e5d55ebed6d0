package model

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

// The course at the station, the drawn cycle and the times of the cycle are of one
// timeline: they end at the same time, and the watch time and the times of the rows are
// when the station reads. Derived: the times by their formulas, the others leg by leg.
func TestCourseCycleAndDrawingAgree(t *testing.T) {
	met := map[string]int{}
	rapid.Check(t, func(t *rapid.T) {
		in := randomInput(t)
		if rapid.IntRange(0, 3).Draw(t, "home past the approach") == 0 {
			in.Station.Home = in.Station.Nest
		}
		o := Evaluate(in)
		traces := o.Traces()
		if last := traces.Part[len(traces.Part)-1]; o.Pressable() {
			assert.InDelta(t, o.Cycle.Total, last.Time+o.Cycle.Handling, 1e-9)
		}
		if o.Cycle.MissingWatched != nil {
			assert.InDelta(t, *o.Cycle.MissingWatched, traces.Missing[len(traces.Missing)-1].Time+o.Cycle.Handling, 1e-9)
		}
		for i, row := range o.Faults {
			c, _ := o.CourseOf(i)
			if c.Early || row.Own {
				continue
			}
			home, reads := c.Frames[len(c.Frames)-1], Frame{}
			for _, f := range c.Frames {
				if f.Phase == PhaseRead && reads.Phase == "" {
					reads = f
				}
			}
			if row.Name != RowArrivalStuckOff {
				assert.InDelta(t, *row.Time, reads.Time, 1e-9, row.Name)
			}
			switch {
			case row.Name == RowNominal && c.Met:
				met[row.Name]++
				assert.InDelta(t, o.Cycle.Total, home.Time+o.Cycle.Handling, 1e-9)
			case row.Name == RowMissing:
				met[row.Name]++
				assert.InDelta(t, *o.Cycle.MissingWatched, home.Time+o.Cycle.Handling, 1e-9)
			}
		}
	})
	assert.Positive(t, met[RowNominal])
	assert.Positive(t, met[RowMissing])
}

// The phases of a timeline follow one another without a gap.
func TestStagesFollowOneAnother(t *testing.T) {
	traces := Evaluate(example()).Traces()
	for _, stages := range [][]Stage{traces.PartStages, traces.MissingStages} {
		now := 0.0
		for _, s := range stages {
			assert.Equal(t, now, s.From, s.Phase)
			now = s.To
		}
	}
}
