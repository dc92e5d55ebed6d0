package paper

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/carry"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
	"ramplan/press/draw/typeset"
	"ramplan/press/words"
)

var issued = &carry.Issue{
	Revision: "B", Date: "2026-03-02", Prepared: "A. Anders", Checked: "B. Brandt", Approved: "C. Cebulla",
	Reason: "Nest reground by 0.2 mm after the crash of the week before.",
}

var despite = &carry.Issue{
	Revision: "C", Date: "2026-03-09", Prepared: "A. Anders", Checked: "B. Brandt", Approved: "C. Cebulla",
	Reason: strings.Repeat("The reason is told at length. ", 30), Despite: strings.Repeat("First samples only, each measured by hand. ", 20), Second: "D. Dorn",
}

var (
	unbroken   = strings.Repeat("Gehäusebuchsenaufnahme", 20)
	longTitles = drawtest.Changes{
		"title.name": unbroken, "title.number": unbroken[:110], "title.part_number": strings.Repeat("PN ", 60), "title.part_revision": strings.Repeat("R", 40),
		"title.characteristic": strings.Repeat("seated height over the shoulder ", 12), "title.owner": strings.Repeat("Weather Instruments ", 9),
		"title.prepared_by": strings.Repeat("Anders ", 20), "title.checked_by": unbroken[:110], "title.approved_by": strings.Repeat("中文名", 30),
	}
)

// sheetPlans are the plans of every kind, and those that fill a sheet to the brim.
func sheetPlans(t testing.TB) map[string]*press.Plan {
	out := drawtest.Plans(t)
	p0 := drawtest.Example(t, nil)
	d := p0.Draft()
	for i := len(p0.Parts); i < 60; i++ {
		d.Set(fmt.Sprintf("parts[%d].name", i), fmt.Sprintf("shim %d %s", i, strings.Repeat("of the long drawer ", 9)))
		for field, text := range (drawtest.Changes{"nominal": "0.01", "minus": "0", "plus": "0", "contact": "0", "seat": "0"}) {
			d.Set(fmt.Sprintf("parts[%d].%s", i, field), text)
		}
	}
	p, ps := d.Check()
	require.Empty(t, ps)
	require.Len(t, p.Parts, 60)
	out["60-parts"] = p
	out["long-titles"] = drawtest.Example(t, taken(longTitles))
	return out
}

// taken keeps texts within what a plan takes.
func taken(c drawtest.Changes) drawtest.Changes {
	out := drawtest.Changes{}
	for path, text := range c {
		runes := []rune(text)
		out[path] = string(runes[:min(len(runes), 100)])
	}
	return out
}

// manyFindings is the result of a plan with 40 findings.
func manyFindings(p *press.Plan) *press.Result {
	r := press.Evaluate(p)
	words.Explain(r)
	few := r.Findings
	for len(r.Findings) < 40 {
		r.Findings = append(r.Findings, few[len(r.Findings)%len(few)])
	}
	return r
}

// TestSheetLayout: on no page of any sheet do two texts overlap, leave the frame or
// run into the title block; the findings are all there; every page has its number.
func TestSheetLayout(t *testing.T) {
	for name, p := range sheetPlans(t) {
		if testing.Short() && name != "long-titles" && name != "missing-good" {
			continue
		}
		r := press.Evaluate(p)
		for state, o := range map[string]SheetOptions{
			"draft":   {Paper: "a4", Pages: papers(p, r)},
			"issued":  {Paper: "a4", Issue: issued},
			"despite": {Paper: "letter", Issue: despite, Pages: papers(p, r)},
			"letter":  {Paper: "letter"},
		} {
			t.Run(name+"/"+state, func(t *testing.T) {
				t.Parallel()
				checkSheet(t, p, press.Evaluate(p), o)
			})
		}
	}
	t.Run("40 findings", func(t *testing.T) {
		p := drawtest.Example(t, nil)
		d := checkSheet(t, p, manyFindings(p), SheetOptions{})
		assert.Equal(t, 3, d.Pages())
		assert.Equal(t, 2, checkSheet(t, p, press.Evaluate(p), SheetOptions{}).Pages(), "the example has seven findings")
		assert.Equal(t, 2, checkSheet(t, p, press.Evaluate(p), SheetOptions{Issue: issued}).Pages(), "and needs no more as a revision")
	})
}

// papers are all pages beside the sheet.
func papers(p *press.Plan, r *press.Result) []words.Table {
	var out []words.Table
	for _, name := range words.PaperNames() {
		t, _ := words.Paper(name, p, r)
		out = append(out, t)
	}
	return out
}

