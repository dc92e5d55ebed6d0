package drill

import (
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
		assert.Contains(t, j.Reason, "zone start stands only 0.004\u202fmm from the part of "+at3(at.Height))
		assert.NotContains(t, e.RightInWords(), "115.0800")
		assert.Contains(t, e.Facts[len(e.Facts)-1], "only a setter")
	}
}

func at3(mm float64) string { return high(mm) }
