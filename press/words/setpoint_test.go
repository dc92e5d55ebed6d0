package words

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// TestNothingIsProposedUnderABlocker: no setpoint of a plan with a blocker reads as advice,
// on the bench, on paper or in a file of rows; what was set by hand still says so.
func TestNothingIsProposedUnderABlocker(t *testing.T) {
	for _, c := range []changes{{"joint.stop": "none"}, {"ram.max_speed": "150"}, {"station.max_force": "2300"}, {"joint.stop": "none", "window.zone_start": "115.09"}} {
		p := example(t, c)
		r := press.Evaluate(p)
		require.True(t, r.Blocked())
		for _, s := range Setpoints(p, r) {
			for _, said := range []string{s.Note, s.From, s.Source(false), s.Source(true)} {
				assert.NotContains(t, said, proposed, s.Label)
			}
			if s.Path == "window.zone_start" && p.Given(s.Path) {
				assert.True(t, strings.HasPrefix(s.Note, "by hand; not for use before"), s.Note)
			}
		}
		for _, name := range PaperNames() {
			for _, row := range paperOf(t, name, p).Rows {
				assert.NotContains(t, row, proposed, name)
			}
		}
		list := paperOf(t, "setpoints", p)
		assert.True(t, strings.HasPrefix(list.Lead, "Not ready to be typed in: "), list.Lead)
		assert.NotContains(t, list.Lead, "What is typed into the controller")
	}
}

// TestProposedAndComputed: a setpoint is proposed on every page and never computed, which
// is said of results alone.
func TestProposedAndComputed(t *testing.T) {
	p := example(t, nil)
	r := press.Evaluate(p)
	for _, s := range Setpoints(p, r) {
		if s.Path == "" {
			continue
		}
		assert.Equal(t, []string{"proposed", "proposed", "proposed", "as proposed"}, []string{s.Note, s.From, s.Source(false), s.Source(true)}, s.Label)
	}
	said := 0
	for _, row := range paperOf(t, "basis", p).Rows {
		switch from := row[len(row)-1]; {
		case strings.HasPrefix(from, "computed"):
			assert.Equal(t, "Shares of all parts", row[0])
			said++
		case from == "proposed":
			assert.Equal(t, "Window", row[0])
			said++
		}
	}
	assert.Equal(t, 6+5, said, "the shares, and the five entries of the window")
	for _, word := range []string{"proposed", "computed"} {
		found := false
		for _, x := range Glossary {
			found = found || x.Word == word
		}
		assert.True(t, found, word)
	}
}

// TestProbeAndStationZoneAreTypedIn: what is typed in for the first look and for a zone of
// the station's own stands among the setpoints, in the controller's own words where it has
// some, else in the unit and factor of its like; the retract speed does not where the steps
// bring the ram home. Source: the plan's own entries.
func TestProbeAndStationZoneAreTypedIn(t *testing.T) {
	p, _ := probed(t)
	p.Controller.Words = []press.SetpointWord{{Setpoint: "setting", Name: "I1", Unit: "1/10 %", Factor: 10}, {Setpoint: "probe_end", Name: "P7", Unit: "1/100 mm", Factor: 100}}
	p.Sequence.StationZone = &[2]float64{10, 20.5}
	r := press.Evaluate(p)
	require.NotNil(t, r.Sequence)
	rows := map[string][]string{}
	list := paperOf(t, "setpoints", p)
	for _, row := range list.Rows {
		_, twice := rows[row[0]]
		assert.False(t, twice, row[0])
		rows[row[0]] = row
	}
	assert.Equal(t, []string{"12\u202f%", none, "120", "1/10 %"}, rows["Probe setting"][1:5])
	assert.Equal(t, []string{"153.89\u202fmm", "P7", "15389", "1/100 mm"}, rows["Probe end"][1:5])
	assert.Equal(t, "10.00\u202fmm", rows["Station zone start"][1])
	assert.Equal(t, "20.50\u202fmm", rows["Station zone end"][1])
	assert.NotContains(t, rows, "Retract speed")
	assert.Contains(t, rows, "Probe watch time, at least")
	p.Sequence.StationZone = nil
	assert.NotContains(t, paperOf(t, "setpoints", p).Rows, rows["Station zone start"])

	found := map[string]string{}
	for _, row := range paperOf(t, "steps", p).Rows {
		if strings.Contains(row[0], "probe") {
			found[row[1]] = row[3]
		}
	}
	assert.Equal(t, "120", found["Probe setting"])
	assert.Equal(t, "15389", found["Probe end"])
	assert.Contains(t, found, "Fast approach to")
}