func checkSheet(t *testing.T, p *press.Plan, r *press.Result, o SheetOptions) *Document {
	t.Helper()
	d := NewSheet(p, r, o)
	frame, block := paperOf(o.Paper).frame(), newTitleBlock(p, r, o.Issue)
	var everything, poured strings.Builder
	for i := range d.Pages() {
		page := d.Page(i)
		corner := canvas.Rect(frame.X1-titleWidth, frame.Y1-block.height(i+1), frame.X1, frame.Y1)
		labelsApart(t, page, fmt.Sprintf("page %d", i+1))
		inBlock := map[string]bool{}
		for _, l := range page.Texts() {
			if !strings.HasSuffix(l.Text, ", continued") { // said between the lines of one text
				everything.WriteString(" " + l.Text)
				if l.Y0 <= frame.Y1 && !(l.X1 > corner.X0 && l.Y1 > corner.Y0) {
					poured.WriteString(" " + l.Text) // from page to page
				}
			}
			if l.Y0 > frame.Y1 {
				continue // the line under the frame
			}
			assert.True(t, l.X0 >= frame.X0 && l.X1 <= frame.X1+0.5 && l.Y0 >= frame.Y0 && l.Y1 <= frame.Y1, "%q leaves the frame", l.Text)
			if l.X1 > corner.X0 && l.Y1 > corner.Y0 {
				inBlock[l.Text] = true
				assert.True(t, l.X0 >= corner.X0 && l.Y0 >= corner.Y0, "%q runs into the title block", l.Text)
			}
			assert.GreaterOrEqual(t, l.Y1-l.Y0, 0.97*typeset.Least, "%q is lettered under 1.8 mm", l.Text)
		}
		assert.True(t, inBlock[fmt.Sprintf("%d of %d", i+1, d.Pages())], "no number on page %d", i+1)
		assert.True(t, inBlock[words.ShortDigest(r.PlanDigest())], "no digest on page %d", i+1)
	}
	all, flowing := squeezed(everything.String()), poured.String()
	for _, f := range r.Findings {
		assert.Contains(t, all, squeezed(f.Message))
	}
	for _, s := range append(words.Unseen(p, r), words.Cautions...) {
		assert.Contains(t, all, squeezed(s))
	}
	assert.Contains(t, squeezed(flowing), squeezed(p.Title.Notes))
	assert.Contains(t, all, squeezed(words.ReadingRule(p, r)))
	headline, says := say.MarkedHeadline(p, r)
	for _, s := range append(says, headline) {
		assert.Contains(t, all, squeezed(s))
	}
	if r.Blocked() {
		assert.GreaterOrEqual(t, strings.Count(all, "Notreadyforuse:"), 1+len(o.Pages), "a page of a blocked plan does not say so")
	}
	for _, g := range o.Pages {
		for _, row := range append(g.Rows, []string{g.Title, g.Lead, g.Lacking, g.Over}, g.Notes) {
			for _, cell := range row {
				if strings.HasSuffix(cell, ", continued") { // left out above
					continue
				}
				assert.Contains(t, all, squeezed(cell))
			}
		}
	}
	if o.Issue != nil {
		assert.Contains(t, all+squeezed(flowing), squeezed(o.Issue.Reason))
		assert.Contains(t, all+squeezed(flowing), squeezed(o.Issue.Despite))
	}
	for _, s := range []string{p.Title.Name, p.Title.Number, p.Title.PartNumber, p.Title.Owner, p.Title.Characteristic} {
		assert.Contains(t, all, squeezed(s))
	}
	for _, s := range words.Setpoints(p, r) {
		assert.Contains(t, all, squeezed(s.Value))
	}
	return d
}

// squeezed is a text without blanks: lines break where they must.
func squeezed(s string) string { return strings.Join(strings.Fields(s), "") }

var lookSheets = flag.String("sheets", "", "a folder to write sheets to, to be looked at")

// TestLookSheets writes sheets to a folder.
func TestLookSheets(t *testing.T) {
	if *lookSheets == "" {
		t.Skip("no folder given with -sheets")
	}
	write := func(name string, d *Document) {
		f, err := os.Create(filepath.Join(*lookSheets, name+".pdf"))
		require.NoError(t, err)
		require.NoError(t, d.Write(f, "pdf", 0))
		require.NoError(t, f.Close())
	}
	for name, p := range sheetPlans(t) {
		write(name, NewSheet(p, press.Evaluate(p), SheetOptions{}))
		write(name+"-letter-despite", NewSheet(p, press.Evaluate(p), SheetOptions{Paper: "letter", Issue: despite}))
	}
	p := drawtest.Example(t, nil)
	write("issued", NewSheet(p, press.Evaluate(p), SheetOptions{Issue: issued}))
	write("pages", NewSheet(p, press.Evaluate(p), SheetOptions{Pages: papers(p, press.Evaluate(p))}))
	write("many", NewSheet(p, manyFindings(p), SheetOptions{}))
}
