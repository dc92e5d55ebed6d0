package web

import (
	"net/http"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/static"
)

// faults presses the button that saves and shows the fault catalogue; back goes
// to the bench from there.
func (s *sheet) faults() *sheet { return s.press("go faults") }

func (s *sheet) back() *sheet { return s.get(strings.TrimSuffix(s.path, "/faults")) }

// TestFaultsKeepPlan opens plans, shows their faults and comes back, twice, and
// wants the digest of the file that was opened (derived: the digest of the same
// file read without the pages).
func TestFaultsKeepPlan(t *testing.T) {
	plans := map[string][]byte{
		"example":              static.Example(),
		"explicit defaults":    edited(t, `"home": 0`, `"home": 0.0, "position_step": 0.01, "presence_check": "", "nest_force": 0`),
		"explicit empty texts": edited(t, `"number": "WS-210"`, `"number": "", "owner": "", "notes": ""`),
		"explicit false flags": edited(t, `"shape": "normal"`, `"shape": "normal", "insert": false, "datum": false`),
		"no window":            edited(t, `"window": {},`, ``),
		"empty containers":     edited(t, `"window": {}`, `"window": {}, "faults": {"other": []}`),
		"own faults":           edited(t, `"window": {}`, `"faults": {"other": [{"name": "burr", "height": 0.02, "good": false}]}`),
		"line breaks":          edited(t, `"number": "WS-210"`, `"notes": "\n first\r\nsecond\rthird\n", "owner": "one\ntwo"`),
		"control characters":   edited(t, `"number": "WS-210"`, `"owner": "a\u0000b\u0001\t\u2028\ufeff\u007f"`),
		"markup":               edited(t, `"number": "WS-210"`, `"owner": "</form><script>alert(1)</script>\"'&lt;&amp;"`),
		"beyond the plane":     edited(t, `"number": "WS-210"`, `"owner": " 𝛿 \ud83d\udd29 "`),
	}
	for name, file := range plans {
		t.Run(name, func(t *testing.T) {
			plan, faults := press.Decode(file)
			require.Empty(t, faults)
			s := start(t).open("plan.json", file)
			for range 2 {
				s = s.faults()
				require.Equal(t, http.StatusOK, s.status)
				s = s.back()
				require.Equal(t, http.StatusOK, s.status)
			}
			saved, faults := press.Decode(s.save())
			require.Empty(t, faults)
			assert.Equal(t, plan.Digest(), saved.Digest(), "canonical before:\n%s\nand after:\n%s", plan.Canonical(), saved.Canonical())
		})
	}
}

// TestFaultsKeepDraft shows the faults of entries that make no plan, and wants
// the very file that the bench saves without that (derived).
func TestFaultsKeepDraft(t *testing.T) {
	for _, entries := range [][]press.Entry{
		{{Path: "title.name", Text: "half"}, {Path: "station.nest", Text: "14,"}, {Path: "parts[0].plus", Text: "abc"}},
		{{Path: "ram.direction", Text: "sideways"}, {Path: "parts[1].insert", Text: "perhaps"}},
		{{Path: "nothing.like.it", Text: "kept"}, {Path: ":do", Text: "kept"}, {Path: "title.name", Text: "a"}, {Path: "title.name", Text: "b"}},
		{{Path: "joint.kind", Text: "touch"}, {Path: "joint.diameter", Text: "12"}, {Path: "joint.hub.yield", Text: "x"}},
		{{Path: "window", Text: "{}"}, {Path: "parts", Text: "[]"}, {Path: "ram.curve.points", Text: "garbage"}},
		{{Path: "ram.curve.points[2][1]", Text: "5"}, {Path: "parts[3]", Text: "{}"}, {Path: "parts[100000].name", Text: "far"}},
		{{Path: "title.owner", Text: ""}, {Path: "title.notes", Text: "a\r\nb"}},
	} {
		s := start(t).open("draft.json", (&press.Draft{Entries: entries}).Encode())
		want := string(s.save())
		s = s.faults()
		require.Equal(t, http.StatusUnprocessableEntity, s.status)
		assert.Contains(t, text(s.byID("trouble")), "The entries are no sound plan yet")
		assert.Nil(t, s.byID("catalogue"), "there is no plan to show")
		s = s.back()
		require.Equal(t, http.StatusOK, s.status)
		assert.Equal(t, want, string(s.save()))
	}
}

// TestFaultsOfWhatIsTyped types something that was never recomputed, then breaks
// it: the page is that of the entries, then of the last sound plan, and nothing
// is lost on the way back.
func TestFaultsOfWhatIsTyped(t *testing.T) {
	s := start(t)
	s.typeIn("station.nest", "141")
	shown := s.faults()
	require.Equal(t, http.StatusOK, shown.status)
	assert.Contains(t, text(shown.byID("key")), "116.08", "zone start of the nest that was typed")
	back := shown.back()
	nest, _ := back.value("station.nest")
	assert.Equal(t, "141", nest)

	back.typeIn("station.nest", "14o")
	shown = back.faults()
	require.Equal(t, http.StatusUnprocessableEntity, shown.status)
	trouble := text(shown.byID("trouble"))
	assert.Contains(t, trouble, "This page shows the last state that was one.")
	assert.Contains(t, trouble, `found "14o"`)
	assert.Contains(t, text(shown.byID("key")), "116.08")
	back = shown.back()
	nest, _ = back.value("station.nest")
	assert.Equal(t, "14o", nest)
	assert.Contains(t, text(back.byID("setpoints")), "116.08", "the last sound plan is kept too")
}

// TestFaultsInBrowser changes the nest and goes to the faults at once, with the
// script on; comes back by the button, and by the browser's own way back.
func TestFaultsInBrowser(t *testing.T) {
	b, _ := visit(t, example(t))
	b.retype("f-station-nest", "141")
	b.do(chromedp.Click(chromedp.CSS(`button[value="go faults"]`)))
	b.waitText("key", "116.08")
	b.do(chromedp.Click(chromedp.CSS(`.pages a[href="/plans/1"]`)))
	b.waitText("setpoints", "116.08")
	b.until("document.documentElement.classList.contains('live')")
	assert.Equal(t, "141", eval[string](b, "document.getElementById('f-station-nest').value"))

	b.retype("f-station-nest", "142")
	b.do(chromedp.Click(chromedp.CSS(`button[value="go faults"]`)))
	b.waitText("key", "117.08")
	eval[any](b, "setTimeout(() => history.back(), 50) && 0")
	b.waitText("setpoints", "117.08")
	assert.Equal(t, "142", eval[string](b, "document.getElementById('f-station-nest').value"))
	b.until(setpointsText + ".includes('117.08')")
	assert.Empty(t, b.complaints())
}
