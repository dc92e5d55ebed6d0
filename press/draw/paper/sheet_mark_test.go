package paper

import (
	"bytes"
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
)

// TestMarkOfEveryState: on every page of a sheet, and on every single drawing but the card,
// which has its bar, stands the mark of its own state and of no other: DRAFT on a draft,
// none on what was issued last, SUPERSEDED on what is no longer to be used.
func TestMarkOfEveryState(t *testing.T) {
	const by = "superseded by revision C, issued 2026-03-09"
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	onPaper := func(d *canvas.Picture) string {
		var b bytes.Buffer
		require.NoError(t, d.SVGCarrying(&b, ""))
		return b.String()
	}
	shapes := regexp.MustCompile(` d="([^"]+)"`)
	markOf := func(d *canvas.Picture, what, word string) string {
		f := Papers[0].frame()
		if d.Kind != "sheet" { // the line under a drawing has no mark across it
			inner, err := draw.New(what, p, r, draw.Options{})
			require.NoError(t, err)
			f = canvas.Rect(0, 0, inner.Width, inner.Height)
		}
		alone := canvas.NewPicture(canvas.Layout{Kind: d.Kind, Width: d.Width, Height: d.Height, Fixed: d.Fixed, Paint: func(p *canvas.Pen) { p.Across(f, word) }})
		outline := "" // the longest shape: beside it stands the ground
		for _, m := range shapes.FindAllStringSubmatch(onPaper(alone), -1) {
			if len(m[1]) > len(outline) {
				outline = m[1]
			}
		}
		require.Greater(t, len(outline), 100)
		return outline
	}
	for state, o := range map[string]SheetOptions{"DRAFT": {}, "": {Issue: issued}, supersededMark(by): {Issue: issued, Superseded: by}} {
		docs := map[string]*Document{"sheet": NewSheet(p, r, o)}
		for _, what := range draw.Names() {
			d, err := NewSingle(what, p, r, 0, false, o)
			require.NoError(t, err)
			if what != cardKind {
				docs[what] = d
			}
		}
		for what, d := range docs {
			for i := range d.Pages() {
				page := d.Page(i)
				svg := onPaper(page)
				for _, word := range []string{"DRAFT", supersededMark(by)} {
					has, mark := false, markOf(page, what, word)
					for _, m := range shapes.FindAllStringSubmatch(svg, -1) {
						has = has || m[1] == mark
					}
					assert.Equal(t, word == state, has, "%s of state %q, page %d: the mark %s", what, state, i+1, word)
				}
			}
		}
	}
}
