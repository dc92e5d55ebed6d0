package web

import (
	"fmt"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	cdpbrowser "github.com/chromedp/cdproto/browser"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// visit opens the bench of a fresh server in a new tab, without the shares that come into it
// by themselves: most tests have no use for the simulation, which takes as long as the page.
func visit(t *testing.T, h http.Handler) (*tab, *httptest.Server) {
	t.Helper()
	return visitWhole(t, withoutShares(h))
}

// visitWhole opens it with the shares.
func visitWhole(t *testing.T, h http.Handler) (*tab, *httptest.Server) {
	t.Helper()
	b := newTab(t)
	srv := httptest.NewServer(h)
	t.Cleanup(srv.Close)
	b.do(chromedp.Navigate(srv.URL + benchPath))
	b.until("document.documentElement.classList.contains('live')")
	return b, srv
}

// withoutShares has nothing to say to who asks for the shares of the bench.
func withoutShares(h http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if r.Header.Get(partHeader) == "shares" {
			w.WriteHeader(http.StatusNoContent)
			return
		}
		h.ServeHTTP(w, r)
	})
}

// newPlan starts an empty plan from the shelf.
func newPlan(b *tab, srv *httptest.Server) {
	b.t.Helper()
	b.do(chromedp.Navigate(srv.URL + "/"))
	b.do(chromedp.Click(chromedp.CSS(`#opening button[value="new"]`)))
	b.until("document.getElementById('f-title-name')?.value === '' && document.documentElement.classList.contains('live')")
}

const (
	setpointsText = "document.getElementById('setpoints').textContent"
	stateText     = "document.getElementById('state').textContent"
)

// TestFirstMinutes is what an engineer does first: change the nest, see strip
// and setpoints change, break a field, see its fault, mend it, save the file.
func TestFirstMinutes(t *testing.T) {
	b, _ := visit(t, example(t))
	assert.Equal(t, int64(2), eval[int64](b, "document.fonts.ready.then((all) => [...all].filter((f) => f.status === 'loaded').length)"), "both faces are read by the browser")
	strip := eval[string](b, "document.getElementById('strip').innerHTML")
	require.Contains(t, b.text("setpoints"), "115.08")

	b.retype("f-station-nest", "141")
	b.until(setpointsText + ".includes('116.08')")
	assert.NotEqual(t, strip, eval[string](b, "document.getElementById('strip').innerHTML"), "the strip changes too")
	assert.Equal(t, "f-station-nest", eval[string](b, "document.activeElement.id"), "the focus stays")

	b.retype("f-station-nest", "o14") // no number after any of its keys, however slowly they come
	b.until("document.getElementById('f-station-nest').getAttribute('aria-invalid') === 'true'")
	assert.Contains(t, b.text("f-station-nest-n"), `found "o14"`)
	assert.Contains(t, b.text("result"), "Older than the entries")
	assert.Contains(t, b.text("setpoints"), "116.08", "the last result stays in sight")
	assert.Equal(t, "o14", eval[string](b, "document.getElementById('f-station-nest').value"))

	b.retype("f-station-nest", "141,5")
	b.until(setpointsText + ".includes('116.58')")
	assert.NotContains(t, b.text("result"), "Older than the entries")

	assert.Empty(t, b.complaints(), "nothing was said on the console")

	saved := saveInBrowser(b)
	plan, faults := press.Decode(saved)
	require.Empty(t, faults)
	assert.Equal(t, 141.5, plan.Station.Nest)
	assert.Equal(t, "Plan "+plan.Digest(), b.text("digest"), "the file is the plan on the page")
}

// saveInBrowser presses the save button and returns the file that the browser
// puts into its downloads.
func saveInBrowser(b *tab) []byte {
	b.t.Helper()
	folder := b.t.TempDir()
	_, err := chromedp.CallBrowser(b.ctx, cdpbrowser.SetDownloadBehavior, cdpbrowser.SetDownloadBehaviorParams{Behavior: "allow", DownloadPath: folder, BrowserContextID: chromedp.FromContext(b.ctx).BrowserContextID})
	require.NoError(b.t, err)
	b.do(chromedp.Click(chromedp.CSS(".menu > summary")), chromedp.Click(chromedp.CSS(`.acts button[value="save"]`)))
	for end := time.Now().Add(patience); time.Now().Before(end); time.Sleep(20 * time.Millisecond) {
		names, _ := filepath.Glob(filepath.Join(folder, "*.json"))
		if len(names) == 1 {
			assert.Equal(b.t, "WS-210.plan.json", filepath.Base(names[0]))
			data, err := os.ReadFile(names[0])
			require.NoError(b.t, err)
			return data
		}
	}
	b.t.Fatal("no file was saved")
	return nil
}

