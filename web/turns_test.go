package web

import (
	"context"
	"io"
	"net/http"
	"net/http/httptest"
	"runtime"
	"runtime/metrics"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// heap gives the bytes of objects, those included that wait to be collected.
func heap() uint64 {
	s := []metrics.Sample{{Name: "/memory/classes/heap/objects:bytes"}}
	metrics.Read(s)
	return s[0].Value.Uint64()
}

// peak is the most that the heap grew by while something was done.
func peak(do func()) uint64 {
	runtime.GC()
	before, most := heap(), uint64(0)
	stop, done := make(chan struct{}), make(chan struct{})
	go func() {
		defer close(done)
		for {
			select {
			case <-stop:
				return
			case <-time.After(2 * time.Millisecond):
				if now := heap(); now > before {
					most = max(most, now-before)
				}
			}
		}
	}()
	do()
	close(stop)
	<-done
	return most
}

// TestDrawingsTakeTurns asks for the sheet in dots sixty times at once: it takes the
// memory of a few, and when the clients leave, the drawing ends.
func TestDrawingsTakeTurns(t *testing.T) {
	srv := httptest.NewServer(example(t))
	defer srv.Close()
	get := func(ctx context.Context) error {
		req, err := http.NewRequestWithContext(ctx, "GET", srv.URL+"/plans/1/sheet.png", nil)
		if err != nil {
			return err
		}
		resp, err := http.DefaultClient.Do(req)
		if err != nil {
			return err
		}
		defer resp.Body.Close()
		_, err = io.Copy(io.Discard, resp.Body)
		if err == nil && resp.StatusCode != http.StatusOK {
			t.Errorf("status %d", resp.StatusCode)
		}
		return err
	}
	require.NoError(t, get(t.Context())) // what is made once is made
	var took time.Duration
	one := peak(func() {
		began := time.Now()
		require.NoError(t, get(t.Context()))
		took = time.Since(began)
	})
	const clients, served = 60, 6
	ctx, leave := context.WithCancel(t.Context())
	var got atomic.Int32
	many := peak(func() {
		var asking sync.WaitGroup
		for range clients {
			asking.Go(func() {
				if get(ctx) == nil && got.Add(1) == served {
					leave()
				}
			})
		}
		asking.Wait()
	})
	assert.GreaterOrEqual(t, got.Load(), int32(served))
	assert.Less(t, float64(many), 12*float64(one), "%d MB for one, %d MB for %d at once", one>>20, many>>20, clients)
	began := time.Now()
	require.NoError(t, board.take(t.Context(), func() error { return nil }))
	require.NoError(t, get(t.Context()))
	assert.Less(t, time.Since(began), 10*took+time.Second, "nobody draws for those who left")
	t.Logf("%d MB for one, %d MB for %d at once; one takes %v", one>>20, many>>20, clients, took)
}

func TestWhoLeavesGivesThePlaceUp(t *testing.T) {
	places := make(turns, 1)
	gone, leave := context.WithCancel(t.Context())
	require.NoError(t, places.take(t.Context(), func() error {
		leave()
		err := places.take(gone, func() error { t.Error("the place is taken"); return nil })
		assert.ErrorIs(t, err, context.Canceled)
		return nil
	}))
	require.NoError(t, places.take(t.Context(), func() error { return nil }))
	assert.ErrorIs(t, places.take(gone, func() error { t.Error("nobody waits for it"); return nil }), context.Canceled)
}
