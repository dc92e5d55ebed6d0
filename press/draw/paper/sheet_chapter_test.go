package paper

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw/drawtest"
	"ramplan/press/words"
)

// TestSheetPagesAreUsed: the first page of every sheet shows a finding where there
// are some, and a page for what it has no room for is no empty one.
func TestSheetPagesAreUsed(t *testing.T) {
	all := sheetPlans(t)
	for name, p := range all {
		r := press.Evaluate(p)
		for state, o := range map[string]SheetOptions{"draft": {}, "letter": {Paper: "letter"}, "despite": {Paper: "letter", Issue: despite}, "issued": {Issue: issued}} {
			d := NewSheet(p, r, o)
			require.LessOrEqual(t, d.Pages(), 2, "%s, %s", name, state)
			first := squeezed(strings.Join(pageTexts(d, 0), " "))
			if len(r.Findings) > 0 {
				assert.Contains(t, first, squeezed(r.Findings[0].Message), "%s, %s: no finding on page 1", name, state)
			}
			if !strings.Contains(first, squeezed(words.CautionsInShort)) {
				for _, u := range words.Cautions {
					assert.Contains(t, first, squeezed(u), "%s, %s: a caution is not on page 1", name, state)
				}
			}
			if d.Pages() == 1 {
				continue
			}
			s := &sheet{p: p, r: r, o: o, paper: paperOf(o.Paper)}
			s.title = newTitleBlock(p, r, o.Issue)
			body := s.body()
			lowest, right := 0.0, 0.0
			for _, l := range d.Page(1).Texts() {
				if l.Y1 < body.Y1 {
					lowest, right = max(lowest, l.Y1), max(right, l.X1)
				}
			}
			assert.Greater(t, (lowest-body.Y0)/body.Height(), 0.4, "%s, %s: page 2 is nearly empty", name, state)
			assert.Greater(t, (right-body.X0)/body.Width(), 0.9, "%s, %s: page 2 is used on the left only", name, state)
		}
	}
}

func pageTexts(d *Document, page int) []string {
	var out []string
	for _, l := range d.Page(page).Texts() {
		out = append(out, l.Text)
	}
	return out
}

// TestNotesOfThePlan: notes stand on the first page under their heading where they
// have room; long ones go on behind, and the first page says where.
func TestNotesOfThePlan(t *testing.T) {
	short := drawtest.Example(t, drawtest.Changes{ // with no finding, and little that cannot be detected
		"title.notes": "Spare tool in drawer 4.", "joint": "", "joint.kind": "touch", "parts[2].contact": "0", "motion.settle_time": "0.3", "station.reference_uncertainty": "0.02",
		"station.nest_force": "1000", "ram.setting_continuous": "70", "motion.approach_speed": "60", "motion.slow_speed": "2", "faults.nest_wear": "0", "targets.false_reject_ppm": "100000",
	})
	d := checkSheet(t, short, press.Evaluate(short), SheetOptions{})
	assert.Equal(t, 1, d.Pages())
	text := strings.Join(pageTexts(d, 0), "|")
	assert.Contains(t, text, notesTitle+"|Spare tool in drawer 4.")

	for _, sentences := range []int{40, 150} {
		long := strings.TrimSpace(strings.Repeat("Ask for the key first. ", sentences))
		p := drawtest.Example(t, drawtest.Changes{"title.notes": long + "\nSecond\nthird"})
		d = checkSheet(t, p, press.Evaluate(p), SheetOptions{})
		require.Equal(t, 2, d.Pages())
		first, second := strings.Join(pageTexts(d, 0), "|"), strings.Join(pageTexts(d, 1), "|")
		assert.Contains(t, first, notesTitle+"|Continued on page 2.")
		assert.Contains(t, second, notesTitle+"|Ask for the key first.")
		assert.Contains(t, second, "|Second|third|", "line ends of the notes are kept")
	}

	// Behind 40 findings the notes stand where the first page says.
	p := drawtest.Example(t, drawtest.Changes{"title.notes": strings.Repeat("Ask for the key first. ", 170)})
	d = checkSheet(t, p, manyFindings(p), SheetOptions{})
	require.Equal(t, 3, d.Pages())
	for i := range d.Pages() {
		if strings.Contains(strings.Join(pageTexts(d, i), "|"), notesTitle+"|Ask for") {
			assert.Contains(t, strings.Join(pageTexts(d, 0), "|"), fmt.Sprintf("%s|Continued on page %d.", notesTitle, i+1))
		}
	}
}

// TestGroupedRows: in a table of groups each page says once what a group is about.
func TestGroupedRows(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	table, _ := words.Paper("reactions", p, r)
	d := NewSheet(p, r, SheetOptions{Pages: []words.Table{table}})
	require.Equal(t, 4, d.Pages()) // the findings of the example take two
	count := func(page int, text string) (n int) {
		for _, s := range pageTexts(d, page+1) {
			if s == text {
				n++
			}
		}
		return n
	}
	assert.Equal(t, 1, count(1, "arrival on, zone on"))
	assert.Equal(t, 1, count(1, "arrival off, zone on"))
	assert.Equal(t, 1, count(2, "arrival off, zone on"), "the next page says it again")
	assert.Equal(t, 1, count(2, "fault"))
}
