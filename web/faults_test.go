package web

import (
	"bytes"
	"io"
	"mime/multipart"
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/static"
	"ramplan/web/page"
)

// faults presses the button that shows the fault catalogue.
func (s *sheet) faults() *sheet { return s.send("/faults", "faults", nil) }

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
				s = s.press("return")
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
		s = s.press("return")
		require.Equal(t, http.StatusUnprocessableEntity, s.status)
		assert.Equal(t, want, string(s.save()))
	}
}

// TestFaultsOfWhatIsTyped types something that was never recomputed, then breaks
// it: the page is that of the entries, then of the last sound plan, and nothing
// is lost on the way back.
func TestFaultsOfWhatIsTyped(t *testing.T) {
	s := start(t)
	s.typeIn("station.nest", "141")
	s.typeIn(page.NamePaste, "10\t200\r\n20\t400")
	shown := s.faults()
	require.Equal(t, http.StatusOK, shown.status)
	assert.Contains(t, text(shown.byID("key")), "116.08", "zone start of the nest that was typed")
	back := shown.press("return")
	nest, _ := back.value("station.nest")
	pasted, _ := back.value(page.NamePaste)
	assert.Equal(t, "141", nest)
	assert.Equal(t, "10\t200\n20\t400", strings.TrimPrefix(pasted, "\n"))

	back.typeIn("station.nest", "14o")
	shown = back.faults()
	require.Equal(t, http.StatusUnprocessableEntity, shown.status)
	trouble := text(shown.byID("trouble"))
	assert.Contains(t, trouble, "This page shows the last state that was one.")
	assert.Contains(t, trouble, `found "14o"`)
	assert.Contains(t, text(shown.byID("key")), "116.08")
	back = shown.press("return")
	nest, _ = back.value("station.nest")
	assert.Equal(t, "14o", nest)
	assert.Contains(t, text(back.byID("setpoints")), "116.08", "the last sound plan is kept too")
}

// TestFaultsKeepBefore: entries that were replaced can still be had back.
func TestFaultsKeepBefore(t *testing.T) {
	s := start(t)
	s.typeIn("title.owner", "typed before")
	s = s.press("new").faults().press("return").press("back")
	owner, _ := s.value("title.owner")
	assert.Equal(t, "typed before", owner)
}

// elements finds every element of a kind, in order.
func elements(root *html.Node, kind string) []*html.Node {
	var out []*html.Node
	for n := range root.Descendants() {
		if n.Type == html.ElementNode && n.Data == kind {
			out = append(out, n)
		}
	}
	return out
}

// plainPageOf gets a page by its address.
func plainPageOf(t *testing.T, path string) *sheet {
	t.Helper()
	srv := httptest.NewServer(New())
	t.Cleanup(srv.Close)
	resp, err := http.Get(srv.URL + path)
	require.NoError(t, err)
	return read(t, srv.URL, resp)
}

// soundMarkup wants ids that are given once, links and labels that find theirs,
// and nothing that the content security policy would refuse.
func soundMarkup(t *testing.T, s *sheet) {
	t.Helper()
	ids := map[string]int{}
	for n := range s.root.Descendants() {
		if id := attr(n, "id"); id != "" {
			ids[id]++
		}
		assert.False(t, has(n, "style"), "%s has a style", n.Data)
	}
	for id, n := range ids {
		assert.Equal(t, 1, n, "id %s", id)
	}
	for n := range s.root.Descendants() {
		if to, inside := strings.CutPrefix(attr(n, "href"), "#"); inside {
			assert.Contains(t, ids, to)
		}
		for _, id := range strings.Fields(attr(n, "aria-labelledby")) {
			assert.Contains(t, ids, id)
		}
		if form := attr(n, "form"); form != "" {
			assert.Contains(t, ids, form)
		}
	}
	assert.Len(t, elements(s.root, "h1"), 1)
	assert.Len(t, elements(s.root, "main"), 1)
	assert.Empty(t, elements(s.root, "script"), "these pages need no script")
}

// TestFaultsOfExample looks at the whole page of the example plan (derived: its
// result).
func TestFaultsOfExample(t *testing.T) {
	s := plainPageOf(t, "/faults")
	require.Equal(t, http.StatusOK, s.status)
	soundMarkup(t, s)
	plan, faults := press.Decode(static.Example())
	require.Empty(t, faults)
	r := press.Evaluate(plan)

	head := text(elements(s.root, "h1")[0])
	assert.Contains(t, head, plan.Title.Name)
	assert.Contains(t, head, plan.Title.Number)
	var order []string
	for _, sec := range elements(s.root, "section") {
		order = append(order, attr(sec, "id"))
	}
	assert.Equal(t, []string{"unseen", "catalogue", "samples", "rule", "cautions"}, order, "what cannot be detected comes first")
	for _, u := range words.Unseen(plan, r) {
		assert.Contains(t, text(s.byID("unseen")), u)
	}

	rows := elements(elements(s.byID("catalogue"), "tbody")[0], "tr")
	require.Len(t, rows, len(r.Faults))
	for i, row := range rows {
		f := r.Faults[i]
		require.Len(t, elements(row, "svg"), 1, f.Name)
		assert.Contains(t, attr(elements(row, "svg")[0], "class"), "mini")
		shown := strings.Join(strings.Fields(strings.ReplaceAll(text(row), "\u202f", "~")), " ")
		shown = strings.ReplaceAll(shown, "~", "\u202f")
		assert.Contains(t, shown, words.Fault(f).Word)
		assert.Contains(t, shown, words.Fault(f).Meaning)
		assert.Contains(t, shown, f.Verdict)
		assert.Contains(t, shown, words.Share(f.Detection))
		assert.Contains(t, shown, words.Judged(plan, f))
		assert.Len(t, elements(row, "td"), 7)
	}
	assert.Len(t, elements(elements(s.byID("samples"), "tbody")[0], "tr"), 4)
	assert.Contains(t, text(s.byID("rule")), words.ReadingRule)
	for _, c := range append(words.Cautions, words.TradeCautions...) {
		assert.Contains(t, text(s.byID("cautions")), c)
	}
	assert.Contains(t, text(s.byID("digest")), plan.Digest())

	posted := start(t).faults()
	assert.Equal(t, text(s.byID("main")), text(posted.byID("main")), "asked for or posted, it is one page")
}

