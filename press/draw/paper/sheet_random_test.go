package paper

import (
	"math/rand/v2"
	"strings"
	"testing"

	"ramplan/press"
	"ramplan/press/draw/drawtest"
)

// TestSheetsOfRandomPlans: with notes, titles and reasons of any length nothing is
// lost and nothing overlaps.
func TestSheetsOfRandomPlans(t *testing.T) {
	random := rand.New(rand.NewPCG(5, 77))
	for n := 0; n < 60; {
		p, ok := drawtest.RandomPlan(t, random)
		if !ok {
			continue
		}
		d := p.Draft()
		d.Set("title.notes", strings.TrimSpace(strings.Repeat("A note to keep. ", random.IntN(240)))+strings.Repeat("\nline", random.IntN(30)))
		if random.IntN(3) == 0 {
			d.Set("title.name", unbroken[:random.IntN(90)+2])
			d.Set("title.characteristic", strings.Repeat("height ", random.IntN(13)+1))
		}
		q, ps := d.Check()
		if len(ps) > 0 {
			continue
		}
		n++
		o := SheetOptions{Paper: []string{"a4", "letter"}[n%2]}
		if n%3 == 0 {
			o.Issue = despite
		}
		r := press.Evaluate(q)
		if n%4 == 0 && len(r.Findings) > 0 {
			r = manyFindings(q)
		}
		checkSheet(t, q, r, o)
	}
}
