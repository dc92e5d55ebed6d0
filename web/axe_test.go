package web

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io"
	"net/http"
	"net/http/httptest"
	"os"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const axeFolder = "../testdata/axe-core@4.14.1/"

// axeSource is the accessibility checker (axe-core 4.14.1, MPL-2.0), whose bytes
// must be those that were vendored.
func axeSource(t *testing.T) string {
	t.Helper()
	source, err := os.ReadFile(axeFolder + "axe.min.js")
	require.NoError(t, err)
	sums, err := os.ReadFile(axeFolder + "SHA256SUMS")
	require.NoError(t, err)
	sum := sha256.Sum256(source)
	require.Equal(t, strings.Fields(string(sums))[0], hex.EncodeToString(sum[:]), "axe.min.js is not the file that was vendored")
	return string(source)
}

func TestVendoredAxe(t *testing.T) {
	axeSource(t)
	_, err := os.Stat(axeFolder + "LICENSE")
	assert.NoError(t, err)
}

// violation is one finding of the checker.
type violation struct {
	ID     string   `json:"id"`
	Help   string   `json:"help"`
	Places []string `json:"places"`
}

// runAxe runs the checker on what a selector finds.
const runAxe = `axe.run([...document.querySelectorAll(%q)], {resultTypes: ["violations"]}).then((r) => r.violations.map((v) => ({id: v.id, help: v.help, places: v.nodes.slice(0, 8).map((n) => n.target.join(" ") + " " + (n.any[0]?.message ?? ""))})))`

// TestAxe runs the checker on every page and the bench in every state, in both themes,
// wide and narrow.
func TestAxe(t *testing.T) {
	t.Run("bench", func(t *testing.T) {
		b, srv := checked(t, example(t))
		b.checkStates([]axeState{
			{name: "example"},
			{"menu open", ".bar", func() { b.do(chromedp.Click(chromedp.CSS(".menu > summary"))) }},
			{"broken", "", func() {
				b.do(chromedp.Click(chromedp.CSS(".menu > summary")))
				b.retype("f-station-nest", "14o")
				b.until("document.getElementById('f-station-nest').getAttribute('aria-invalid') === 'true'")
				eval[any](b, "document.querySelectorAll('details:not(.menu)').forEach((d) => (d.open = true)) ?? 0")
			}},
			{"own fault, empty row", "#faults, #f-faults", func() {
				b.do(chromedp.Click(chromedp.CSS(`button[value="add faults.other"]`)))
				b.until("document.getElementById('f-faults-other-0') !== null")
			}},
			{"history", "", func() { b.do(chromedp.Navigate(srv.URL + "/plans/1/history")) }},
		})
	})
	t.Run("plans", func(t *testing.T) {
		b, srv := checked(t, example(t))
		b.checkStates([]axeState{
			{"new", "", func() { newPlan(b, srv) }},
			{"faults of a new plan", "", func() {
				b.do(chromedp.Click(chromedp.CSS(`button[value="go faults"]`)))
				b.waitText("trouble", "no sound plan")
			}},
			{"shelf", "", func() { b.do(chromedp.Navigate(srv.URL + "/")) }},
			{"issuing without a name", "", func() {
				eval[any](b, `document.querySelector('#opening button[value="example"]').click() ?? 0`)
				b.until("location.pathname.startsWith('/plans/')")
				b.do(chromedp.Navigate(srv.URL + eval[string](b, "location.pathname") + "/revisions"))
				eval[any](b, `document.querySelector('button[value="issue"]')?.click() ?? 0`)
				b.until("document.querySelector('[aria-invalid]') !== null")
			}},
			{"sheet", "", func() { b.do(chromedp.Navigate(srv.URL + "/plans/3/sheet")) }},
		})
	})
	t.Run("proving", func(t *testing.T) {
		store := exampleArchive(t)
		provedParts(t, store)
		b, srv := checked(t, New(store))
		visiting := func(path string) func() { return func() { b.do(chromedp.Navigate(srv.URL + path)) } }
		b.checkStates([]axeState{
			{"proving", "", func() {
				visiting(provingPath)()
				eval[any](b, "document.querySelectorAll('main details').forEach((d) => (d.open = true)) ?? 0")
			}},
			{"signed study", "", visiting(provingPath + "/1")},
			{"study that is typed", "", func() {
				visiting(provingPath + "/2")()
				eval[any](b, "document.querySelectorAll('main details').forEach((d) => (d.open = true)) ?? 0")
			}},
			{"samples on cards", "", visiting(provingPath + "/3/cards")},
			{"shift check", "", visiting(benchPath + "/check")},
			{"shift checks", "", visiting(benchPath + "/checks")},
			{"a shift check", "", visiting(benchPath + "/checks/4")},
		})
	})
	t.Run("pages", func(t *testing.T) {
		b, srv := checked(t, example(t))
		b.checkStates([]axeState{
			{"faults", "", func() {
				b.do(chromedp.Navigate(srv.URL + "/plans/1/faults"))
				eval[any](b, "document.querySelectorAll('details').forEach((d) => (d.open = true)) ?? 0")
			}},
			{"for other programs", "", func() { b.do(chromedp.Navigate(srv.URL + "/programs")) }},
			{"compared", "", func() { b.do(chromedp.Navigate(srv.URL + "/plans/1/compared?from=draft")) }},
			{"glossary", "", func() { b.do(chromedp.Navigate(srv.URL + "/glossary")) }},
		})
	})
}