// TestFaultsOfEveryPlan shows the faults of plans of every kind.
func TestFaultsOfEveryPlan(t *testing.T) {
	for name, edit := range map[string][2]string{
		"nothing accepted": {`"height_low": 24.91`, `"height_low": 25.05`},
		"never good":       {`"window": {}`, `"window": {"zone_start": 115.3, "zone_end": 115.4}`},
		"one known end":    {`"height_low": 24.91`, `"height_low": 25.05, "min_seating_force": 1`},
		"missing is good":  {`"window": {}`, `"window": {"push_stroke": 40, "zone_end": 148}`},
		"markup in a name": {`"window": {}`, `"faults": {"other": [{"name": "<b>\"burr\"</b>", "height": 0.02}]}`},
	} {
		s := start(t).open("plan.json", edited(t, edit[0], edit[1])).faults()
		require.Equal(t, http.StatusOK, s.status, name)
		soundMarkup(t, s)
		for _, id := range []string{"unseen", "catalogue", "samples", "rule", "cautions"} {
			assert.NotNil(t, s.byID(id), "%s: %s", name, id)
		}
		if name == "nothing accepted" {
			assert.Contains(t, text(s.byID("catalogue")), "There is no verdict")
			assert.Empty(t, elements(s.root, "table"))
		}
		if name == "markup in a name" {
			assert.Contains(t, text(s.byID("catalogue")), `<b>"burr"</b>`)
		}
	}
}

// TestFaultsRefuses: a body that is no form is refused as on the bench.
func TestFaultsRefuses(t *testing.T) {
	srv := httptest.NewServer(New())
	defer srv.Close()
	resp, err := http.Post(srv.URL+"/faults", "text/plain", strings.NewReader("x"))
	require.NoError(t, err)
	resp.Body.Close()
	assert.Equal(t, http.StatusBadRequest, resp.StatusCode)

	var b bytes.Buffer
	w := multipart.NewWriter(&b)
	f, err := w.CreateFormField(page.NameLast)
	require.NoError(t, err)
	_, _ = io.WriteString(f, "no plan at all")
	require.NoError(t, w.Close())
	resp, err = http.Post(srv.URL+"/faults", w.FormDataContentType(), &b)
	require.NoError(t, err)
	s := read(t, srv.URL, resp)
	assert.Equal(t, http.StatusUnprocessableEntity, s.status)
	assert.Contains(t, text(s.byID("trouble")), "There is no catalogue before they are one.")
}

// TestGlossaryPage looks at the markup of the glossary, and wants the places that
// the fault catalogue links to.
func TestGlossaryPage(t *testing.T) {
	g := plainPageOf(t, "/glossary")
	require.Equal(t, http.StatusOK, g.status)
	soundMarkup(t, g)
	for _, f := range press.Fields {
		assert.Contains(t, g.body, ">"+html.EscapeString(f.Label)+"</b>", f.Path)
	}
	links := 0
	for _, a := range elements(plainPageOf(t, "/faults").root, "a") {
		if id, ok := strings.CutPrefix(attr(a, "href"), "/glossary#"); ok {
			links++
			assert.NotNil(t, g.byID(id), id)
		}
	}
	assert.Equal(t, 2, links)
}

// TestFaultsInBrowser changes the nest and goes to the faults at once, with the
// script on; comes back by the button, and by the browser's own way back.
func TestFaultsInBrowser(t *testing.T) {
	b, _ := visit(t, New())
	b.retype("f-station-nest", "141")
	b.do(chromedp.Click(chromedp.CSS(`button[value="faults"]`)))
	b.waitText("key", "116.08")
	b.do(chromedp.Click(chromedp.CSS(`button[value="return"]`)))
	b.waitText("setpoints", "116.08")
	b.until("document.documentElement.classList.contains('live')")
	assert.Equal(t, "141", eval[string](b, "document.getElementById('f-station-nest').value"))

	b.retype("f-station-nest", "142")
	b.do(chromedp.Click(chromedp.CSS(`button[value="faults"]`)))
	b.waitText("key", "117.08")
	eval[any](b, "history.back() ?? 0")
	b.waitText("setpoints", "117.08")
	assert.Equal(t, "142", eval[string](b, "document.getElementById('f-station-nest').value"))
	b.until(setpointsText + ".includes('117.08')")
	assert.Empty(t, b.complaints())
}
