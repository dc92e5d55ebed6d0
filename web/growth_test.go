package web

import (
	"net/http"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestReferenceUncertaintyFromAWarmUp: the aid fills the entry, rounded up to a
// thousandth; what is no number is said and changes nothing; what was typed into it
// stays while other entries are computed. By hand: 140 mm by 15 K by 11.5e-6/K are
// 0.02415 mm.
func TestReferenceUncertaintyFromAWarmUp(t *testing.T) {
	s := start(t)
	assert.Contains(t, plainSpaces(text(s.byID("growth"))), "140 mm from home to the nest")
	s.typeIn(":growth length", "140")
	s.typeIn(":growth change", "warm")
	s = s.press("grow")
	require.Equal(t, http.StatusUnprocessableEntity, s.status)
	assert.Contains(t, text(s.byID("growth")), "Temperature change: found “warm”")
	got, _ := s.value("station.reference_uncertainty")
	assert.Equal(t, "0.01", got, "nothing was filled in")
	length, _ := s.value(":growth length")
	assert.Equal(t, "140", length, "what was typed stays")

	s.typeIn(":growth change", "15")
	s = s.press("recompute")
	change, _ := s.value(":growth change")
	assert.Equal(t, "15", change)
	s = s.press("grow")
	require.Equal(t, http.StatusOK, s.status)
	got, _ = s.value("station.reference_uncertainty")
	assert.Equal(t, "0.025", got)
	assert.Contains(t, plainSpaces(text(s.byID("main"))), "Reference uncertainty set to 0.025 mm")
}
