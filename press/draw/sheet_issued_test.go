package draw

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
)

// TestAnIssuedSheetProposesNothing: what was issued is computed or set by hand; a
// draft proposes.
func TestAnIssuedSheetProposesNothing(t *testing.T) {
	p := example(t, changes{"window.setting": "67"})
	said := func(o SheetOptions) map[string]int {
		n := map[string]int{}
		page := NewSheet(p, press.Evaluate(p), o).Page(0)
		for _, l := range page.on(newSVG(page.Size())) {
			n[l.text]++
		}
		return n
	}
	draft, revision := said(SheetOptions{}), said(SheetOptions{Issue: issued})
	assert.Equal(t, []int{5, 0, 1}, []int{draft["proposed"], draft["computed"], draft["by hand"]})
	assert.Equal(t, []int{0, 5, 1}, []int{revision["proposed"], revision["computed"], revision["by hand"]})
}
