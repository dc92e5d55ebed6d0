package view

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/web/page"
)

// TestSharesAreOfHeights: what is accepted wrongly is a height, and a share that nobody
// knows is said to be unknown; a blow in the approach is a least one, the one at the
// seat a range.
func TestSharesAreOfHeights(t *testing.T) {
	figures := func(edits ...string) map[string]page.Figure {
		out := map[string]page.Figure{}
		for _, g := range shown(t, example(t, edits...)).Groups {
			for _, f := range g.Rows {
				if _, known := out[f.Label]; !known { // the force comes before the share of the same name
					out[f.Label] = f
				}
			}
		}
		return out
	}
	got := figures()
	assert.NotContains(t, got, "Bad parts accepted")
	assert.NotEqual(t, "not known", got["Wrong heights accepted"].Value)
	assert.Contains(t, got["Met in the approach"].Value, "at least ")
	assert.Contains(t, got["Met at the seat"].Value, " to ")
	assert.Contains(t, got["Watch time, at least"].Note, "motion alone")

	stalled := figures(`"window": {}`, `"window": {"setting": 12}`) // too little for the usual fit
	assert.Equal(t, "not known", stalled["Wrong heights accepted"].Value)
	assert.Equal(t, "not known", stalled["Good parts refused"].Value)
}
