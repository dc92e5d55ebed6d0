package paper

import (
	"bytes"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
	"ramplan/press/words"
)

var pathData = regexp.MustCompile(`<path d="[^"]*"`)

// outlineOf gives the longest outline of what is painted on a page of a size: that of the
// word, and not the empty page.
func outlineOf(t *testing.T, width, height float64, paint func(*canvas.Pen)) string {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, (canvas.NewPicture(canvas.Layout{Kind: "sheet", Width: width, Height: height, Fixed: true, Paint: paint})).SVG(&b))
	longest := ""
	for _, outline := range pathData.FindAllString(b.String(), -1) {
		if len(outline) > len(longest) {
			longest = outline
		}
	}
	return longest
}

// Every page of a draft has the word DRAFT across it, whose outlines are those of the word
// drawn alone; no page of what was issued has it, be it superseded or not, which has the
// other word then.
func TestDraftMarkStandsOnDraftsAlone(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	f := paperOf("").frame()
	w, h := paperOf("").px()
	draft := outlineOf(t, w, h, func(p *canvas.Pen) { draftMark(p, f) })
	over := outlineOf(t, w, h, func(p *canvas.Pen) { p.Across(f, supersededMark("superseded by revision C")) })
	require.Greater(t, len(draft), 200)
	require.Greater(t, len(over), 200)
	require.NotEqual(t, draft, over)
	for name, c := range map[string]struct {
		o           SheetOptions
		draft, over bool
	}{
		"a draft":    {SheetOptions{Pages: papers(p, r)[:2]}, true, false},
		"issued":     {SheetOptions{Issue: issued, Pages: papers(p, r)[:2]}, false, false},
		"superseded": {SheetOptions{Issue: issued, Superseded: "superseded by revision C", Pages: papers(p, r)[:2]}, false, true},
	} {
		doc := NewSheet(p, r, c.o)
		require.Greater(t, doc.Pages(), 2)
		for i := range doc.Pages() {
			var b bytes.Buffer
			require.NoError(t, doc.Page(i).SVG(&b))
			assert.Equal(t, c.draft, strings.Contains(b.String(), draft), "%s, page %d: DRAFT", name, i+1)
			assert.Equal(t, c.over, strings.Contains(b.String(), over), "%s, page %d: SUPERSEDED", name, i+1)
		}
	}
}

// The first page of a sheet lists the setpoints as they are, name, figure and unit beside
// each other, and says what the drawing asks for; words.Setpoints are held to their keys
// where the bench shows them. By hand: the example asks for 24.91 to 25.09 mm and 150 N.
func TestSheetShowsItsFigures(t *testing.T) {
	for name, c := range map[string]drawtest.Changes{"example": nil, "stalls": {"window.setting": "30", "window.zone_start": "110"}, "blocked": {"parts[1].contact": "-2"}} {
		p := drawtest.Example(t, c)
		r := press.Evaluate(p)
		page := NewSheet(p, r, SheetOptions{}).Page(0)
		var said []string
		for _, l := range page.Texts() {
			said = append(said, l.Text)
		}
		all := strings.Join(said, "\n")
		for _, q := range words.Setpoints(p, r) {
			want := []string{q.Label, q.Value}
			if q.Unit != "" {
				want = append(want, q.Unit)
			}
			assert.Contains(t, all, "\n"+strings.Join(want, "\n"), "%s, %s", name, q.Label)
		}
		flowing := strings.NewReplacer("\n", " ", "\u202f", " ", "\u00a0", " ").Replace(all)
		assert.Contains(t, flowing, "24.91 to 25.09 mm, at least 150 N left on the seat", name)
	}
}