// TestRowsLive adds, fills and removes a part by its buttons.
func TestRowsLive(t *testing.T) {
	b, _ := visit(t, example(t))
	before := b.text("digest")
	b.do(chromedp.Click(chromedp.CSS(`#f-parts-rows button[value="add parts"]`)))
	b.until("document.activeElement.id === 'f-parts-3-name'")
	b.do(chromedp.KeyEvent("washer"))
	for field, value := range map[string]string{"nominal": "0.5", "minus": "0.01", "plus": "0.01", "contact": "1", "seat": "1"} {
		b.retype("f-parts-3-"+field, value)
	}
	b.until("!document.getElementById('result').textContent.includes('Older than the entries')")
	b.until(fmt.Sprintf("document.getElementById('digest').textContent !== %q", before))
	assert.Equal(t, "washer", eval[string](b, "document.getElementById('f-parts-3-name').value"))
	b.do(chromedp.Click(chromedp.CSS(`#f-parts-3 button[value="up parts 3"]`)))
	b.until("document.getElementById('f-parts-2-name').value === 'washer'")
	// Where it is scrolled to as little as needed, it lies under the links that stay in sight.
	eval[any](b, `document.querySelector('#f-parts-2 button[value="remove parts 2"]').scrollIntoView({block: "center"}) ?? 0`)
	b.do(chromedp.Click(chromedp.CSS(`#f-parts-2 button[value="remove parts 2"]`)))
	b.until(fmt.Sprintf("document.getElementById('digest').textContent === %q", before))
}

// TestPasteLive pastes two columns into a point of the curve.
func TestPasteLive(t *testing.T) {
	b, _ := visit(t, example(t))
	eval[any](b, `(() => {
		const data = new DataTransfer();
		data.setData("text/plain", "10\t250\n40\t1400\n70\t2700\n");
		document.getElementById("f-ram-curve-points-0-0").dispatchEvent(new ClipboardEvent("paste", {clipboardData: data, bubbles: true, cancelable: true}));
		return 0;
	})()`)
	b.until("document.getElementById('f-ram-curve-points-1-1').value === '1400'")
	assert.False(t, eval[bool](b, "document.getElementById('f-ram-curve-points-3-0') !== null"))
}

// TestDropFile drops a plan anywhere, then a broken one.
func TestDropFile(t *testing.T) {
	b, _ := visit(t, example(t))
	drop := func(name, text string) {
		eval[any](b, fmt.Sprintf(`(() => {
			const data = new DataTransfer();
			data.items.add(new File([%q], %q));
			dispatchEvent(new DragEvent("drop", {dataTransfer: data, bubbles: true, cancelable: true}));
			return 0;
		})()`, text, name))
	}
	b.retype("f-title-number", "WS-211")
	drop("broken.json", `{"format": "ramplan.plan/1", "titel": 1}`)
	b.until("document.getElementById('refusal').textContent.includes('broken.json was not opened')")
	assert.Contains(t, b.text("refusal"), "titel: no such field")
	assert.Equal(t, "WS-211", eval[string](b, "document.getElementById('f-title-number').value"))
	drop("other.json", string(edited(t, `"nest": 140`, `"nest": 139`)))
	b.until("location.pathname === '/plans/2' && document.documentElement.classList.contains('live')")
	assert.Equal(t, "139", eval[string](b, "document.getElementById('f-station-nest').value"))
	drop("curve.csv", "10;300\n70;2600\n")
	b.until("document.getElementById('f-ram-curve-points-1-1').value === '2600'")
}

// TestOpenByMenu chooses a file in the menu and opens it.
func TestOpenByMenu(t *testing.T) {
	b, _ := visit(t, example(t))
	name := filepath.Join(t.TempDir(), "chosen.json")
	require.NoError(t, os.WriteFile(name, edited(t, `"nest": 140`, `"nest": 138`), 0o600))
	b.do(chromedp.Click(chromedp.CSS(".menu > summary")),
		chromedp.SetUploadFiles(chromedp.ID("file"), []string{name}),
		chromedp.Click(chromedp.CSS(`.menu button[value="open"]`)))
	b.until("location.pathname === '/plans/2' && document.getElementById('f-station-nest')?.value === '138'")
}

