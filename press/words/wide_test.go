package words

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// A window that lets in what the drawing refuses: no sample out there is called good,
// and no gap is larger than the way on which the part is pressed in. By hand: the press-in
// travel of the example is 6.40 mm, and its zone begins 30 mm before the seat.
func TestAWideWindowPromisesNothingImpossible(t *testing.T) {
	p := example(t, changes{"window.zone_start": "85"})
	r := press.Evaluate(p)
	for _, x := range say.LimitSamples(p, r) {
		if x.Good && !x.Missing {
			assert.LessOrEqual(t, x.To, p.Requirement.HeightHigh+1e-9, x.Name)
		}
	}
	gap, ok := passingGap(r, PositionsOf(p))
	require.True(t, ok)
	assert.InDelta(t, 6.4, gap, 1e-9)
	assert.Contains(t, strings.Join(say.sampleTable(p, r).Notes, " "), "The window lets in heights that the drawing refuses")
	narrow := example(t, nil)
	assert.NotContains(t, strings.Join(say.sampleTable(narrow, press.Evaluate(narrow)).Notes, " "), "The window lets in")
}

// Where no reading gives both signals, the entry that was set by hand is told where to
// stand, and nothing else is moved. By hand: the acceptance of the example begins at
// 115.0749 and ends at 115.1993 mm.
func TestNeverGoodNamesTheEntry(t *testing.T) {
	for want, c := range map[string]changes{
		"the zone start that was set by hand is to stand at 115.08":        {"window.zone_start": "130"},
		"the zone starts at 116.00 mm, past its proposed end at 115.35 mm": {"window.zone_start": "116"},
		"the push is to end at 115.19":                                     {"window.push_stroke": "5"},
	} {
		p := example(t, c)
		r := press.Evaluate(p)
		Explain(r)
		var said string
		for _, f := range r.Findings {
			if f.Code == press.NeverGood {
				said = plain(f.Message)
			}
		}
		assert.Contains(t, said, want)
	}
}

// A row of a superseded revision says so where it would be read whether it may be used.
func TestRowsOfASupersededRevision(t *testing.T) {
	id := Identity{Number: "WS-210", Revision: "A", Superseded: "superseded by revision B"}
	cells := id.cells("Table")
	assert.Equal(t, "superseded by revision B", cells[len(cells)-1])
	id.NotReady = "no setting"
	cells = id.cells("Table")
	assert.Equal(t, "superseded by revision B; no setting", cells[len(cells)-1])
}

// A named check is the prevention of a missing insert, and finds it besides.
func TestNamedCheckInTheFailureRows(t *testing.T) {
	p := example(t, changes{"station.presence_check": "light barrier in the nest"})
	found := 0
	for _, row := range say.failureTable(p, press.Evaluate(p)).Rows {
		if strings.Contains(strings.Join(row, " "), "light barrier in the nest finds it besides") {
			found++
			assert.Contains(t, strings.Join(row, " "), "Light barrier in the nest, proved before every shift")
		}
	}
	assert.Equal(t, 2, found)
}

// A fault that shows the lamps of a good part is said to be none; a good part is not,
// nor a fault that the lamps find.
func TestLampsThatMislead(t *testing.T) {
	p := example(t, nil)
	r := press.Evaluate(p)
	for i := range r.Faults {
		row := &r.Faults[i]
		if row.Arrival == nil {
			continue
		}
		on := Pair{Arrival: *row.Arrival, Zone: *row.Zone}
		said := LampsMislead(p, r, row, on)
		if !row.Good && on.Arrival && on.Zone {
			assert.Contains(t, said, "not", row.Name)
		} else {
			assert.Empty(t, said, row.Name)
		}
	}
	assert.Empty(t, LampsMislead(p, r, nil, Pair{Arrival: true, Zone: true}))
}
