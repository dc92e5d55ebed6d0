package web

import (
	"net/http/httptest"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

// TestTypedIsSaved types and looks, as another program would, at what is stored:
// without any button, everything up to the last pause.
func TestTypedIsSaved(t *testing.T) {
	b, srv := visit(t, example(t))
	// In one go: on a busy machine keys may come so slowly that some are a state of their own.
	eval[any](b, "(() => { const f = document.getElementById('f-title-number'); f.focus(); f.select(); document.execCommand('insertText', false, 'WS-77'); return 0; })()")
	b.until(stateText + ".includes('Saved.')")
	stored := func() string {
		owner, _ := (&sheet{t: t, base: srv.URL}).get(benchPath).value("title.number")
		return owner
	}
	for end := time.Now().Add(patience); stored() != "WS-77" && time.Now().Before(end); {
		time.Sleep(20 * time.Millisecond)
	}
	assert.Equal(t, "WS-77", stored())
	assert.False(t, eval[bool](b, "document.getElementById('undo').disabled"))
	click(b, "#undo")
	b.until("document.getElementById('f-title-number').value === 'WS-210'")
	b.until("!document.getElementById('redo').disabled")
	click(b, "#redo")
	b.until("document.getElementById('f-title-number').value === 'WS-77'")
	assert.Empty(t, b.complaints())
}

// TestTwoBrowsers opens one plan twice and types in both: the second is told, and
// chooses entry by entry.
func TestTwoBrowsers(t *testing.T) {
	one, srv := visit(t, example(t))
	two := newTab(t)
	two.do(chromedp.Navigate(srv.URL + benchPath))
	two.until("document.documentElement.classList.contains('live')")

	one.retype("f-station-nest", "141")
	one.until(setpointsText + ".includes('116.08')")
	two.retype("f-title-number", "WS-299")
	two.until(stateText + ".includes('another window changed')")
	assert.Equal(t, "WS-299", valueOf(two, "f-title-number"))
	nest, _ := (&sheet{t: t, base: srv.URL}).get(benchPath).value("station.nest")
	assert.Equal(t, "141", nest, "nothing is overwritten")

	two.do(chromedp.Click(chromedp.CSS(`button[value="choose"]`)))
	two.until("document.querySelector('.sides') !== null")
	eval[any](two, `document.querySelector('input[name=":pick station.nest"][value="theirs"]').click() ?? 0`)
	two.do(chromedp.Click(chromedp.CSS(`button[value="picked"]`)))
	two.until("document.readyState === 'complete' && document.getElementById('f-title-number') !== null")
	assert.Equal(t, "WS-299", valueOf(two, "f-title-number"))
	assert.Equal(t, "141", valueOf(two, "f-station-nest"))
}

// TestSavedWhenItCanBe takes the folder away while one types, and brings it back.
func TestSavedWhenItCanBe(t *testing.T) {
	a := exampleArchive(t)
	b := newTab(t)
	srv := httptest.NewServer(New(a))
	t.Cleanup(srv.Close)
	b.do(chromedp.Navigate(srv.URL + benchPath))
	b.until("document.documentElement.classList.contains('live')")
	folder := filepath.Dir(a.Path())
	assert.NoError(t, os.Rename(folder, folder+"-away"))
	b.retype("f-station-nest", "141")
	b.until(stateText + ".includes('kept in this page')")
	assert.Equal(t, "141", valueOf(b, "f-station-nest"))
	assert.NoError(t, os.Rename(folder+"-away", folder))
	b.until(stateText + ".includes('Saved.')")
	nest, _ := (&sheet{t: t, base: srv.URL}).get(benchPath).value("station.nest")
	assert.Equal(t, "141", nest)
}
