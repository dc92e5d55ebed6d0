package web

import (
	"io"
	"net/http"
	"net/url"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/words"
)

// Where revision B was issued, everything that shows A says so: its page, its sheet,
// the list, the bench of a draft that is A again, and the shelf that is asked for A's
// digest.
func TestSupersededIsSaid(t *testing.T) {
	s := start(t)
	names := map[string]string{"prepared": "P", "checked": "C", "approved": "A", "reason": "First issue"}
	issued(s.get("/plans/1/revisions"), "1", names)
	assert.NotContains(t, text(s.get("/plans/1/revisions/A").byID("main")), "uperseded")
	assert.NotContains(t, text(s.get("/plans/1/sheet?revision=A").byID("main")), "uperseded")
	digest := regexp.MustCompile(`class="digest">([0-9a-f]{12})<`).FindStringSubmatch(s.get("/plans/1/revisions/A").body)[1]

	// Nothing was changed since: every page says so, and none of them draft.
	for _, path := range []string{"/plans/1", "/plans/1/faults"} {
		foot := regexp.MustCompile(`data-foot="([^"]*)"`).FindStringSubmatch(s.get(path).body)
		require.NotNil(t, foot, path)
		assert.Contains(t, foot[1], "revision A · issued", path)
		assert.NotContains(t, foot[1], words.DraftMark, path)
	}
	assert.NotContains(t, s.get("/plans/1/sheet.svg").body, words.DraftMark)
	assert.Contains(t, s.get("/plans/1/sheet.svg?revision=draft").body, words.DraftMark, "where it is asked for")
	s = s.get("/plans/1")
	s.typeIn("station.nest", "141")
	s = s.press("recompute")
	assert.Contains(t, s.get("/plans/1/faults").body, words.DraftMark)
	compared := regexp.MustCompile(`data-foot="([^"]*)"`).FindStringSubmatch(s.get("/plans/1/compared").body)
	require.NotNil(t, compared)
	assert.Regexp(t, `revision A, plan [0-9a-f]{12} against the draft, plan [0-9a-f]{12}`, compared[1])
	names["reason"], names["drill"] = "Nest set anew", "again"
	page := issued(s.get("/plans/1/revisions"), version(s), names)
	require.NotNil(t, page.byID("revision-B"))
	assert.Contains(t, text(page.byID("revision-A")), "Superseded by revision B")
	assert.NotContains(t, text(page.byID("revision-B")), "uperseded")
	assert.Contains(t, text(s.get("/plans/1/revisions/A").byID("main")), "This revision is superseded by revision B, issued")
	assert.Contains(t, text(s.get("/plans/1/sheet?revision=A").byID("main")), "This revision is superseded by revision B")
	assert.NotContains(t, text(s.get("/plans/1/sheet?revision=B").byID("main")), "uperseded")
	resp, err := http.Get(s.base + "/plans/1/sheet.svg?revision=A")
	require.NoError(t, err)
	assert.Contains(t, read(t, s.base, resp).body, words.SupersededBy("B", ""))

	s.typeIn("station.nest", "140")
	s = s.press("recompute")
	assert.Contains(t, text(s.byID("main")), "Draft, the plan of revision A, superseded by revision B")
	typed := strings.ToUpper(digest[:6] + " " + digest[6:])
	found := s.get("/?q=" + url.QueryEscape(typed))
	assert.Contains(t, text(found.byID("cards")), "Revision A has this digest; it is superseded by revision B.")
}

// TestDigestShowsItsState: a search for a digest shows the state that has it: not the
// strip of the draft of today, and a state of the draft that was never issued too.
func TestDigestShowsItsState(t *testing.T) {
	s := start(t)
	digest := func() string {
		return regexp.MustCompile(`id="digest">Plan sha256:([0-9a-f]{12})`).FindStringSubmatch(s.get(benchPath).body)[1]
	}
	strip := func(of sheet) string {
		return regexp.MustCompile(`(?s)<div class="cardstrip">(.*?)</svg>`).FindStringSubmatch(of.body)[1]
	}
	first := digest()
	was := strip(*s.get("/?q=WS-210"))
	s.typeIn("station.nest", "141")
	s = s.press("recompute")
	now := strip(*s.get("/?q=WS-210"))
	require.NotEqual(t, was, now, "the strip of another nest is another")

	old := s.get("/?q=" + first)
	assert.Regexp(t, `This digest is that of a draft state of .+, not issued. It is shown here\.`, text(old.byID("cards")))
	assert.Equal(t, was, strip(*old))
	today := s.get("/?q=" + digest())
	assert.Contains(t, text(today.byID("cards")), ", not issued; the draft stands so today. It is shown here.")
	assert.Equal(t, now, strip(*today))
	assert.Contains(t, text(s.get("/?q=0123456789ab").byID("main")), "Nothing holds")

	issued(s.get("/plans/1/revisions"), version(s.get("/plans/1/revisions")), map[string]string{"prepared": "P", "checked": "C", "approved": "A", "reason": "First issue"})
	second := digest()
	s = s.get(benchPath)
	s.typeIn("station.nest", "140")
	s = s.press("recompute")
	asIssued := s.get("/?q=" + second)
	assert.Contains(t, text(asIssued.byID("cards")), "Revision A has this digest; it is the last that was issued. It is shown here.")
	assert.Equal(t, now, strip(*asIssued))
}

// A program that searches the shelf for a digest is told what has it, as the page is: the
// state of a draft that was never issued too, and the revision. Words are told nothing of it.
func TestProgramsFindDrafts(t *testing.T) {
	s := start(t)
	digest := regexp.MustCompile(`id="digest">Plan sha256:([0-9a-f]{12})`).FindStringSubmatch(s.get(benchPath).body)[1]
	list := func(q string) string {
		r, err := http.NewRequestWithContext(t.Context(), http.MethodGet, s.base+"/plans?q="+q, nil)
		require.NoError(t, err)
		r.Header.Set("Accept", "application/json")
		resp, err := http.DefaultClient.Do(r)
		require.NoError(t, err)
		defer resp.Body.Close()
		body, err := io.ReadAll(resp.Body)
		require.NoError(t, err)
		return string(body)
	}
	assert.Regexp(t, `"asked": \{\s+"state": 1,\s+"at": "[^"]+",\s+"stands": true`, list(digest))
	assert.NotContains(t, list("WS-210"), "asked")
	issued(s.get("/plans/1/revisions"), version(s.get("/plans/1/revisions")), map[string]string{"prepared": "P", "checked": "C", "approved": "A", "reason": "First issue"})
	assert.Regexp(t, `"asked": \{\s+"revision": "A"\s+\}`, list(digest))
}
