package draw

import (
	"bytes"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// A sheet of what a newer revision has superseded says so in words on each page,
// and across it; others do not.
func TestSupersededSheetSaysSo(t *testing.T) {
	p := example(t, kinds["example"])
	of := func(o SheetOptions) (said string, marks int) {
		doc := NewSheet(p, press.Evaluate(p), o)
		for i := range doc.Pages() {
			page := doc.Page(i)
			w, h := page.Size()
			c := newSVG(w, h)
			for _, l := range page.on(c) {
				said += l.text + "\n"
			}
			if strings.Contains(said, "Not to be used any more:") {
				marks++
			}
		}
		return said, marks
	}
	said, marks := of(SheetOptions{Issue: issued, Superseded: "superseded by revision C, issued 2026-03-09"})
	assert.Contains(t, said, "superseded by revision C, issued 2026-03-09.")
	assert.Equal(t, NewSheet(p, press.Evaluate(p), SheetOptions{Issue: issued, Superseded: "superseded by revision C, issued 2026-03-09"}).Pages(), marks)
	for name, o := range map[string]SheetOptions{"the last": {Issue: issued}, "a draft": {}} {
		said, _ := of(o)
		assert.NotContains(t, strings.ToLower(said), "superseded", name)
	}
	// The word across the page is drawn, not lettered: the page has more lines then.
	paths := func(o SheetOptions) int {
		var b bytes.Buffer
		require.NoError(t, NewSheet(p, press.Evaluate(p), o).Page(0).SVG(&b))
		return strings.Count(b.String(), "<path")
	}
	assert.Greater(t, paths(SheetOptions{Issue: issued, Superseded: "superseded"}), paths(SheetOptions{Issue: issued}))
}
