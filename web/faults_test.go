package web

import (
	"net/http"
	"net/http/httptest"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/static"
)

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
	srv := httptest.NewServer(example(t))
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
	s := plainPageOf(t, "/plans/1/faults")
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
		assert.Contains(t, shown, words.SayVerdict(plan, f))
		assert.Contains(t, shown, words.Detected(plan, r, f))
		assert.Contains(t, shown, words.Judged(plan, r, f))
		assert.Len(t, elements(row, "td"), 7)
	}
	assert.Len(t, elements(elements(s.byID("samples"), "tbody")[0], "tr"), 4)
	assert.Contains(t, text(s.byID("rule")), words.ReadingRule(plan, press.Evaluate(plan)))
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
		"one known end":    {`"window": {}`, `"window": {"zone_start": 115.1, "guard_factor": 20}`},
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
		if name == "one known end" {
			assert.Contains(t, text(s.byID("catalogue")), "zone end and push end are not known")
		}
		if name == "markup in a name" {
			assert.Contains(t, text(s.byID("catalogue")), `<b>"burr"</b>`)
		}
	}
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
	for _, a := range elements(plainPageOf(t, "/plans/1/faults").root, "a") {
		if id, ok := strings.CutPrefix(attr(a, "href"), "/glossary#"); ok {
			links++
			assert.NotNil(t, g.byID(id), id)
		}
	}
	assert.Equal(t, 2, links)
}