// TestAxeSees: the checker finds a field without a name, on a whole page and in a part.
func TestAxeSees(t *testing.T) {
	b := newTab(t)
	b.withAxe()
	srv := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html")
		_, _ = io.WriteString(w, `<!doctype html><html lang="en"><title>Fields</title><main><h1>Fields</h1><p id="good"><label>A <input></label></p><p id="bad"><input></p></main></html>`)
	}))
	t.Cleanup(srv.Close)
	b.do(chromedp.Navigate(srv.URL))
	assert.Empty(t, b.violations("#good"))
	for _, in := range []string{"html", "#bad", "#good, #bad"} {
		if found := b.violations(in); assert.Len(t, found, 1, in) {
			assert.Equal(t, "label", found[0].ID) // the rule's name in axe-core 4.14
		}
	}
}

// checked visits the bench in a tab that has the checker on every page.
func checked(t *testing.T, h http.Handler) (*tab, *httptest.Server) {
	t.Helper()
	b := newTab(t)
	b.withAxe()
	srv := httptest.NewServer(h)
	t.Cleanup(srv.Close)
	b.do(chromedp.Navigate(srv.URL + benchPath))
	b.until("document.documentElement.classList.contains('live')")
	return b, srv
}

// withAxe puts the checker on every page that the tab goes to.
func (b *tab) withAxe() {
	b.t.Helper()
	_, err := chromedp.Call(b.ctx, page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{Source: axeSource(b.t)})
	require.NoError(b.t, err)
}

// violations are what the checker finds in what a selector finds.
func (b *tab) violations(in string) []violation {
	b.t.Helper()
	return eval[[]violation](b, fmt.Sprintf(runAxe, in))
}

// An axeState is a page, or a state of one, with the way to it. Where only a part of the
// page is another one than before, its selector says so: the whole is looked at by
// .ci/axe.
type axeState struct {
	name string
	part string
	to   func()
}

// axeLook is how a page is looked at.
type axeLook struct {
	theme string
	width int64
}

func allLooks() bool { return os.Getenv("RAMPLAN_AXE") == "all" }

// axeLooks are the looks at every page: each theme and each width once, and with
// RAMPLAN_AXE=all, as .ci/axe has it, both widths in both themes.
func axeLooks() []axeLook {
	looks := []axeLook{{"light", 1440}, {"dark", 390}}
	if allLooks() {
		looks = append(looks, axeLook{"light", 390}, axeLook{"dark", 1440})
	}
	return looks
}

// asks says whether the checker is asked about a page in one of its looks. It is by far the
// slowest of what looks at a page: without RAMPLAN_AXE=all it sees the one page wide and
// light, the next narrow and dark.
func asks(page, look int) bool { return allLooks() || page%2 == look }

// slow skips a long look at pages outside .ci/axe.
func slow(t *testing.T) {
	t.Helper()
	if !allLooks() {
		t.Skip("a long look at pages: bash .ci/axe takes it")
	}
}

// look turns the tab to a theme and a width.
func (b *tab) look(l axeLook) {
	b.t.Helper()
	_, err := chromedp.Call(b.ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: l.theme}}})
	require.NoError(b.t, err)
	b.do(chromedp.EmulateViewport(l.width, 900))
}

// checkStates looks at each of them in both themes, wide and narrow, and asks the checker.
func (b *tab) checkStates(states []axeState) {
	t := b.t
	t.Helper()
	for nth, s := range states {
		if s.to != nil {
			s.to()
		}
		for i, l := range axeLooks() {
			b.look(l)
			assert.LessOrEqual(t, eval[int64](b, "document.documentElement.scrollWidth"), l.width, "%s, %d wide: scrolls sideways", s.name, l.width)
			if !asks(nth, i) {
				continue
			}
			part := s.part
			if part == "" || allLooks() {
				part = "html"
			}
			for _, v := range b.violations(part) {
				t.Errorf("%s, %s, %d wide: %s: %s\n  %s", s.name, l.theme, l.width, v.ID, v.Help, strings.Join(v.Places, "\n  "))
			}
		}
		b.do(chromedp.EmulateViewport(1440, 900))
	}
}
