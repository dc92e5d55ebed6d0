package web

import (
	"fmt"
	"net/http"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/archive"
)

// runSite serves the worked example of a probe and a sequence, with some texts changed; an
// empty one takes everything away that begins with its path.
func runSite(t testing.TB, changes ...string) http.Handler {
	t.Helper()
	data, err := os.ReadFile("../static/examples/pivot-bush.json")
	require.NoError(t, err)
	p, faults := press.Decode(data)
	require.Empty(t, faults)
	d := p.Draft()
	for i := 0; i+1 < len(changes); i += 2 {
		if changes[i+1] == "" {
			d.Entries = slices.DeleteFunc(d.Entries, func(e press.Entry) bool { return strings.HasPrefix(e.Path, changes[i]) })
			continue
		}
		d.Set(changes[i], changes[i+1])
	}
	a, err := archive.Open(t.Context(), t.TempDir(), archive.Options{First: []*press.Draft{d}})
	require.NoError(t, err)
	t.Cleanup(func() { _ = a.Close() })
	return New(a)
}

const (
	holdAt   = "document.getElementById('f-sequence-hold-at').value"
	runTitle = "document.querySelector('#run .drawing path.line-ink:last-of-type') && document.querySelector('#run .drawing').innerHTML"
)

// TestHoldIsDragged plays the hold case by pointer and by keys: its entry follows at once,
// the drawing with the answer, and it never leaves the way of its step, from 150 to 60 mm
// by the plan.
func TestHoldIsDragged(t *testing.T) {
	b, _ := visit(t, runSite(t))
	b.do(chromedp.EmulateViewport(1440, 900))
	require.Equal(t, "90", eval[string](b, holdAt))
	x, y := b.at("run-hold")
	drawn := eval[string](b, runTitle)
	b.mouse(chromedp.MousePressed, x, y)
	b.mouse(chromedp.MouseMoved, x, y+20)
	dragged := eval[float64](b, "Number("+holdAt+")")
	assert.Greater(t, dragged, 90.0, "downward is deeper")
	assert.Less(t, dragged, 150.0)
	b.until(fmt.Sprintf("(%s) !== %q", runTitle, drawn))
	b.mouse(chromedp.MouseMoved, x, y-400)
	b.mouse(chromedp.MouseReleased, x, y-400)
	assert.Equal(t, "60.01", eval[string](b, holdAt), "a position step inside the end of its step")
	assert.Equal(t, "run-hold", eval[string](b, "document.activeElement.id"))
	b.do(chromedp.KeyEvent(kb.ArrowDown), chromedp.KeyEvent(kb.ArrowDown, chromedp.KeyModifiers(chromedp.ModifierShift)))
	assert.Equal(t, "60.12", eval[string](b, holdAt))
	assert.Equal(t, "60.12\u202fmm", eval[string](b, "document.getElementById('run-hold').getAttribute('aria-valuetext')"))
	b.until("document.getElementById('state').textContent.includes('Saved')")
	assert.Equal(t, "run-hold", eval[string](b, "document.activeElement.id"), "the answer leaves the focus")
	b.retype("f-sequence-hold-at", "100")
	assert.Equal(t, "100", eval[string](b, "document.getElementById('run-hold').getAttribute('aria-valuenow')"), "what is typed moves it too")
	assert.Empty(t, b.complaints())
}

// TestHoldIsBegun: without a hold case a button begins one, in the longest move half way.
func TestHoldIsBegun(t *testing.T) {
	b, _ := visit(t, runSite(t, "sequence.hold", ""))
	assert.False(t, eval[bool](b, "document.getElementById('run-hold') !== null"))
	eval[any](b, "document.querySelector('button[value=hold]').click() ?? 0")
	b.until("document.getElementById('run-hold') !== null")
	assert.Equal(t, "6 105 1", eval[string](b, "['step', 'at', 'time'].map((n) => document.getElementById('f-sequence-hold-' + n).value).join(' ')"), "by hand: step 7, from 150 to 60 mm")
	assert.Empty(t, b.complaints())
}

// TestStepIsPickedOut: the step under the pointer or with the focus has a frame on the
// drawing and among the entries, in both directions, and an answer leaves it.
func TestStepIsPickedOut(t *testing.T) {
	b, _ := visit(t, runSite(t))
	b.do(chromedp.EmulateViewport(1440, 900))
	const picked = "[...document.querySelectorAll('[data-picked]')].filter((e) => e.id).map((e) => e.id).sort().join(' ')"
	eval[any](b, "document.getElementById('f-sequence-steps-2-to').focus() ?? 0")
	assert.Equal(t, "f-sequence-steps-2 run-step-2", eval[string](b, picked))
	assert.Equal(t, "2px", eval[string](b, "getComputedStyle(document.querySelector('#run-step-2 rect')).strokeWidth"), "a frame, not a hue")
	b.retype("f-sequence-steps-2-to", "110")
	b.until("document.getElementById('state').textContent.includes('Saved') && document.querySelector('#run dd[title=\"110\"]') !== null")
	assert.Equal(t, "f-sequence-steps-2 run-step-2", eval[string](b, picked))
	at := eval[[]float64](b, "(() => { const e = document.getElementById('run-step-3'); e.scrollIntoView({block: 'center'}); const r = e.getBoundingClientRect(); return [r.x + r.width / 2, r.y + r.height / 2]; })()")
	b.mouse(chromedp.MouseMoved, at[0], at[1])
	assert.Equal(t, "f-sequence-steps-3 run-step-3", eval[string](b, picked), "the one under the pointer")
	b.mouse(chromedp.MousePressed, at[0], at[1])
	b.mouse(chromedp.MouseReleased, at[0], at[1])
	b.until("document.activeElement.id === 'f-sequence-steps-3'")
	eval[any](b, "document.querySelector('#findings a[href=\"#f-sequence-steps-0\"]').focus() ?? 0")
	assert.Equal(t, "f-sequence-steps-0 run-step-0", eval[string](b, picked), "a finding leads to its step")
	assert.Empty(t, b.complaints())
}

