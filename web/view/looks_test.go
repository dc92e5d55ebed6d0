package view

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/web/page"
)

// TestTwoLooksOnThePages: the Faults page and the station of a plan with a probe tell the
// first look, and those of a plan without one ask for no look.
func TestTwoLooksOnThePages(t *testing.T) {
	p, r := shownPlan(t, "probe.use", "true")
	faults := FaultsPage{Plan: p, Result: r}.Page(page.Assets{})
	for i, row := range faults.Rows {
		if f := r.Faults[i]; f.Name == press.RowLoose || f.Name == press.RowMissing {
			assert.NotEmpty(t, row.NoPush, f.Name)
			assert.Equal(t, press.RefusedByProbe, row.Verdict[0].Text, f.Name)
			assert.Equal(t, "off", row.Arrival, f.Name)
		}
	}
	assert.Equal(t, "Loose", faults.Samples.Rows[len(faults.Samples.Rows)-1].Name)
	assert.NotContains(t, strings.Join(faults.Unseen, "\n"), "A loose fit: it rests in the right place")
	assert.NotEmpty(t, NotInMotion(r, 0))

	typed := map[string]string{"arrival": "on", "zone": "off", "look": firstLook}
	asked := Drill{P: p, R: r}.Lamps(page.DrillHead{}, func(name string) string { return typed[name] })
	require.NotNil(t, asked.Advice)
	assert.Equal(t, "Go on", asked.Advice.Verdict)
	typed["look"] = secondLook
	asked = Drill{P: p, R: r}.Lamps(page.DrillHead{}, func(name string) string { return typed[name] })
	require.NotNil(t, asked.Advice)
	assert.Equal(t, "Too tall", asked.Advice.Verdict)

	delete(typed, "look")
	asked = Drill{P: p, R: r}.Lamps(page.DrillHead{}, func(name string) string { return typed[name] })
	assert.Nil(t, asked.Advice, "off and off is a refused part at the one look and a fault at the other")
	assert.NotEmpty(t, asked.Trouble)

	p, r = shownPlan(t)
	typed["look"] = firstLook // of an address that somebody kept
	asked = Drill{P: p, R: r}.Lamps(page.DrillHead{}, func(name string) string { return typed[name] })
	assert.Empty(t, asked.Looks)
	assert.Equal(t, "Too tall", asked.Advice.Verdict)
	assert.Empty(t, NotInMotion(r, 0))
}