// TestStaleAnswer holds the first answer back while one types on: what it brings
// is older than the entries and must never be shown.
func TestStaleAnswer(t *testing.T) {
	var asked atomic.Int32
	release := make(chan struct{})
	inner := example(t)
	b, _ := visit(t, http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if r.Method == http.MethodPost && asked.Add(1) == 1 {
			<-release
		}
		inner.ServeHTTP(w, r)
	}))
	b.retype("f-station-nest", "150")
	for asked.Load() == 0 {
		time.Sleep(5 * time.Millisecond)
	}
	eval[any](b, `(window.seen = "", new MutationObserver(() => window.seen += document.getElementById("setpoints").textContent)
		.observe(document.getElementById("result"), {childList: true, subtree: true, characterData: true}), 0)`)
	b.retype("f-station-nest", "142")
	time.Sleep(300 * time.Millisecond)
	assert.Equal(t, int32(1), asked.Load(), "one question is under way at a time")
	close(release)
	b.until(setpointsText + ".includes('117.08')")
	assert.NotContains(t, eval[string](b, "window.seen"), "125.08", "the answer to 150 (derived: 115.08 and 10)")
	assert.Equal(t, int32(2), asked.Load(), "three keys each make one question")
}

// TestSlowServer holds an answer back for longer than a user waits without
// wondering: the page says that it is still at work.
func TestSlowServer(t *testing.T) {
	release := make(chan struct{})
	inner := example(t)
	b, _ := visit(t, http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if r.Method == http.MethodPost {
			<-release
		}
		inner.ServeHTTP(w, r)
	}))
	b.retype("f-station-nest", "144")
	b.until(stateText + ".includes('Still computing')")
	close(release)
	b.until(setpointsText + ".includes('119.08')")
	assert.NotContains(t, b.text("state"), "Still computing")
}

// TestLostServer stops the server: the page says so, keeps what was typed, and
// goes on when the server is back on its address.
func TestLostServer(t *testing.T) {
	b := newTab(t)
	program := example(t)
	address, stop, ended := serving(t, program, DefaultTimeouts)
	b.do(chromedp.Navigate("http://" + address + benchPath))
	b.until("document.documentElement.classList.contains('live')")
	stop()
	require.NoError(t, <-ended)
	b.retype("f-station-nest", "143")
	b.until(stateText + ".includes('does not answer')")
	assert.Equal(t, "143", eval[string](b, "document.getElementById('f-station-nest').value"))
	const alarm = "document.querySelector('.resulthead [data-alarm]').textContent"
	assert.Contains(t, eval[string](b, alarm), "Not saved", "also where the entries are scrolled down")
	ln, err := Listen(address)
	require.NoError(t, err)
	srv := &http.Server{Handler: program}
	go func() { _ = srv.Serve(ln) }()
	defer srv.Close()
	b.until(setpointsText + ".includes('118.08')")
	assert.NotContains(t, b.text("state"), "does not answer")
	assert.Empty(t, eval[string](b, alarm))
}

// TestWithoutScript works through the page with scripts switched off.
func TestWithoutScript(t *testing.T) {
	b := newTab(t)
	srv := httptest.NewServer(example(t))
	defer srv.Close()
	b.withoutScript()
	b.do(chromedp.Navigate(srv.URL+benchPath), chromedp.WaitVisible(chromedp.CSS(".recompute")))
	nest, err := chromedp.Run(b.ctx, chromedp.Value(chromedp.ID("f-station-nest")))
	require.NoError(t, err)
	require.Equal(t, "140", nest)
	b.do(chromedp.SendKeys(chromedp.ID("f-station-nest"), "1\r"))
	b.waitText("findings", "stroke")
	nest, err = chromedp.Run(b.ctx, chromedp.Value(chromedp.ID("f-station-nest")))
	require.NoError(t, err)
	require.Equal(t, "1140", nest, "the key reached the field, before what stood there")
	b.do(chromedp.Click(chromedp.CSS(`#f-parts-rows button[value="add parts"]`)), chromedp.WaitVisible(chromedp.ID("f-parts-3")))
	b.waitText("state", "still needed")
	b.do(chromedp.Click(chromedp.CSS(`#f-parts-3 button[value="remove parts 3"]`)))
	b.waitText("state", "Up to date")
}

// waitText waits, without any script in the page, until an element holds a text.
func (b *tab) waitText(id, want string) {
	b.t.Helper()
	got := ""
	for end := time.Now().Add(patience); time.Now().Before(end); time.Sleep(30 * time.Millisecond) {
		var err error
		if got, err = chromedp.Run(b.ctx, chromedp.Text(chromedp.ID(id))); err == nil && strings.Contains(got, want) {
			return
		}
	}
	b.t.Fatalf("%s never said %q; it says %q", id, want, got)
}
