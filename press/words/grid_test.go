package words

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

func gridsOf(t *testing.T, p *press.Plan, names ...string) map[string]Grid {
	t.Helper()
	all, err := Grids(names, p, press.Evaluate(p))
	require.NoError(t, err)
	out := map[string]Grid{}
	for _, g := range all {
		out[g.Title] = g
	}
	return out
}

func examplePlan(t *testing.T) *press.Plan {
	t.Helper()
	data, err := os.ReadFile("../../static/examples/example-plan.json")
	require.NoError(t, err)
	p, ps := press.Decode(data)
	require.Empty(t, ps)
	return p
}

func find(g Grid, begin string) []string {
	for _, row := range g.Rows {
		for _, cell := range row {
			if strings.HasPrefix(cell, begin) {
				return row
			}
		}
	}
	return nil
}

// TestGrids: every table is whole, whatever the plan; what is filled in by hand is
// empty, and what is not is never empty but for the remarks.
func TestGrids(t *testing.T) {
	p := examplePlan(t)
	for title, g := range gridsOf(t, p, GridNames()...) {
		require.NotEmpty(t, g.Rows, title)
		for _, row := range g.Rows {
			require.Len(t, row, len(g.Columns), title)
			for i, cell := range row {
				if g.Columns[i].ByHand {
					assert.Empty(t, cell, title)
				}
			}
		}
	}
	_, err := Grids([]string{"everything"}, p, press.Evaluate(p))
	assert.ErrorContains(t, err, `words: no page is called "everything"; there are faults, shift`)
	twice, err := Grids([]string{"shift", "shift"}, p, press.Evaluate(p))
	require.NoError(t, err)
	assert.Len(t, twice, 1)
}

// TestGridFigures: the rows say what the result says. The lamps are derived by hand:
// the example's zone reaches from the lower edge of the window past the push end, so
// a part that is too tall gives arrival alone, and nothing in the nest zone alone.
func TestGridFigures(t *testing.T) {
	p := examplePlan(t)
	r, pos := press.Evaluate(p), PositionsOf(p)
	g := gridsOf(t, p, GridNames()...)
	tall := find(g["Limit samples to make"], "Refused as too tall")
	assert.Equal(t, []string{pos.Above(r.Samples.Long), "2", "on", "off"}, tall[1:5])
	low := find(g["Limit samples to make"], "Refused as too low")
	assert.Equal(t, []string{pos.Below(r.Samples.Short), "2", "off", "on"}, low[1:5])
	shift := g["Shift check"].Rows
	require.Len(t, shift, 5)
	assert.Equal(t, []string{"off", "on"}, shift[0][3:5])
	assert.Equal(t, []string{pos.At(r.Travel.SeatReading), "on", "on"}, shift[1][2:5])
	assert.Equal(t, []string{"on", "on"}, shift[4][3:5], "the loose sample passes, and teaches why")
	setup := g["Set-up and proving"]
	assert.Equal(t, "66\u202f%", find(setup, "Enter: setting")[2])
	assert.Equal(t, Force(r.Force.Typical), find(setup, "A load cell")[2])
	reaction := g["Reaction plan"].Rows
	require.Len(t, reaction, 4)
	assert.Equal(t, "Goes on; no lock.", reaction[0][5])
	for _, row := range reaction[1:] {
		assert.Contains(t, row[5], "The station locks.")
	}
	assert.Equal(t, "100\u202f%", find(g["Failure modes at this station"], "Missing insert")[4])
	assert.NotNil(t, find(g["Control-plan rows of this station"], pos.between(p.Requirement.HeightLow, p.Requirement.HeightHigh)))
}

// TestGridsOfBlocked: what is for use at the station says so when the plan is not
// ready, and no insert check is promised that is none.
func TestGridsOfBlocked(t *testing.T) {
	p := examplePlan(t)
	p.Parts[1].Insert, p.Parts[2].Insert = false, true
	r := press.Evaluate(p)
	require.True(t, r.Blocked())
	require.True(t, r.MissingPasses())
	g := gridsOf(t, p, GridNames()...)
	for _, title := range []string{"Shift check", "Set-up and proving", "Reaction plan"} {
		assert.Contains(t, g[title].Lead[0], "Not ready to be typed in: ", title)
	}
	assert.Equal(t, "Not seen by these signals: another check is needed", find(g["Control-plan rows of this station"], "Insert present")[2])
	assert.NotContains(t, g["Shift check"].Rows[0][1], "not stuck on")
	assert.Contains(t, g["Reaction plan"].Rows[0][5], "The station locks.")
}
