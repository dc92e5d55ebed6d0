package web

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Of an issued revision sheet, bench and station page say that its station is not proved,
// and where to read why; of a draft, and of a superseded revision, nothing is said.
func TestNotProvedIsSaid(t *testing.T) {
	s := start(t)
	for _, path := range []string{"/plans/1", "/plans/1/station", "/plans/1/sheet.svg", "/plans/1/drawings/strip.svg"} {
		assert.NotContains(t, s.get(path).body, "ot proved", path)
		assert.NotContains(t, s.get(path).body, "NOT PROVED", path)
	}
	names := map[string]string{"prepared": "P", "checked": "C", "approved": "A", "reason": "First issue"}
	issued(s.get("/plans/1/revisions"), "1", names)
	for _, path := range []string{"/plans/1", "/plans/1/station", "/plans/1/motion", "/plans/1/drill"} {
		body := s.get(path).body
		assert.Contains(t, body, ">not proved</a>", path)
		assert.Contains(t, body, `href="/plans/1/proving"`, path)
	}
	why := "NOT PROVED: load cell, stiffness, master and limit samples missing"
	assert.Contains(t, s.get("/plans/1/sheet.svg").body, why)
	assert.Contains(t, s.get("/plans/1/drawings/strip.svg").body, "NOT PROVED")
	assert.Contains(t, s.get("/plans/1/drawings/card.svg").body, "Revision A, not proved yet")
	assert.NotContains(t, s.get("/plans/1/sheet.svg?revision=draft").body, "NOT PROVED")
	assert.NotContains(t, s.get("/plans/1/station?revision=draft").body, "not proved")

	page := s.get("/plans/1/sheet?behind=record")
	assert.Contains(t, page.body, "Proof of the station")
	pages := func(body string) int { return strings.Count(body, "sheet.svg?") }
	assert.Greater(t, pages(page.body), pages(s.get("/plans/1/sheet").body), "the proof is on pages behind it")

	s = s.get("/plans/1")
	s.typeIn("station.nest", "141")
	s = s.press("recompute")
	assert.Contains(t, s.body, "revision A not proved", "what was issued stays what it is")
	names["drill"] = "again"
	issued(s.get("/plans/1/revisions"), version(s), names)
	require.Contains(t, s.get("/plans/1/revisions").body, "Revision B")
	assert.NotContains(t, s.get("/plans/1/sheet.svg?revision=A").body, "NOT PROVED", "superseded stays superseded")
	assert.NotContains(t, s.get("/plans/1/station?revision=A").body, "not proved")
	assert.Contains(t, s.get("/plans/1/station").body, ">not proved</a>")
}
