package press

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// The chances of a row are those that its detection was computed from: two ways
// to the same probability. Derived.
func TestChancesAreTheDetection(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := randomPlan(t)
		r := Evaluate(p)
		for i, row := range r.Faults {
			c, ok := r.ChancesOf(i)
			require.True(t, ok)
			sum := c.Early
			for _, arrival := range []bool{false, true} {
				for _, zone := range []bool{false, true} {
					share := c.Of(arrival, zone)
					if share < -1e-9 {
						t.Fatalf("%s: a chance of %v", row.Name, share)
					}
					sum += share
				}
			}
			if math.Abs(sum-1) > 1e-9 {
				t.Fatalf("%s: the chances add up to %v", row.Name, sum)
			}
			if (row.Verdict == EarlyContact) && c.Early < 0.5-1e-9 {
				t.Fatalf("%s is met early, with a chance of %v", row.Name, c.Early)
			}
			stuck := map[string]bool{RowArrivalStuckOn: true, RowArrivalStuckOff: true, RowZoneStuckOn: true, RowZoneStuckOff: true}[row.Name] && !row.Own
			if row.Verdict == EarlyContact || stuck {
				continue
			}
			accepted := row.Detection
			if !row.Good {
				accepted = 1 - accepted
			}
			if math.Abs(accepted-c.Of(true, true)) > 1e-9 {
				t.Fatalf("%s: accepted with %v, both signals on with %v", row.Name, accepted, c.Of(true, true))
			}
		}
	})
}

// Derived by hand from the example: zone start 115.08, so a part that reads there
// shows the zone half of the time.
func TestChancesAtAnEdge(t *testing.T) {
	p := example(t)
	r := Evaluate(p)
	c, ok := r.ChancesAt(115.08)
	require.True(t, ok)
	assert.InDelta(t, 0.5, c.Of(true, true), 1e-6)
	assert.InDelta(t, 0.5, c.Of(true, false), 1e-6)
	c, _ = r.ChancesAt(116)
	assert.InDelta(t, 1, c.Of(false, true), 1e-9)
	_, ok = r.ChancesOf(len(r.Faults))
	assert.False(t, ok)
}

// A verdict has its words one by one, and as one text for the document.
func TestVerdictIsAList(t *testing.T) {
	several := 0
	rapid.Check(t, func(t *rapid.T) {
		for _, f := range Evaluate(randomPlan(t)).Faults {
			switch len(f.Words) {
			case 0:
				assert.Contains(t, []string{EarlyContact, FaultWord}, f.Verdict)
			case 1:
				assert.Equal(t, f.Words[0], f.Verdict)
			default:
				several++
				assert.Equal(t, strings.Join(f.Words, " or "), f.Verdict)
			}
		}
	})
	assert.Positive(t, several)
}
