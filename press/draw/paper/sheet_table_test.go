package paper

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
)

// TestNotesStandWithRows: no page holds nothing but the notes under a table, whatever the
// plan and the paper.
func TestNotesStandWithRows(t *testing.T) {
	went := 0
	for name, p := range sheetPlans(t) {
		r := press.Evaluate(p)
		for _, o := range []SheetOptions{{Paper: "a4"}, {Paper: "letter", Issue: issued}} {
			for _, table := range papers(p, r) {
				o.Pages = append(o.Pages[:0:0], table)
				d := NewSheet(p, r, o)
				for i := range d.Pages() {
					if d.names[i] != table.Title+", continued" {
						continue
					}
					went++
					page := d.Page(i)
					said := ""
					for _, l := range page.Texts() {
						said += l.Text + "\n"
					}
					assert.Contains(t, said, strings.Fields(table.Columns[0].Head)[0]+"\n", "%s, %s on %s: page %d has notes alone", table.Title, name, o.Paper, i+1)
				}
			}
		}
	}
	assert.Positive(t, went, "no table went on on a second page")
}
