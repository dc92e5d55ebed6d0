package words

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// TestSamplesAreBounded: a sample lies between two heights wherever it is asked for, and
// a tall one is solid or locked where something is pressed in.
func TestSamplesAreBounded(t *testing.T) {
	p := example(t, nil)
	r := press.Evaluate(p)
	all := say.LimitSamples(p, r)
	require.Len(t, all, 4)
	tall := all[0].Heights(p)
	assert.Regexp(t, `^\d+\.\d{3} to \d+\.\d{3}\x{202f}mm$`, tall)
	for _, name := range []string{"samples", "proving"} {
		assert.Contains(t, strings.Join(flat(paperOf(t, name, p)), "\n"), tall, name)
	}
	for _, name := range []string{"samples", "proving", "shift", "reactions"} {
		assert.NotContains(t, strings.Join(flat(paperOf(t, name, p)), "\n"), "or taller", name)
	}
	assert.Contains(t, strings.Join(flat(paperOf(t, "proving", p)), "\n"), "solid or locked")
	notes := strings.Join(paperOf(t, "samples", p).Notes, "\n")
	assert.Contains(t, notes, "proves nothing")
	assert.Contains(t, notes, "is solid, or locked")
	p = example(t, with(touch, changes{"parts[2].contact": "0"}))
	assert.NotContains(t, strings.Join(say.SampleNotes(p, press.Evaluate(p)), "\n"), "locked", "nothing is pressed in")
}

// TestMasterHasLimits: the shift check and the first parts say from where to where the
// position must be, and what the check with the master is worth against a worn nest.
func TestMasterHasLimits(t *testing.T) {
	p := example(t, nil)
	r := press.Evaluate(p)
	pos := PositionsOf(p)
	want := pos.Bare(pos.up(r.Nominal()-r.MasterWithin())) + " to " + pos.Below(r.Nominal()+r.MasterWithin())
	for _, name := range []string{"shift", "proving", "reactions"} {
		text := strings.Join(flat(paperOf(t, name, p)), "\n")
		assert.Contains(t, text, want, name)
		assert.NotContains(t, text, "about 115", name)
	}
	share, limits, ok := say.masterWear(p, r)
	require.True(t, ok)
	assert.Equal(t, want, limits)
	worn := row(r, press.RowNestWorn)
	says := Detected(p, r, *worn)
	assert.Equal(t, "lamps "+Rarely(worn.Detection)+", master check "+Rarely(share), says)
	assert.Empty(t, Judged(p, r, *worn), "no part is judged")
	assert.Contains(t, strings.Join(paperOf(t, "shift", p).Notes, "\n"), say.OneIn(share))
	assert.Contains(t, strings.Join(Unseen(p, r), "\n"), say.OneIn(share))
}

// Limit samples are judged with their datum at its mean: where rows make one up, it is said
// on which height they hold and what another does. By hand: the flange of 3 mm is the datum,
// so a sample of a height stands 3 mm more above the nest, and reads as such.
func TestSamplesOnADatumSayOnWhich(t *testing.T) {
	datum := changes{"parts[1].insert": "false", "parts[1].datum": "true", "parts[1].minus": "0.02", "parts[1].plus": "0.02", "requirement.height_low": "21.95", "requirement.height_high": "22.05"}
	p := example(t, datum)
	r := press.Evaluate(p)
	height, rows := r.Datum()
	require.True(t, rows)
	require.InDelta(t, 3, height, 1e-9)
	assert.InDelta(t, r.Travel.SeatReading, r.ReadingOf(r.Stack.Seat.Mean-height), 1e-9)
	assert.Contains(t, plain(strings.Join(say.SampleNotes(p, r), "\n")), "only on a datum that lies 3.000 mm above the nest")
	p = example(t, nil)
	assert.NotContains(t, strings.Join(say.SampleNotes(p, press.Evaluate(p)), "\n"), "datum")
}
