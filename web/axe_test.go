package web

import (
	"crypto/sha256"
	"encoding/hex"
	"os"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
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

const runAxe = `axe.run(document).then((r) => r.violations.map((v) => ({id: v.id, help: v.help, places: v.nodes.slice(0, 8).map((n) => n.target.join(" ") + " " + (n.any[0]?.message ?? ""))})))`

// TestAxe runs the checker on the bench in every state, both themes, wide and
// narrow.
func TestAxe(t *testing.T) {
	source := axeSource(t)
	b, srv := visit(t, example(t))
	states := []axeState{
		{"example", func() {}},
		{"menu open", func() { b.do(chromedp.Click(chromedp.CSS(".menu > summary"))) }},
		{"broken", func() {
			b.do(chromedp.Click(chromedp.CSS(".menu > summary")))
			b.retype("f-station-nest", "14o")
			b.until("document.getElementById('f-station-nest').getAttribute('aria-invalid') === 'true'")
			eval[any](b, "document.querySelectorAll('details:not(.menu)').forEach((d) => (d.open = true)) ?? 0")
		}},
		{"own fault, empty row", func() {
			b.do(chromedp.Click(chromedp.CSS(`button[value="add faults.other"]`)))
			b.until("document.getElementById('f-faults-other-0') !== null")
		}},
		{"new", func() {
			newPlan(b, srv)
			eval[any](b, source+"; 0")
		}},
		{"faults of a new plan", func() {
			b.do(chromedp.Click(chromedp.CSS(`button[value="go faults"]`)))
			b.waitText("trouble", "no sound plan")
			eval[any](b, source+"; 0")
		}},
		{"faults", func() {
			b.do(chromedp.Navigate(srv.URL + "/plans/1/faults"))
			eval[any](b, source+"; document.querySelectorAll('details').forEach((d) => (d.open = true)) ?? 0")
		}},
		{"shelf", func() {
			b.do(chromedp.Navigate(srv.URL + "/"))
			eval[any](b, source+"; 0")
		}},
		{"for other programs", func() {
			b.do(chromedp.Navigate(srv.URL + "/programs"))
			eval[any](b, source+"; 0")
		}},
		{"history", func() {
			b.do(chromedp.Navigate(srv.URL + "/plans/1/history"))
			eval[any](b, source+"; 0")
		}},
		{"issuing without a name", func() {
			b.do(chromedp.Navigate(srv.URL + "/"))
			eval[any](b, `document.querySelector('#opening button[value="example"]').click() ?? 0`)
			b.until("location.pathname.startsWith('/plans/')")
			b.do(chromedp.Navigate(srv.URL + eval[string](b, "location.pathname") + "/revisions"))
			eval[any](b, `document.querySelector('button[value="issue"]')?.click() ?? 0`)
			b.until("document.querySelector('[aria-invalid]') !== null")
			eval[any](b, source+"; 0")
		}},
		{"sheet", func() {
			b.do(chromedp.Navigate(srv.URL + "/plans/3/sheet"))
			eval[any](b, source+"; 0")
		}},
		{"compared", func() {
			b.do(chromedp.Navigate(srv.URL + "/plans/1/compared?from=draft"))
			eval[any](b, source+"; 0")
		}},
		{"glossary", func() {
			b.do(chromedp.Navigate(srv.URL + "/glossary"))
			eval[any](b, source+"; 0")
		}},
	}
	eval[any](b, source+"; 0")
	b.checkStates(states)
}

// An axeState is a page, or a state of one, with the way to it.
type axeState struct {
	name string
	to   func()
}

// axeLook is how a page is looked at.
type axeLook struct {
	theme string
	width int64
}

// axeLooks are the looks at every page: each theme and each width once, and with
// RAMPLAN_AXE=all, as .ci/axe has it, both widths in both themes.
func axeLooks() []axeLook {
	looks := []axeLook{{"light", 1440}, {"dark", 390}}
	if os.Getenv("RAMPLAN_AXE") == "all" {
		looks = append(looks, axeLook{"light", 390}, axeLook{"dark", 1440})
	}
	return looks
}

// slow skips a long look at pages outside .ci/axe.
func slow(t *testing.T) {
	t.Helper()
	if os.Getenv("RAMPLAN_AXE") != "all" {
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

// checkStates runs the checker on each of them, in both themes, wide and narrow.
func (b *tab) checkStates(states []axeState) {
	t := b.t
	t.Helper()
	for _, s := range states {
		s.to()
		for _, l := range axeLooks() {
			b.look(l)
			found, err := chromedp.Run(b.ctx, chromedp.Evaluate[[]violation](runAxe, chromedp.EvalAwaitPromise))
			require.NoError(t, err)
			for _, v := range found {
				t.Errorf("%s, %s, %d wide: %s: %s\n  %s", s.name, l.theme, l.width, v.ID, v.Help, strings.Join(v.Places, "\n  "))
			}
			assert.LessOrEqual(t, eval[int64](b, "document.documentElement.scrollWidth"), l.width, "%s, %d wide: scrolls sideways", s.name, l.width)
		}
		b.do(chromedp.EmulateViewport(1440, 900))
	}
}
