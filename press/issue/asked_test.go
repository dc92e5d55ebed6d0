package issue

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// What of a change the drill asks about. By hand: from what is typed.
func TestAskedOf(t *testing.T) {
	was := plan(t)
	assert.Empty(t, AskedOf(was, plan(t, "title.notes", "other")))
	got := AskedOf(was, plan(t, "window.zone_start", "115.06", "faults.chip", "0.15", "quality.reject_place", "a red box"))
	require.Len(t, got.Figures, 1)
	assert.Equal(t, ZoneStart, got.Figures[0].Name)
	assert.InDelta(t, 115.08, *got.Figures[0].Was, 1e-9)
	assert.InDelta(t, 115.06, *got.Figures[0].Is, 1e-9)
	require.Len(t, got.Entries, 1)
	assert.Equal(t, "faults.chip", got.Entries[0].Path)
	assert.True(t, AskedOf(was, plan(t, "window.zone_end", "115.15")).Lamps, "what runs to the push end leaves the zone then")
}