// TestTemplatesByKeyboard builds each template of a cycle from no steps, with keys alone,
// types over the places that it proposes and has the run drawn.
func TestTemplatesByKeyboard(t *testing.T) {
	for _, c := range []struct {
		name, kinds string
		typed       [][2]string // what is typed over, in order
	}{
		{"Plain cycle", "probe press move", nil},
		{"Picture on the way", "move wait probe press move", [][2]string{{"0-to", "60"}}},
		{"Stack shaken on", "probe press move shift move", [][2]string{{"2-to", "60"}}},
		{"Two speeds", "move probe press move move", [][2]string{{"0-to", "120"}, {"3-to", "150"}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			b, _ := visit(t, runSite(t, "sequence", ""))
			b.do(chromedp.EmulateViewport(1440, 900))
			eval[any](b, "document.querySelector('#f-probe input').focus() ?? 0")
			const said = "document.activeElement.textContent.trim()"
			for range 40 {
				if b.do(chromedp.KeyEvent(kb.Tab)); eval[string](b, said) == c.name {
					break
				}
			}
			require.Equal(t, c.name, eval[string](b, said), "reached by Tab")
			b.do(chromedp.KeyEvent(kb.Enter))
			b.until("document.getElementById('f-sequence-steps-0') !== null")
			for _, entry := range c.typed {
				id := "f-sequence-steps-" + entry[0]
				for presses := 0; eval[string](b, "document.activeElement.id") != id; presses++ {
					require.Less(t, presses, 80, "%s is reached by Tab", id)
					b.do(chromedp.KeyEvent(kb.Tab))
				}
				b.do(chromedp.KeyEvent(entry[1])) // what Tab reaches is picked out, and typed over
				assert.Equal(t, entry[1], eval[string](b, "document.activeElement.value"))
			}
			b.until("document.querySelector('#run .drawing') !== null && document.getElementById('state').textContent.includes('Up to date')")
			assert.Equal(t, c.kinds, eval[string](b, "[...document.querySelectorAll('[id^=f-sequence-steps-][id$=-kind]')].map((e) => e.value).join(' ')"))
			assert.Empty(t, b.complaints())
		})
	}
}

// TestAxeRun looks at the sections of probe and steps, in both themes, wide and narrow,
// where they must not scroll sideways either.
func TestAxeRun(t *testing.T) {
	b, _ := checked(t, runSite(t))
	b.checkStates([]axeState{{"run", "#f-probe, #f-sequence, #probe, #run", nil}})
}

// TestWholeCycleIsPlayed: the page of the station in motion plays every step of the plan,
// the hold case too. Totals without handling are those of the worked example.
func TestWholeCycleIsPlayed(t *testing.T) {
	b, srv := visit(t, runSite(t))
	b.do(chromedp.Navigate(srv.URL + "/plans/1/motion?row=0"))
	b.until("document.querySelector('[data-run-controls]')?.hidden === false")
	const says = "document.querySelector('[data-run-says]').textContent"
	step := func(what string) {
		eval[any](b, "document.querySelector('[data-run-do="+what+"]').click() ?? 0")
	}
	assert.Contains(t, eval[string](b, says), "Step 1")
	seen := map[string]bool{}
	for range 40 {
		step("next")
		for i := 1; i <= 9; i++ {
			seen[fmt.Sprint(i)] = seen[fmt.Sprint(i)] || strings.HasPrefix(eval[string](b, says), fmt.Sprintf("Step %d ", i)) || strings.HasPrefix(eval[string](b, says), fmt.Sprintf("Step %d.", i))
		}
	}
	for i := 2; i <= 9; i++ {
		assert.True(t, seen[fmt.Sprint(i)], "step %d", i)
	}
	assert.Contains(t, eval[string](b, says), "4.72\u202fs")
	eval[any](b, "(() => { const e = document.querySelector('[data-run-way]'); e.value = '1'; e.dispatchEvent(new Event('change')); document.querySelector('[data-run-speed]').value = '1'; return 0; })()")
	step("play")
	b.until(says + ".includes('76.56') && document.querySelector('[data-run-do=play]').textContent === 'Pause'")
	b.until(says + ".includes('5.90') && document.querySelector('[data-run-do=play]').textContent === 'Play'")
	assert.LessOrEqual(t, eval[int](b, "document.documentElement.scrollWidth"), eval[int](b, "innerWidth"))
	assert.Empty(t, b.complaints())
}
