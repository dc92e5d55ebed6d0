package web

import (
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

	s.typeIn("station.nest", "141")
	s = s.press("recompute")
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
