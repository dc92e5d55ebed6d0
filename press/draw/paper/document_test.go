package paper

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/carry"
	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
)

func written(t testing.TB, d *Document, format string, page int) []byte {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, d.Write(&b, format, page))
	return b.Bytes()
}

// TestCarried: random plans, with RAMPLAN_PLANS=all 200 of them, come back out of every
// format, byte for byte and with the same digest, out of every page. As dots a small
// drawing of each plan, and of few the whole sheet, which takes its time.
func TestCarried(t *testing.T) {
	plans := 8
	if drawtest.AllPlans() {
		plans = 50
	} else if testing.Short() {
		plans = 2
	}
	for part := range uint64(4) {
		t.Run(fmt.Sprint(part), func(t *testing.T) {
			t.Parallel()
			carriesAll(t, plans, rand.New(rand.NewPCG(5, part)))
		})
	}
}

func carriesAll(t *testing.T, plans int, random *rand.Rand) {
	for done := 0; done < plans; {
		p, ok := drawtest.RandomPlan(t, random)
		if !ok {
			continue
		}
		done++
		source := bytes.ReplaceAll(p.JSON(), []byte("\n"), []byte("\r\n"))
		o := SheetOptions{Source: source}
		if done%2 == 0 {
			o.Issue, o.Paper = despite, "letter"
		}
		r := press.Evaluate(p)
		sheet := NewSheet(p, r, o)
		small, err := NewSingle("force", p, r, 60, true, o)
		require.NoError(t, err)
		comesBack := func(file []byte) {
			t.Helper()
			got, err := carry.Extract(file)
			require.NoError(t, err)
			require.True(t, bytes.Equal(source, got.Plan), "other bytes came back")
			require.Equal(t, r.PlanDigest(), got.Digest)
			require.Equal(t, o.Issue, got.Issue)
		}
		comesBack(written(t, sheet, "pdf", 0))
		comesBack(written(t, small, "png", 0))
		for page := range sheet.Pages() {
			comesBack(written(t, sheet, "svg", page))
			if done%50 == 2 {
				comesBack(written(t, sheet, "png", page))
			}
		}
	}
}

// TestRepeats: the same plan gives the same bytes, and a draft carries no date.
func TestRepeats(t *testing.T) {
	p := drawtest.Example(t, nil)
	for _, format := range canvas.Formats() {
		a := written(t, NewSheet(p, press.Evaluate(p), SheetOptions{}), format, 0)
		b := written(t, NewSheet(p, press.Evaluate(p), SheetOptions{}), format, 0)
		assert.True(t, bytes.Equal(a, b), "%s differs from one time to the next", format)
	}
	draft := written(t, NewSheet(p, press.Evaluate(p), SheetOptions{}), "pdf", 0)
	assert.NotContains(t, string(draft), "Date (D:")
	revision := written(t, NewSheet(p, press.Evaluate(p), SheetOptions{Issue: issued}), "pdf", 0)
	assert.Contains(t, string(revision), "/CreationDate (D:20260302000000")
}

// TestSelfContained: an exported SVG asks nobody for anything, says its size on
// paper, and brings the letters that it uses.
func TestSelfContained(t *testing.T) {
	p := drawtest.Example(t, nil)
	svg := string(written(t, NewSheet(p, press.Evaluate(p), SheetOptions{}), "svg", 0))
	assert.Contains(t, svg, `width="297mm" height="210mm"`) // ISO 216
	assert.Equal(t, 2, strings.Count(svg, "url(data:font/woff;base64,"))
	assert.Equal(t, strings.Count(svg, "url("), strings.Count(svg, "url(data:"))
	for _, asks := range []string{"<image", "<script", "href", "@import"} {
		assert.NotContains(t, svg, asks)
	}
	require.NoError(t, xml.Unmarshal([]byte(svg), new(struct{})))
}

// TestPictureAlone: a drawing takes the width that was asked for, in the form that
// suits it, with its message or without.
func TestPictureAlone(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	example, ofExample := p, r
	for _, what := range draw.Names() {
		if p, r = example, ofExample; what == "run" || what == "probe" {
			p, r = drawtest.OfTheRun(t, nil)
		}
		for _, width := range []string{"column", "half", "page", "slide", "77.5", "60 mm", "400mm"} {
			mm, err := ParseWidth(width)
			require.NoError(t, err)
			d, err := NewSingle(what, p, r, mm, false, SheetOptions{})
			require.NoError(t, err)
			w, high := d.Page(0).Size()
			assert.InDelta(t, float64(mm), w/canvas.PerMM, 1e-9, "%s, %s", what, width)
			labelsApart(t, d.Page(0), what+" "+width)
			bare, err := NewSingle(what, p, r, mm, true, SheetOptions{})
			require.NoError(t, err)
			_, low := bare.Page(0).Size()
			if what != "card" { // a page of its own, whatever is on it
				assert.Less(t, low, high, "%s, %s: as high without its message", what, width)
			}
		}
	}
	for _, width := range []string{"", "wide", "59", "1001", "NaN", "inf", "-90"} {
		_, err := ParseWidth(width)
		assert.ErrorContains(t, err, "draw: no width is called", width)
	}
	_, err := NewSingle("stripe", p, r, 0, false, SheetOptions{})
	assert.ErrorContains(t, err, "draw: no drawing is called")
}
