package archive

import (
	"errors"
	"strconv"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/issue"
)

// Twelve windows issue the same plan at once, each with words of its own: one of
// them does, whoever is first.
func TestIssuedOnceWhoeverAsks(t *testing.T) {
	const windows, rounds = 12, 15
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}})
	h, err := a.Get(background(), 1)
	require.NoError(t, err)
	for round := range rounds {
		h, err = a.Save(background(), 1, At(h.Version), with(h.Draft, "title.notes", "round "+strconv.Itoa(round)), "")
		require.NoError(t, err)
		letters, errs := make([]string, windows), make([]error, windows)
		begin := make(chan struct{})
		var asking sync.WaitGroup
		for w := range windows {
			asking.Go(func() {
				<-begin
				var r issue.Revision
				r, errs[w] = a.Issue(background(), 1, Start{Version: h.Version, Window: "w" + strconv.Itoa(w)}, issue.Signed{Prepared: "P", Checked: "C", Approved: "A", Reason: "window " + strconv.Itoa(w)})
				letters[w] = r.Letter
			})
		}
		close(begin)
		asking.Wait()
		done := 0
		for w := range windows {
			if errs[w] == nil {
				done++
				assert.Equal(t, issue.Letter(round+1), letters[w])
				continue
			}
			var refused *issue.Refused
			require.True(t, errors.As(errs[w], &refused), "%v", errs[w])
			assert.Contains(t, refused.Error(), "as revision "+issue.Letter(round+1))
		}
		assert.Equal(t, 1, done, "round %d", round)
	}
	issued, err := a.Revisions(background(), 1)
	require.NoError(t, err)
	assert.Len(t, issued, rounds)
}
