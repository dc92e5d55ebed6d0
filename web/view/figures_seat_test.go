package view

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// TestTheBoundAtTheSeatStandsByItself: the push at rest, what is expected at the seat
// and the bound without damping each say what they are (derived: force and impact of
// the example's result).
func TestTheBoundAtTheSeatStandsByItself(t *testing.T) {
	p, faults := press.Decode(example(t))
	require.Empty(t, faults)
	r := press.Evaluate(p)
	w := writer{p, r, places{}, say.Positions(p)}
	got := map[string]page.Figure{}
	for _, f := range w.force() {
		got[f.Label] = f
	}
	assert.Equal(t, "at rest; typically 2468", got["At this setting"].Note)
	assert.Equal(t, []string{words.Fixed(r.Force.Typical, 0) + " to " + words.Fixed(r.Impact.SeatExpected, 0), "the push alone, to push and blow; with a strong ram to 2850"}, []string{got["Met at the seat"].Value, got["Met at the seat"].Note})
	assert.Equal(t, []string{"5003", "a bound, no forecast"}, []string{got["At the seat, undamped"].Value, got["At the seat, undamped"].Note})
}
