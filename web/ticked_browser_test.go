package web

import (
	"net/http"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

// TestFilesTakeWhatIsTicked: a file is of the pages, the width and the title as they
// are ticked now; nothing has to be shown first.
func TestFilesTakeWhatIsTicked(t *testing.T) {
	inner := example(t)
	var mu sync.Mutex
	asked := ""
	b, srv := visit(t, http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if strings.HasSuffix(r.URL.Path, ".pdf") {
			mu.Lock()
			asked = r.URL.RequestURI()
			mu.Unlock()
			w.WriteHeader(http.StatusNoContent) // which leaves the page where it is
			return
		}
		inner.ServeHTTP(w, r)
	}))
	wanted := func() string {
		mu.Lock()
		defer mu.Unlock()
		return asked
	}
	b.do(chromedp.Navigate(srv.URL + "/plans/1/sheet"))
	eval[any](b, `document.querySelector("input[name=behind][value=shift]").checked = true`)
	eval[any](b, `document.querySelector("select[name=size]").value = "letter"`)
	click(b, `button[formaction="/plans/1/sheet.pdf"]`)
	assert.Eventually(t, func() bool { return wanted() != "" }, patience, 10*time.Millisecond)
	for _, part := range []string{"/plans/1/sheet.pdf?", "behind=shift", "size=letter", "download=1"} {
		assert.Contains(t, wanted(), part)
	}
	eval[any](b, `document.querySelector("input[name=title]").checked = true`)
	eval[any](b, `document.querySelector("select[name=width]").value = "column"`)
	click(b, `button[formaction="/plans/1/drawings/strip.pdf"]`)
	assert.Eventually(t, func() bool { return strings.Contains(wanted(), "strip.pdf") }, patience, 10*time.Millisecond)
	for _, part := range []string{"title=no", "width=column", "download=1"} {
		assert.Contains(t, wanted(), part)
	}
}
