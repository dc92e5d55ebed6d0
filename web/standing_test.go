package web

import (
	"net/http"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestDraftAndRevisionAreToldApart: the bench, what is copied from it and the card
// on the shelf say what the draft is to the last revision.
func TestDraftAndRevisionAreToldApart(t *testing.T) {
	s := start(t)
	says := func(want string, differs bool) {
		t.Helper()
		bench := s.get(benchPath)
		lead := text(bench.byID("lead"))
		assert.Contains(t, lead, want)
		assert.Equal(t, differs, strings.Contains(lead, "What differs"))
		copied := ""
		for _, n := range elements(bench.byID("setpoints"), "button") {
			copied += attr(n, "data-copy")
		}
		assert.Contains(t, copied, "\t"+want+"\n")
		assert.Contains(t, text(s.get("/").byID("cards")), want)
	}
	says("Draft, nothing issued", false)
	issued(s.get("/plans/1/revisions"), "1", map[string]string{"prepared": "P", "checked": "C", "approved": "A", "reason": "First issue"})
	says("Revision A", false)
	assert.NotContains(t, text(s.get("/").byID("cards")), "Draft after")
	s.typeIn("station.nest", "141")
	s = s.press("recompute")
	says("Draft after revision A", true)
	compared := s.press("go compare")
	assert.Equal(t, "/plans/1/compared", compared.path)
	assert.Equal(t, http.StatusOK, compared.status)
	s = s.get(benchPath)
	s.typeIn("station.nest", "140")
	s = s.press("recompute")
	says("Revision A", false)
	s.typeIn("station.nest", "14o")
	s = s.press("recompute")
	require.Equal(t, http.StatusUnprocessableEntity, s.status)
	assert.Contains(t, text(s.byID("lead")), "Draft after revision A", "what cannot be read is no revision")
}

// TestNotSavedIsInSight: that nothing is saved stands over the result too, which
// stays in sight, and at the lower edge of a narrow window.
func TestNotSavedIsInSight(t *testing.T) {
	s := start(t)
	other := s.get(benchPath)
	other.typeIn("station.nest", "141")
	require.Equal(t, http.StatusOK, other.press("recompute").status)
	assert.NotContains(t, text(s.byID("result")), "Not saved")
	s.typeIn("station.nest", "142")
	stale := s.press("recompute")
	require.Equal(t, http.StatusConflict, stale.status)
	assert.Contains(t, text(stale.byID("result")), "Not saved: another window changed this plan")
	assert.Contains(t, text(stale.byID("glance")), "Not saved")
	assert.Equal(t, "#lead", attr(stale.byID("glance"), "href"))
}
