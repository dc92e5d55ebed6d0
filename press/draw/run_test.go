package draw

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
	"ramplan/press/draw/drawtest/grey"
	"ramplan/press/words"
)

// TestRunShows: what the drawings of the worked example say. Figures of the worked
// example; which steps light the zones and where the way departs by hand.
func TestRunShows(t *testing.T) {
	p, r := drawtest.OfTheRun(t, nil)
	m := newRunModel(p, r)
	assert.Equal(t, "7.72 s a part, 3.00 s of it handling; the zone signal comes on twice", words.Plain(m.title))
	require.Len(t, m.steps, 9)
	assert.Equal(t, runStep{7, "8", "shake the stack on", false, m.steps[6].to, m.steps[8].from}, m.steps[7], "its three passes are one step")
	assert.Len(t, m.joins, 2, "into the probe, and off the part")
	assert.Len(t, m.rests, 8)
	assert.Equal(t, []string{"arrival", "own zone", "station zone"}, []string{m.lanes[0].name, m.lanes[1].name, m.lanes[2].name})
	assert.Equal(t, "to the camera", m.lanes[1].on[0].elsewhere)
	assert.Empty(t, m.lanes[1].on[1].elsewhere, "that of the press")
	assert.Equal(t, "home", m.lanes[2].on[1].elsewhere)
	assert.True(t, m.hold)
	assert.InDelta(t, 3.4, m.otherFrom, 0.1)
	for _, want := range []string{"Step 1 (“to the camera”): from 0", "Arrival: on from 2.09", "(step 1)", "looked at at 2.17"} {
		assert.Contains(t, m.desc, want)
	}
	assert.Equal(t, "The probe refuses below 4.7 µm with 99.9 %; 0.10 in a million sound parts refused", words.Plain(NewProbe(p, r, Options{}).Title()))
}

// TestRunIsLegible: the drawings of the run in every form: no text over another, none
// outside, and nothing said by hue alone.
func TestRunIsLegible(t *testing.T) {
	for name, c := range map[string]drawtest.Changes{
		"worked":      nil,
		"no-end":      {"probe.end": "152"},
		"many":        {"sequence.steps[7].times": "40", "sequence.steps[7].by": "-0.5"},
		"long-name":   {"sequence.steps[1].name": "a picture of the bush, and of the stack under it, before anything is pressed into anything else"},
		"zone-live":   {"probe.zone_live": "true"},
		"target":      {"sequence.relative_from": "target"},
		"other-words": {"sequence.steps[0].name": "к камере Ω 中文"},
	} {
		p, r := drawtest.OfTheRun(t, c)
		for _, o := range forms {
			for what, make := range map[string]func(*press.Plan, *press.Result, Options) *canvas.Picture{"run": NewRun, "probe": NewProbe} {
				d := make(p, r, o)
				labelsApart(t, d, what+" "+name)
				assert.Empty(t, grey.Lost(grey.Of(d)), what+" "+name)
				drawtest.WellFormedSVG(t, svgOf(d))
			}
		}
	}
}

// TestGoldenRun holds regression values: the two drawings of the worked example.
func TestGoldenRun(t *testing.T) {
	p, r := drawtest.OfTheRun(t, nil)
	drawtest.Golden(t, "run-worked.svg", svgOf(NewRun(p, r, Options{})))
	drawtest.Golden(t, "probe-worked.svg", svgOf(NewProbe(p, r, Options{})))
}
