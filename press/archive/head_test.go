package archive

import (
	"context"
	"database/sql"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/drafts"
	"ramplan/press/issue"
)

// TestHeadsCompiledAndAsText: the query of a head that was compiled once tells what it tells
// as text, in a transaction and outside of one, also of a plan that is not there and after
// another window's changes.
func TestHeadsCompiledAndAsText(t *testing.T) {
	a := opened(t, t.TempDir(), Options{})
	d := example(t)
	h, err := a.Create(background(), d, drafts.DidMake)
	require.NoError(t, err)
	c := a.handles.Load()
	same := func(id ID) {
		t.Helper()
		text, textErr := getHead(background(), asText(c.read), id)
		read, readErr := getHead(background(), c.heads(background()), id)
		assert.Equal(t, textErr, readErr)
		assert.Equal(t, text, read)
		require.NotNil(t, c.toRead.stmt)
		require.NoError(t, a.changeIn(background(), func(ctx context.Context, in *handles, tx *sql.Tx) error {
			require.NotNil(t, in.toWrite.stmt)
			written, writtenErr := getHead(ctx, in.headsIn(ctx, tx), id)
			assert.Equal(t, textErr, writtenErr)
			assert.Equal(t, text, written)
			return nil
		}))
	}
	for i := range 3 {
		h, err = a.Save(background(), h.ID, Start{Version: h.Version, Window: "w"}, with(d, "station.nest", strconv.Itoa(141+i)), "")
		require.NoError(t, err)
		same(h.ID)
	}
	_, err = a.Issue(background(), h.ID, At(h.Version), issue.Signed{Prepared: "P", Checked: "C", Approved: "A", Reason: "First issue"})
	require.NoError(t, err)
	same(h.ID)
	same(h.ID + 1)
}
