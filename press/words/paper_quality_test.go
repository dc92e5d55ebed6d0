package words

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// named is the example with the entries of a control plan.
func named(t *testing.T) *press.Plan {
	return decoded(t, `"window": {}`, `"window": {}, "quality": {"operation": "40 Press sleeve", "machine": "P-07", "characteristic_number": "12", "characteristic_class": "special",
		"responsible": "setter", "sample_size": "5 parts", "frequency": "every two hours", "decides": "the quality lead."}`)
}

// TestControlPlanSaysWho: every row has operation, machine and who is responsible;
// number and class belong to the characteristic of the drawing alone.
func TestControlPlanSaysWho(t *testing.T) {
	control := paperOf(t, "control", named(t))
	require.Greater(t, len(control.Rows), 5)
	for i, row := range control.Rows {
		assert.Equal(t, []string{"40 Press sleeve", "P-07"}, row[:2])
		assert.Equal(t, "setter", row[len(row)-1])
		want := []string{none, none}
		if i < 2 {
			want = []string{"12", "special"}
		}
		assert.Equal(t, want, row[3:5], row[2])
	}
	bare := paperOf(t, "control", decoded(t)).Rows[0]
	assert.Equal(t, []string{none, none}, bare[:2])
	assert.Equal(t, press.ForTheTeam, bare[len(bare)-1])
}

// TestLampsTakeNoSample: the two lamps judge every part whatever sample size the plan
// has, which belongs to the measurement beside them.
func TestLampsTakeNoSample(t *testing.T) {
	for _, c := range []struct {
		p    *press.Plan
		size []string
	}{{named(t), []string{"5 parts", "every two hours"}}, {decoded(t), []string{press.ForTheTeam, press.ForTheTeam}}} {
		rows := paperOf(t, "control", c.p).Rows
		assert.Equal(t, "Seated height", rows[0][2])
		assert.Equal(t, []string{"every part", "every cycle"}, rows[0][7:9])
		assert.Equal(t, "Seated height, periodic measurement", rows[1][2])
		assert.Equal(t, c.size, rows[1][7:9])
		for _, row := range rows[2:] {
			assert.NotEqual(t, "5 parts", row[7], row[2])
			if row[2] == "Insert present" {
				assert.Equal(t, []string{"every part", "every cycle"}, row[7:9])
			}
		}
	}
	assert.Contains(t, allOf(paperOf(t, "control", named(t))), "The two lamps judge every part")
}

// TestReactionPlanNamesWho says what becomes of refused parts, and that nobody is
// named where nobody is.
func TestReactionPlanNamesWho(t *testing.T) {
	assert.Contains(t, paperOf(t, "reactions", named(t)).Lead, "only the quality lead says what becomes of it, and is called when a check fails. When")
	assert.Contains(t, paperOf(t, "reactions", decoded(t)).Lead, "The plan names nobody yet")
}

// TestFailuresHaveCauseAndPrevention: each row of the catalogue that is a failure has
// an effect, a cause and a prevention of its own; the user's rows leave it to the team.
func TestFailuresHaveCauseAndPrevention(t *testing.T) {
	p := decoded(t, `"window": {}`, `"window": {}, "faults": {"other": [{"name": "Felt washer left in", "height": 0.4}]}`)
	table := paperOf(t, "failures", p)
	at := map[string]int{}
	for i, c := range table.Columns {
		at[c.Head] = i
	}
	own := 0
	for _, row := range table.Rows {
		for _, head := range []string{"Effect", "Cause", "Prevention"} {
			require.Contains(t, at, head)
			cell := row[at[head]]
			if row[0] == "Felt washer left in" {
				own++
				assert.Equal(t, press.ForTheTeam, cell)
				continue
			}
			assert.True(t, strings.HasSuffix(cell, "."), "%s of %s", head, row[0])
		}
	}
	assert.Equal(t, 3, own)
}

// TestAWeekOnAPage: each push of the shift check has a box a day, and there is one to
// sign.
func TestAWeekOnAPage(t *testing.T) {
	shift := paperOf(t, "shift", decoded(t))
	boxes := 0
	for _, c := range shift.Columns {
		if c.Box {
			boxes++
		}
	}
	assert.Equal(t, 7, boxes)
	assert.Equal(t, "Name, signed", shift.Rows[len(shift.Rows)-1][0])
}

// TestSetUpNamesItsTools: which load cell, calibrated when, and what the controller
// ran are filled in where the station is set up.
func TestSetUpNamesItsTools(t *testing.T) {
	assert.Equal(t, []string{"Date", "Station", "Load cell number", "Calibrated on", "Controller program"}, paperOf(t, "proving", decoded(t)).Fill)
}
