package archive

import (
	"errors"
	"fmt"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/drafts"
)

// Two windows write one plan at the same time, others read beside them: every
// word that was acknowledged stands in a state of its own line, and no reader
// ever sees half of anything.
func TestTwoWritersAndReaders(t *testing.T) {
	t.Parallel()
	const writers = 2
	each := 60
	if testing.Short() {
		each = 20
	}
	a := opened(t, t.TempDir(), Options{First: []*press.Draft{example(t)}})
	looker, err := Look(background(), a.dir)
	require.NoError(t, err)
	t.Cleanup(func() { _ = looker.Close() })

	var writing, reading sync.WaitGroup
	var stale, reads atomic.Int64
	done := make(chan struct{})
	for w := range writers {
		writing.Go(func() {
			h, err := a.Get(background(), 1)
			for i := 0; i < each && err == nil; i++ {
				for {
					notes, _ := h.Draft.Get("title.notes")
					h, err = a.Save(background(), 1, At(h.Version), with(h.Draft, "title.notes", fmt.Sprintf("%s w%d-%d", notes, w, i)), drafts.DidReplace)
					if late := (*Stale)(nil); errors.As(err, &late) {
						stale.Add(1)
						h = late.Head
						continue
					}
					break
				}
			}
			assert.NoError(t, err)
		})
	}
	for _, from := range []*Archive{a, a, looker} {
		reading.Go(func() {
			version := int64(0)
			for {
				select {
				case <-done:
					return
				default:
				}
				h, err := from.Get(background(), 1)
				if !assert.NoError(t, err) {
					return
				}
				assert.GreaterOrEqual(t, h.Version, version, "time runs forward")
				version = h.Version
				items, total, err := from.List(background(), Query{Text: "anemometer", Limit: 3})
				assert.NoError(t, err)
				assert.Equal(t, 1, total)
				assert.Len(t, items, 1)
				_, err = from.History(background(), 1, 0, 5)
				assert.NoError(t, err)
				reads.Add(1)
			}
		})
	}
	reading.Go(func() {
		for {
			select {
			case <-done:
				return
			case <-time.After(20 * time.Millisecond):
			}
			report, err := CheckFolder(background(), a.dir)
			if assert.NoError(t, err) {
				assert.Empty(t, report.Faults)
			}
		}
	})
	writing.Wait()
	close(done)
	reading.Wait()

	h, err := a.Get(background(), 1)
	require.NoError(t, err)
	assert.Equal(t, int64(1+writers*each), h.Version)
	assert.Equal(t, h.Version, h.State, "each save is a state")
	words := strings.Fields(text(h, "title.notes"))
	for w := range writers {
		for i := range each {
			assert.Contains(t, words, fmt.Sprintf("w%d-%d", w, i))
		}
	}
	t.Logf("%d stale saves were refused and made anew, %d reads beside", stale.Load(), reads.Load())
	assert.Positive(t, reads.Load())
}
