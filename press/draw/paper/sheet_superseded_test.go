package paper

import (
	"bytes"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/press/draw/drawtest"
)

// A sheet of what a newer revision has superseded says so in words on each page,
// and across it; others do not.
func TestSupersededSheetSaysSo(t *testing.T) {
	p := drawtest.Example(t, drawtest.Kinds["example"])
	marked := func(o SheetOptions, word string) {
		doc := NewSheet(p, press.Evaluate(p), o)
		require.Greater(t, doc.Pages(), 1)
		for i := range doc.Pages() {
			page := doc.Page(i)
			said := ""
			for _, l := range page.Texts() {
				said += l.Text + "\n"
			}
			assert.Contains(t, said, word+"\n", "page %d", i+1)
		}
	}
	pages := papers(p, press.Evaluate(p))
	marked(SheetOptions{Pages: pages}, "DRAFT, not issued")
	marked(SheetOptions{Pages: pages}, "DRAFT")
	marked(SheetOptions{Issue: issued, Superseded: "superseded by revision C, issued 2026-03-09", Pages: pages}, "SUPERSEDED BY REVISION C")
	of := func(o SheetOptions) (said string, marks int) {
		doc := NewSheet(p, press.Evaluate(p), o)
		for i := range doc.Pages() {
			page := doc.Page(i)
			for _, l := range page.Texts() {
				said += l.Text + "\n"
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

// So do a drawing and a card that lie alone.
func TestSupersededDrawingsSaySo(t *testing.T) {
	p := drawtest.Example(t, drawtest.Kinds["example"])
	for _, what := range draw.Names() {
		doc, err := NewSingle(what, p, press.Evaluate(p), 0, false, SheetOptions{Issue: issued, Superseded: "superseded by revision C"})
		require.NoError(t, err)
		page := doc.Page(0)
		said := ""
		for _, l := range page.Texts() {
			said += l.Text + "\n"
		}
		assert.Contains(t, said, "superseded by revision C", what)
		assert.Contains(t, said, "SUPERSEDED", what)
		labelsApart(t, page, what)
		if what == cardKind { // its mark is a bar on top
			continue
		}
		last, err := NewSingle(what, p, press.Evaluate(p), 0, false, SheetOptions{Issue: issued})
		require.NoError(t, err)
		var a, b bytes.Buffer
		require.NoError(t, page.SVG(&a))
		require.NoError(t, last.Page(0).SVG(&b))
		assert.Greater(t, strings.Count(a.String(), "<path"), strings.Count(b.String(), "<path")+1, "%s: the mark across it is missing", what)
	}
	assert.Equal(t, "SUPERSEDED BY REVISION C", supersededMark("superseded by revision C, issued 2026-03-09"))
}
