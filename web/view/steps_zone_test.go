package view

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// TestZoneFollowsWhenAsked: a step whose target is changed keeps its zone, is told of, and
// moves it when the button is pressed and not before. Expected values by hand.
func TestZoneFollowsWhenAsked(t *testing.T) {
	data, err := os.ReadFile("../../static/examples/pivot-bush.json")
	require.NoError(t, err)
	plan, faults := press.Decode(data)
	require.Empty(t, faults)
	with := func(entries ...string) Typed {
		d := plan.Draft()
		for i := 0; i < len(entries); i += 2 {
			d.Set(entries[i], entries[i+1])
		}
		return Typed{Draft: *d}
	}
	doubts := func(typed Typed) map[int]string {
		p, faults := typed.Draft.Check()
		require.Empty(t, faults)
		out := map[int]string{}
		b := Bench{Typed: typed, Plan: p, Result: press.Evaluate(p)}
		for _, s := range b.Make().form.Sections {
			for _, g := range s.Groups {
				if g.Rows == nil || g.Rows.Path != stepRows {
					continue
				}
				for i, row := range g.Rows.Rows {
					for _, d := range row.Doubts {
						out[i] = d.Do + "; " + d.Button
					}
				}
			}
		}
		return out
	}
	zone := func(typed Typed, row string) [2]string {
		from, _ := typed.Draft.Get("sequence.steps[" + row + "].zone[0]")
		to, _ := typed.Draft.Get("sequence.steps[" + row + "].zone[1]")
		return [2]string{from, to}
	}

	assert.Empty(t, doubts(with()), "the camera move ends at 60, inside 58 to 62")
	assert.Empty(t, doubts(with("sequence.steps[0].to", "62")), "a zone has its ends")
	moved := with("sequence.steps[0].to", "75")
	assert.Equal(t, [2]string{"58", "62"}, zone(moved, "0"), "nothing changes by itself")
	assert.Equal(t, map[int]string{0: "zone 0; Move the zone to 73 to 77\u202fmm"}, doubts(moved))
	after, said, ok := MoveZone(moved, 0)
	require.True(t, ok)
	assert.Equal(t, [2]string{"73", "77"}, zone(after, "0"))
	assert.Contains(t, said, "Step 1")
	assert.Equal(t, [2]string{"58", "62"}, zone(moved, "0"), "the entries before stay what they were")
	assert.Empty(t, doubts(after))
	_, _, ok = MoveZone(after, 0)
	assert.False(t, ok, "it is there already")

	// The shift goes from 60 by −10 three times: to 50, 40 and 30.
	shift := func(from, to string) Typed {
		return with("sequence.steps[7].zone[0]", from, "sequence.steps[7].zone[1]", to)
	}
	assert.Empty(t, doubts(shift("39", "41")), "one of its passes ends there")
	assert.Equal(t, map[int]string{7: "zone 7; Move the zone to 29 to 31\u202fmm"}, doubts(shift("59", "61")), "to where the last one ends")

	for _, bad := range []Typed{with("sequence.steps[0].to", "75", "station.stiffness", "stiff"), with("sequence.steps[0].to", "75", "sequence.steps[0].zone[1]", "")} {
		_, _, ok = MoveZone(bad, 0)
		assert.False(t, ok, "no plan, nothing moved")
	}
}

// TestZoneOnPositionSteps: a moved zone keeps its width, and stands on whole position steps
// where one is near. Expected values by hand.
func TestZoneOnPositionSteps(t *testing.T) {
	assert.Equal(t, [2]float64{73, 77}, zoneAbout(75, 4, 0.01))
	assert.Equal(t, [2]float64{73, 77.01}, zoneAbout(75, 4.01, 0.01), "72.995 is half a step off")
	assert.Equal(t, [2]float64{74.9, 75.1}, zoneAbout(75, 0.2, 1), "no step is near enough")
	assert.Equal(t, [2]float64{73, 77}, zoneAbout(75, 4, 0))
}
