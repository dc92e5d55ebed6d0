package archive

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/issue"

	"ramplan/press/drafts"
)

// TestIssuedStates: the state that a revision was made of is found again, also
// after later typing, an undo before the issue, and where another one came between.
func TestIssuedStates(t *testing.T) {
	c := newClock()
	a := opened(t, t.TempDir(), Options{Now: c.now})
	h, err := a.Create(background(), example(t), drafts.DidMake)
	require.NoError(t, err)
	signed := issue.Signed{Prepared: "P", Checked: "C", Approved: "A", Reason: "First issue"}
	none, err := a.IssuedStates(background(), h.ID)
	require.NoError(t, err)
	assert.Empty(t, none)

	c.rest(2 * Pause)
	_, err = a.Issue(background(), h.ID, At(h.Version), signed)
	require.NoError(t, err)
	c.rest(2 * Pause)
	h, err = a.Save(background(), h.ID, At(h.Version), with(example(t), "station.nest", "141"), "")
	require.NoError(t, err)
	c.rest(2 * Pause)
	h, err = a.Save(background(), h.ID, At(h.Version), with(example(t), "station.nest", "142"), "")
	require.NoError(t, err)
	require.Equal(t, int64(3), h.State)
	h, err = a.Undo(background(), h.ID, At(h.Version))
	require.NoError(t, err)
	c.rest(2 * Pause)
	signed.Reason = "Nest set anew"
	_, err = a.Issue(background(), h.ID, At(h.Version), signed)
	require.NoError(t, err)
	h, err = a.Redo(background(), h.ID, At(h.Version))
	require.NoError(t, err)
	signed.Reason = "Nest set anew again"
	_, err = a.Issue(background(), h.ID, At(h.Version), signed)
	require.NoError(t, err)
	h, err = a.Undo(background(), h.ID, At(h.Version))
	require.NoError(t, err)
	signed.Reason = "It was right before"
	_, err = a.Issue(background(), h.ID, At(h.Version), signed)
	require.NoError(t, err)

	got, err := a.IssuedStates(background(), h.ID)
	require.NoError(t, err)
	assert.Equal(t, map[int64][]string{1: {"A"}, 2: {"B", "D"}, 3: {"C"}}, got)
}
