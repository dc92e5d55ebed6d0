package web

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"net/url"
	"sync/atomic"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestRebinding opens the bench under a foreign name that was made to point to
// this machine, as a hostile page would have it: nothing is shown.
func TestRebinding(t *testing.T) {
	b := newTab(t)
	srv := httptest.NewServer(example(t))
	defer srv.Close()
	own, err := url.Parse(srv.URL)
	require.NoError(t, err)
	b.do(chromedp.Navigate("http://evil.example:" + own.Port() + benchPath))
	assert.Contains(t, eval[string](b, "document.body.textContent"), "does not answer for that host name")
	assert.False(t, eval[bool](b, "document.getElementById('plan') !== null"))
	b.do(chromedp.Navigate(srv.URL + benchPath))
	assert.True(t, eval[bool](b, "document.getElementById('plan') !== null"), "the own name works")
}

// TestForeignPage lets a page of another origin on this machine send a form to
// the bench: it is refused before anything is read.
func TestForeignPage(t *testing.T) {
	b := newTab(t)
	var reached atomic.Int32
	inner := example(t)
	srv := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		rec := &statusKeeper{ResponseWriter: w}
		inner.ServeHTTP(rec, r)
		if r.Method == http.MethodPost && rec.status != http.StatusForbidden {
			reached.Add(1)
		}
	}))
	defer srv.Close()
	foreign := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html")
		fmt.Fprintf(w, `<form id="f" method="post" action=%q><input name="title.name" value="x"></form><script>document.getElementById("f").submit()</script>`, srv.URL+"/plans/1")
	}))
	defer foreign.Close()
	for _, from := range []string{foreign.URL, "http://evil.example:" + portOf(t, foreign.URL)} {
		b.do(chromedp.Navigate(from))
		b.until("document.body !== null && document.body.textContent.includes('came from a page of another site')")
	}
	assert.Zero(t, reached.Load())
}

func portOf(t *testing.T, address string) string {
	t.Helper()
	u, err := url.Parse(address)
	require.NoError(t, err)
	return u.Port()
}

type statusKeeper struct {
	http.ResponseWriter
	status int
}

func (k *statusKeeper) WriteHeader(status int) {
	k.status = status
	k.ResponseWriter.WriteHeader(status)
}
