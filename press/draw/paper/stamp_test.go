package paper

import (
	"bytes"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/carry"
	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
	"ramplan/press/words"
)

// TestAloneSaysWhichPlan: every drawing and the card say number, revision or DRAFT,
// date and digest wherever they lie, and a draft does not look like what was issued.
func TestAloneSaysWhichPlan(t *testing.T) {
	const day, issuedOn = "2026-03-05", "2026-03-04"
	issue := &carry.Issue{Revision: "B", Date: issuedOn, Prepared: "P", Checked: "C", Approved: "A", Reason: "R"}
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	blocked := drawtest.Example(t, drawtest.Changes{"station.max_force": "2000"})
	unnamed := drawtest.Example(t, drawtest.Changes{"title.number": "", "title.name": strings.Repeat("Bearing sleeve ", 8)})
	for _, what := range draw.Names() {
		for _, width := range []Width{0, 60, 84, 120, 254} {
			drawn := map[string]*Document{}
			for state, o := range map[string]SheetOptions{"draft": {Day: day}, "issued": {Issue: issue, Day: day}} {
				d, err := NewSingle(what, p, r, width, false, o)
				require.NoError(t, err)
				labelsApart(t, d.Page(0), what+" "+state)
				drawn[state] = d
			}
			for state, wants := range map[string][]string{"draft": {words.DraftMark, "drawn " + day}, "issued": {"revision B", "issued " + issuedOn}} {
				said := strings.Join(cardTexts(drawn[state].Page(0)), " ")
				for _, want := range append(wants, "WS-210", "plan "+words.ShortDigest(p.Digest())) {
					assert.Contains(t, said, want, "%s, %s, %v mm", what, state, width)
				}
			}
			assert.NotContains(t, strings.Join(cardTexts(drawn["issued"].Page(0)), " "), words.DraftMark, what)
			var a, b bytes.Buffer
			require.NoError(t, drawn["draft"].Page(0).SVG(&a))
			require.NoError(t, drawn["issued"].Page(0).SVG(&b))
			assert.Greater(t, strings.Count(a.String(), "<path"), strings.Count(b.String(), "<path"), "%s: the mark of a draft is missing", what)

			for name, other := range map[string]*press.Plan{"blocked": blocked, "unnamed": unnamed} {
				d, err := NewSingle(what, other, press.Evaluate(other), width, false, SheetOptions{Day: day})
				require.NoError(t, err)
				labelsApart(t, d.Page(0), what+" "+name)
				said := strings.Join(cardTexts(d.Page(0)), " ")
				assert.Contains(t, said, words.ShortDigest(other.Digest()), "%s, %s: the digest is not whole", what, name)
				if name == "blocked" {
					assert.Contains(t, strings.ToLower(said), "not ready", what)
				}
			}
		}
	}
}

// TestSupersededCard: a card of what a newer revision has superseded says so on top and
// in its last line.
func TestSupersededCard(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	said := func(old string) string {
		o := SheetOptions{Issue: &carry.Issue{Revision: "A", Date: "2026-03-04", Reason: "R"}, Superseded: old}
		d, err := NewSingle("card", p, r, 0, false, o)
		require.NoError(t, err)
		labelsApart(t, d.Page(0), "card")
		return strings.Join(cardTexts(d.Page(0)), " ")
	}
	by := words.SupersededBy("B", "2026-03-09")
	assert.Contains(t, said(by), "SUPERSEDED: do not judge parts by this")
	assert.Contains(t, said(by), "revision A of 2026-03-04")
	assert.Contains(t, said(by), "superseded by revision B of 2026-03-09")
	assert.NotContains(t, strings.ToLower(said("")), "superseded")
}

// TestAloneFitsAPage: in a column and on half a landscape page, the strip and the
// cycle of every kind of plan are no higher than the page has room for. Common
// practice, no source: an A4 page of 297 mm or a letter page of 279 mm with margins,
// and a landscape one of 210 or 216 mm.
func TestAloneFitsAPage(t *testing.T) {
	for name, p := range drawtest.Plans(t) {
		r := press.Evaluate(p)
		for _, what := range []string{"strip", "cycle"} {
			for width, most := range map[string]float64{"column": 240, "half": 180} {
				mm, err := ParseWidth(width)
				require.NoError(t, err)
				d, err := NewSingle(what, p, r, mm, false, SheetOptions{Day: "2026-03-05"})
				require.NoError(t, err)
				_, high := d.Page(0).Size()
				assert.LessOrEqual(t, high/canvas.PerMM, most, "%s of %s, %s", what, name, width)
				labelsApart(t, d.Page(0), what+" of "+name+", "+width)
			}
		}
	}
}
