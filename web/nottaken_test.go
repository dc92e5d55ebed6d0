package web

import (
	"net/http"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// A range is tightened: an issued revision that falls outside stays what was issued.
// It is shown with what it lacks today, compared, and can be a draft again.
func TestRevisionOutsideTodaysRules(t *testing.T) {
	s := start(t)
	page := issued(s.get("/plans/1/revisions"), "1", map[string]string{"prepared": "P", "checked": "C", "approved": "A", "reason": "First issue"})
	require.NotNil(t, page.byID("revision-A"))
	f, ok := press.FieldAt("ram.moving_mass")
	require.True(t, ok)
	was := f.High
	f.High = &press.Limit{Value: 0.5}
	t.Cleanup(func() { f.High = was })

	page = s.get("/plans/1/revisions")
	require.Equal(t, http.StatusOK, page.status)
	said := text(page.byID("revision-A"))
	assert.Contains(t, said, "This is what was issued, but today's rules ask for more")
	assert.Contains(t, said, "moving mass: found")
	assert.Contains(t, said, "Start the draft from revision A again")
	assert.NotContains(t, said, "damaged")
	for _, path := range []string{"/plans/1/revisions/A", "/plans/1/sheet?revision=A", "/plans/1/drill?revision=A"} {
		refused := s.get(path)
		assert.Equal(t, http.StatusUnprocessableEntity, refused.status, path)
		assert.Contains(t, text(refused.byID("main")), "Revision A is what was issued, but today's rules do not take it", path)
	}
	assert.Equal(t, http.StatusOK, s.get("/plans/1/compared?from=A&to=draft").status)
	assert.Equal(t, http.StatusOK, s.get("/").status)
	assert.Equal(t, http.StatusOK, s.get("/people").status)
}
