package web

import (
	"io"
	"net/http"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"
)

// typed is what stands in a field.
func typed(s *sheet, path string) string {
	v, _ := s.value(path)
	return v
}

// A rule is chosen and a change tried by buttons of the form, without any script: the
// targets are then met, and one button more takes it back.
func TestRulesAndTheirChanges(t *testing.T) {
	s := start(t)
	s.typeIn("targets.false_accept_ppm", "1")
	s.typeIn("targets.false_reject_ppm", "1")
	s.typeIn("station.reference_uncertainty", "0.03")
	s = s.press("recompute")
	require.Equal(t, http.StatusOK, s.status)
	rows := elements(s.byID("rules"), "tr")
	require.Len(t, rows, 4) // a head and three rules
	assert.Contains(t, text(rows[1]), "in force")

	s = s.press("rule target")
	require.Equal(t, http.StatusOK, s.status)
	assert.Equal(t, "target", typed(s, "window.rule"))
	block := plainSpaces(text(s.byID("rules")))
	assert.Contains(t, block, "The targets are missed")
	assert.Contains(t, block, "Reference uncertainty from 0.03 mm to ")
	assert.Contains(t, text(s.byID("findings")), "No window within the drawing keeps both targets")

	s = s.press("try station.reference_uncertainty")
	require.Equal(t, http.StatusOK, s.status)
	assert.NotEqual(t, "0.03", typed(s, "station.reference_uncertainty"))
	assert.Contains(t, text(s.byID("rules")), "Both targets are kept")
	assert.Contains(t, text(s.byID("lead")), "is entered for a try")
	var back bool
	for _, b := range elements(s.byID("lead"), "button") {
		back = back || attr(b, "value") == "undo" && strings.Contains(text(b), "Take it back")
	}
	assert.True(t, back, "the notice has a button that takes it back")

	s = s.press("undo")
	assert.Equal(t, "0.03", typed(s, "station.reference_uncertainty"))
	assert.Contains(t, text(s.byID("rules")), "The targets are missed")

	s = s.press("try parts.mean") // which would not do it, and has no button
	assert.Equal(t, http.StatusUnprocessableEntity, s.status)
	assert.Contains(t, text(s.byID("lead")), "Nothing was changed")
}

// The worst day, with three drawings, each with its text, stands among the shares: on
// their page, and at the end of the stream that brings them to the bench, not in the bench
// itself, which does not wait for it.
func TestWorstDayAmongTheShares(t *testing.T) {
	s := start(t)
	assert.Nil(t, s.byID("days"))
	asked := s.byID("shares")
	require.NotNil(t, asked)
	resp := askShares(t.Context(), t, s.base+attr(asked, "data-stream")+"?of="+attr(asked, "data-of"), partHeader, "shares")
	require.Equal(t, http.StatusOK, resp.StatusCode)
	body, err := io.ReadAll(resp.Body)
	require.NoError(t, err)
	pieces := strings.Split(string(body), recordEnd)
	require.GreaterOrEqual(t, len(pieces), 2, "one piece at least, whole")
	last, err := html.Parse(strings.NewReader(pieces[len(pieces)-2]))
	require.NoError(t, err)
	for name, at := range map[string]*sheet{"page": s.get("/plans/1/shares"), "stream": {t: t, root: last}} {
		block := at.byID("days")
		require.NotNil(t, block, name)
		drawings := elements(block, "svg")
		require.Len(t, drawings, 3, name)
		for _, d := range drawings {
			require.Len(t, elements(d, "desc"), 1, name)
			assert.Contains(t, text(elements(d, "desc")[0]), "good refused", name)
		}
	}
}
