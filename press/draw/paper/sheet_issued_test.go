package paper

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/carry"
	"ramplan/press/draw/drawtest"
)

// TestAnIssuedSheetProposesNothing: what was issued was taken as proposed or set by hand;
// a draft proposes. A setpoint is never called computed, which is the word for a result.
func TestAnIssuedSheetProposesNothing(t *testing.T) {
	p := drawtest.Example(t, drawtest.Changes{"window.setting": "67"})
	said := func(o SheetOptions) map[string]int {
		n := map[string]int{}
		page := NewSheet(p, press.Evaluate(p), o).Page(0)
		for _, l := range page.Texts() {
			n[l.Text]++
		}
		return n
	}
	draft, revision := said(SheetOptions{}), said(SheetOptions{Issue: issued})
	assert.Equal(t, []int{5, 0, 1}, []int{draft["proposed"], draft["computed"], draft["by hand"]})
	assert.Equal(t, []int{0, 5, 0, 1}, []int{revision["proposed"], revision["as proposed"], revision["computed"], revision["by hand"]})
}

// TestIssuingAddsNoPage: a plan takes as many pages after it is issued as before, for
// a reason of one line; behind the first page for any reason, which does not stand there.
func TestIssuingAddsNoPage(t *testing.T) {
	issue := &carry.Issue{Revision: "A", Date: "2026-03-04", Prepared: "P", Checked: "C", Approved: "A", Reason: "The guard band follows the drill of the new nest."}
	for name, p := range drawtest.Plans(t) {
		r := press.Evaluate(p)
		withPages := []bool{false}
		if name == "example" || name == "touch" || name == "nothing-left" {
			withPages = append(withPages, true)
		}
		for _, behind := range withPages {
			o := SheetOptions{}
			if behind {
				o.Pages = papers(p, r)
			}
			draft := NewSheet(p, r, o)
			o.Issue = issue
			issued := NewSheet(p, r, o)
			assert.Equal(t, draft.Pages(), issued.Pages(), "%s, with pages behind: %v", name, behind)
			s := sheet{p: p, r: r, paper: paperOf(""), title: newTitleBlock(p, r, nil)}
			high := s.body().Y1
			s.title = newTitleBlock(p, r, &carry.Issue{Reason: strings.Repeat("Long. ", 99), Despite: "It has to be.", Second: "S"})
			assert.Equal(t, high, s.body().Y1, name)
		}
	}
}

// TestIssuedPagesNameWhoIssued: a page behind an issued sheet says of its names what the
// title block says.
func TestIssuedPagesNameWhoIssued(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	table, known := SheetOptions{Issue: issued}.Table("basis", p, r)
	require.True(t, known)
	assert.Contains(t, table.Rows, []string{"Title", "Prepared by", issued.Prepared, "–", "named at issue"})
	table, _ = SheetOptions{}.Table("basis", p, r)
	assert.Contains(t, table.Rows, []string{"Title", "Prepared by", "–", "–", "not given"})
}
