package web

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestBlockedPlanIsNotPraised: a plan with a blocker says that it is not ready and
// why, in another ink, with a sign, on the bench, on the page of faults and on the
// shelf; and none of them says what it catches.
func TestBlockedPlanIsNotPraised(t *testing.T) {
	s := start(t)
	for _, path := range []string{benchPath, benchPath + "/faults", "/"} {
		assert.NotContains(t, s.get(path).body, "headline-blocker", path)
	}
	assert.Contains(t, text(s.byID("headline")), "Catches a part")
	s.typeIn("joint.stop", "none")
	s = s.press("recompute")
	const why = "nothing stops the press-in"
	for _, path := range []string{benchPath, benchPath + "/faults"} {
		page := s.get(path)
		require.Contains(t, page.body, "headline-blocker", path)
		assert.Contains(t, page.body, "Not ready for use: "+why, path)
		assert.NotContains(t, page.body, "Catches a part", path)
	}
	for range 2 { // computed, then remembered
		cards := text(s.get("/").byID("cards"))
		assert.Contains(t, cards, "Not ready: "+why)
	}
}
