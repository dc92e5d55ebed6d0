package draw

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw/drawtest"
)

// TestFirstLookOnTheStrip: a plan with a probe has its end on the ruler of the strip, to the
// scale of the window, and says which look each part of the strip is about; one without has
// neither. Positions: the worked example of the run (probe end 153.89, zone from 154.02,
// loosest sound part 153.635).
func TestFirstLookOnTheStrip(t *testing.T) {
	data, err := os.ReadFile("../../static/examples/pivot-bush.json")
	require.NoError(t, err)
	p, faults := press.Decode(data)
	require.Empty(t, faults)
	m := modelOf(p)
	require.NotNil(t, m.first)
	assert.InDelta(t, 153.89, m.first.end, 1e-9)
	assert.InDelta(t, 154.02, *m.first.zone, 1e-9)
	assert.InDelta(t, 153.635407, *m.first.loosest, 1e-6)
	assert.Less(t, m.lens[0], m.first.end, "it lies in the lens")
	assert.Contains(t, m.desc, "First look, in the probe, which ends at 153.89")
	r := press.Evaluate(p)
	for _, o := range forms {
		texts := map[string]bool{}
		for _, l := range NewStrip(p, r, o).Texts() {
			texts[l.Text] = true
		}
		for _, want := range []string{"first look", "probe ends 153.89", goesOn, refusedWords, "of the second look", "means, second look"} {
			assert.True(t, texts[want], "%q, %+v", want, o)
		}
	}
	once := drawtest.Example(t, nil)
	assert.Nil(t, modelOf(once).first)
	for _, l := range NewStrip(once, press.Evaluate(once), Options{}).Texts() {
		assert.NotContains(t, l.Text, " look")
	}
}
