package paper

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
	"ramplan/press/proving"
	"ramplan/press/words"
)

// TestCardSaysWhetherProved: the card of an issued revision says under its title whether the
// station is proved, where that is known; a draft and what is superseded say only that. No
// text touches another, and the foot keeps the digest.
func TestCardSaysWhetherProved(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	yes, no := provedBy(r, proving.StateProved, allStudies(r)...), provedBy(r, proving.StateNotProved)
	gone, damaged := provedBy(r, proving.StateWithdrawn), provedBy(r, proving.StateNotProved)
	damaged.Damaged = true
	const old = "superseded by revision C, issued 2026-03-09"
	for name, c := range map[string]struct {
		o    SheetOptions
		want string // empty: nothing of it
	}{
		"proved":     {SheetOptions{Issue: issued, Proof: yes}, "Revision B, proved until 2027-11-20"},
		"not proved": {SheetOptions{Issue: issued, Proof: no}, "Revision B, not proved yet"},
		"withdrawn":  {SheetOptions{Issue: issued, Proof: gone}, "Revision B, no longer proved"},
		"damaged":    {SheetOptions{Issue: issued, Proof: damaged}, "Revision B, not proved"},
		"not known":  {SheetOptions{Issue: issued}, ""},
		"draft":      {SheetOptions{Proof: no}, ""},
		"superseded": {SheetOptions{Issue: issued, Superseded: old, Proof: no}, ""},
	} {
		d, err := NewSingle("card", p, r, 0, false, c.o)
		require.NoError(t, err, name)
		labelsApart(t, d.Page(0), "card, "+name)
		texts := cardTexts(d.Page(0))
		all := strings.Join(texts, "\n")
		assert.Contains(t, all, words.ShortDigest(r.PlanDigest()), name)
		if c.want == "" {
			assert.NotContains(t, strings.ToLower(all), "proved", name)
			continue
		}
		assert.Contains(t, texts, c.want, name)
		assert.Contains(t, d.Page(0).Description(), c.want+".", "%s: said aloud as well", name)
		assert.Equal(t, 1, strings.Count(strings.ToLower(all), "proved"), "%s: said once", name)
		for _, l := range d.Page(0).Texts() {
			if l.Text == c.want {
				assert.Equal(t, canvas.Black.Name, l.Style.Ink.Name, "%s: softer than what forbids to judge", name)
			}
		}
	}
}
