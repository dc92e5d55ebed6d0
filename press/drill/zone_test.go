package drill

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// The part that is named is the nearest to an end of the zone, over all of a task.
// Derived: from the readings of the parts.
func TestNearestPartIsNamed(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	for seed := range uint64(20) {
		e, ok := d.Exercise("zone/1", seed)
		require.True(t, ok)
		first, at := 1e9, ZonePart{}
		for _, x := range e.Zone.Parts {
			if x.Word == press.Good && x.Reading < first {
				first, at = x.Reading, x
			}
		}
		zone := press.Pair{first - 0.004, e.Zone.Solution[1]}
		j := e.Judge(Answer{Zone: &zone})
		require.True(t, j.Right, j.Reason)
		assert.Contains(t, j.Reason, "zone start stands only 0.004\u202fmm from the part of "+d.high(at.Height))
		assert.NotContains(t, e.RightInWords(), "115.0800")
		assert.Contains(t, e.Facts[len(e.Facts)-1], "only a setter")
	}
}

// A zone whose push end lies outside it, or at an edge, is wrong, and the reason says so.
// The guard is that of the plan: derived by hand, for the example the larger of four
// repeatabilities, 4 · 0.04 mm, and two scans of slow travel, 2 · 8 mm/s · 0.01 s.
func TestPushEndInsideTheZone(t *testing.T) {
	const guard = 0.16
	p, r := example(t)
	d := drillOf(t, p, r)
	for seed := range uint64(20) {
		for _, key := range []string{"zone/1", "zone/2"} {
			e, ok := d.Exercise(key, seed)
			require.True(t, ok)
			task := e.Zone
			end, start, last := task.s.End, task.Solution[0], -1.0
			for _, x := range task.Parts {
				if x.Word == press.Good {
					last = max(last, x.Reading)
				}
			}
			for _, one := range []struct {
				to    float64
				right bool
				says  string
			}{
				{last + 0.001, false, "lies outside this zone"},
				{end - 0.001, false, "lies outside this zone"},
				{end, false, "before the zone end"},
				{end + guard - 0.01, false, "It must be 0.16\u202fmm at least"},
				{end + guard, true, ""},
			} {
				zone := press.Pair{start, one.to}
				j := e.Judge(Answer{Zone: &zone})
				assert.Equal(t, one.right, j.Right, "%s: %v: %s", key, zone, j.Reason)
				assert.Contains(t, j.Reason, one.says)
			}
			assert.Contains(t, strings.Join(e.Facts, " "), "inside the zone, at least 0.16\u202fmm before the zone end")
		}
	}
}

// Heights and readings of an exercise are as fine as the station shows its positions, and
// no finer: nobody could compare them. By the plan, the step of the example is 0.01 mm.
func TestNothingFinerThanTheStation(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	for seed := range uint64(20) {
		for _, key := range d.Keys(Levels) {
			e, _ := d.Exercise(key, seed)
			if e.Zone != nil {
				for _, x := range e.Zone.Parts {
					assert.InDelta(t, math.Round(100*x.Height), 100*x.Height, 1e-6, key)
					assert.InDelta(t, math.Round(100*x.Reading), 100*x.Reading, 1e-6, key)
				}
				assert.NotRegexp(t, `\d\.\d{3}`, e.InWords(), key)
			}
			if e.Picture != nil && e.Picture.Height != nil {
				assert.NotRegexp(t, `high.*\d\.\d{3}`, e.Question, key)
				assert.InDelta(t, math.Round(100**e.Picture.Height), 100**e.Picture.Height, 1e-6, key)
			}
		}
	}
}

// The example's answer is its own zone, moved as far as the nest; that zone is praised.
// One that starts before the reading of the tallest part that the drawing allows is wrong
// and says so, also where none of the parts shown is in between. Derived: by
// hand, from the sum of each end and the shift, and from the drawing's limit.
func TestZoneMovesWithTheNest(t *testing.T) {
	p, r := example(t)
	d := drillOf(t, p, r)
	for seed := range uint64(20) {
		for _, key := range []string{"zone/1", "zone/2"} {
			e, ok := d.Exercise(key, seed)
			require.True(t, ok)
			task := e.Zone
			assert.InDelta(t, d.s.ZoneStart+task.Shift, task.Solution[0], 1e-6)
			assert.InDelta(t, d.s.ZoneEnd+task.Shift, task.Solution[1], 1e-6)
			j := e.Judge(Answer{Zone: &task.Solution})
			assert.True(t, j.Right)
			assert.NotContains(t, j.Reason, "only")
			assert.Contains(t, j.Reason, "moved exactly as far as the nest")
			tall := -1.0
			for _, x := range task.Parts {
				if x.Word == press.Long {
					tall = max(tall, x.Reading)
				}
			}
			edge := r.Window.GoodRange[0] + task.Shift
			if edge-tall < 0.004 {
				continue
			}
			zone := press.Pair{edge - 0.003, task.Solution[1]}
			j = e.Judge(Answer{Zone: &zone})
			assert.False(t, j.Right)
			assert.Contains(t, j.Reason, "would pass, and the drawing allows no more than")
		}
	}
}
