package paper

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
	"ramplan/press/draw/drawtest"
	"ramplan/press/words"
)

// TestNotesStandWithRows: no page holds nothing but the notes under a table, whatever the
// plan and the paper. The usual tests lay all tables out behind one sheet; with
// RAMPLAN_PLANS=all each also stands behind one alone.
func TestNotesStandWithRows(t *testing.T) {
	went := 0
	for name, p := range sheetPlans(t) {
		r := press.Evaluate(p)
		all := papers(p, r)
		sets := [][]words.Table{all}
		if drawtest.AllPlans() {
			for _, table := range all {
				sets = append(sets, []words.Table{table})
			}
		}
		for _, o := range []SheetOptions{{Paper: "a4"}, {Paper: "letter", Issue: issued}} {
			for _, o.Pages = range sets {
				went += notesStandWithRows(t, NewSheet(p, r, o), o, name)
			}
		}
	}
	assert.Positive(t, went, "no table went on on a second page")
}

// notesStandWithRows looks at the pages that a table goes on on, and counts them.
func notesStandWithRows(t *testing.T, d *Document, o SheetOptions, plan string) int {
	went := 0
	for i := range d.Pages() {
		n := slices.IndexFunc(o.Pages, func(table words.Table) bool { return d.names[i] == table.Title+", continued" })
		if n < 0 {
			continue
		}
		went++
		page := d.Page(i)
		said := ""
		for _, l := range page.Texts() {
			said += l.Text + "\n"
		}
		table := o.Pages[n]
		assert.Contains(t, said, strings.Fields(table.Columns[0].Head)[0]+"\n", "%s, %s on %s: page %d has notes alone", table.Title, plan, o.Paper, i+1)
	}
	return went
}
