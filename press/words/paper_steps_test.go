package words

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// TestStepTable: each step has its figures as they are typed in, a plan without steps no
// such page. Figures of the worked example; the factor of 100 by hand.
func TestStepTable(t *testing.T) {
	data, err := os.ReadFile("../../static/examples/pivot-bush.json")
	require.NoError(t, err)
	p, faults := press.Decode(data)
	require.Empty(t, faults)
	d := p.Draft()
	d.Set("controller.words[0].setpoint", "push_end")
	d.Set("controller.words[0].name", "Target")
	d.Set("controller.words[0].unit", "1/100 mm")
	d.Set("controller.words[0].factor", "100")
	p, faults = d.Check()
	require.Empty(t, faults)
	table, ok := Paper("steps", p, press.Evaluate(p))
	require.True(t, ok)
	for _, want := range [][]string{
		{"Step 1 (“to the camera”)", "To", Unit("60.00", "mm"), "6000", "1/100 mm", "", ""},
		{"Step 1 (“to the camera”)", "Speed", Unit("220", "mm/s"), "220", "mm/s", "", ""},
		{"Step 1 (“to the camera”)", "Acceleration", Unit("2200", "mm/s²"), "2200", "mm/s²", "", ""},
		{"Step 2 (“picture”)", "Wait", Unit("0.15", "s"), "0.15", "s", "", ""},
		{"Step 3 (“fast”)", "At its end", "goes on without rest", "–", "–", "", ""},
		{"Step 4 (probe)", "Probe setting", Unit("12", "%"), "12", "%", "", ""},
		{"Step 8 (“shake the stack on”)", "Times", "3", "–", "–", "", ""},
	} {
		assert.Contains(t, table.Rows, want)
	}
	assert.Contains(t, PapersOf(p), "steps")

	plain := fromExample(t, "example-plan")
	assert.NotContains(t, PapersOf(plain), "steps")
	table, _ = Paper("steps", plain, press.Evaluate(plain))
	assert.Empty(t, table.Rows)
	assert.Equal(t, NoSteps, table.Lacking)
}
