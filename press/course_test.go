package press

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// What the course of a row ends with is what the catalogue says of it: two ways
// to the same signals. Derived.
func TestCoursesEndAsTheCatalogueSays(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := randomPlan(t)
		r := Evaluate(p)
		for i, row := range r.Faults {
			c, ok := r.CourseOf(i)
			require.True(t, ok)
			require.NotEmpty(t, c.Frames)
			before := Frame{Time: math.Inf(-1)}
			for _, f := range c.Frames {
				if f.Time < before.Time-1e-12 {
					t.Fatalf("%s: time runs back from %v to %v", row.Name, before.Time, f.Time)
				}
				before = f
			}
			if c.Early != (row.Verdict == EarlyContact) {
				t.Fatalf("%s: early %v, the catalogue says %s", row.Name, c.Early, row.Verdict)
			}
			if c.Early {
				continue
			}
			if c.Arrival != *row.Arrival || c.Zone != *row.Zone {
				t.Fatalf("%s: read %v %v, the catalogue says %v %v", row.Name, c.Arrival, c.Zone, *row.Arrival, *row.Zone)
			}
			if c.Met != (row.Reading != nil) || c.Met && math.Abs(c.Rest-*row.Reading) > 1e-9 {
				t.Fatalf("%s: rests at %v, met %v", row.Name, c.Rest, c.Met)
			}
		}
	})
}

// The signals can be read at the time that the catalogue says, or, where the ram
// was stopped and arrival is stuck off, no later.
func TestCoursesTakeTheirTime(t *testing.T) {
	p := example(t)
	r := Evaluate(p)
	for i, row := range r.Faults {
		c, _ := r.CourseOf(i)
		if row.Time == nil || row.Name == RowArrivalStuckOff {
			continue
		}
		for _, f := range c.Frames {
			if f.Phase == PhaseRead {
				assert.InDelta(t, *row.Time, f.Time, 1e-9, row.Name)
				break
			}
		}
	}
}

// A part of the height that a reading stands for comes to rest there.
func TestCourseOfAHeight(t *testing.T) {
	p := example(t)
	r := Evaluate(p)
	for _, reading := range []float64{114.9, 115.1, 115.19} {
		c, ok := r.CourseAt(r.HeightOf(reading))
		require.True(t, ok)
		assert.InDelta(t, reading, c.Rest, 1e-9)
		assert.True(t, c.Met)
	}
	low, _ := r.CourseAt(r.HeightOf(115.3))
	assert.False(t, low.Met, "the ram ends before this part is seated")
	assert.Equal(t, *r.Travel.PushEnd, low.Rest)
	assert.False(t, low.Arrival)
	assert.True(t, low.Zone)
	tall, _ := r.CourseAt(r.HeightOf(108))
	assert.True(t, tall.Early, "it is met at 101, before the push begins")
}

// The zone signal follows the ram at every moment, wherever frames are cut.
func TestZoneFollowsTheRam(t *testing.T) {
	p := example(t)
	r := Evaluate(p)
	z, ok := r.Signals()
	require.True(t, ok)
	c, _ := r.CourseOf(0)
	changes := 0
	for i, f := range c.Frames[1:] {
		before := c.Frames[i]
		middle := (before.Position + f.Position) / 2
		assert.Equal(t, z.InZone(middle), before.Zone, "at %v mm", middle)
		if before.Zone != f.Zone {
			changes++
			assert.InDelta(t, z.ZoneStart, f.Position, 1e-9, "the nominal part passes only the zone start")
		}
	}
	assert.Equal(t, 2, changes, "into the zone and back")
}
