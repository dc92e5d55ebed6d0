package words

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
)

// TestCatalogueSaysWhoNeverComesToThePush: parts that are met in the approach are
// in none of its rows.
func TestCatalogueSaysWhoNeverComesToThePush(t *testing.T) {
	assert.NotContains(t, say.CatalogueLead(press.Evaluate(example(t, nil))), "of all parts are met in the approach")
	r := press.Evaluate(example(t, changes{"window.approach_end": "109.5"}))
	assert.Contains(t, say.CatalogueLead(r), PPM(r.Risk.EarlyContactPPM)+" of all parts are met in the approach")
}

// TestJudgedRightlyIsTrueOfEveryRow: the rows that the legend names are those of which
// the model wants both signals on, and no other is; early contact counts as 0, and a
// signal stuck off is judged rightly although the part is good (derived: model 11).
func TestJudgedRightlyIsTrueOfEveryRow(t *testing.T) {
	p := decoded(t, `"window": {}`, `"window": {}, "faults": {"other": [{"name": "paint", "height": 0.001, "good": true}, {"name": "burr", "height": 0.05}]}`)
	r := press.Evaluate(p)
	on := []string{press.RowNominal, press.RowTallest, press.RowShortest, press.RowSettingLow, press.RowSettingHigh, "paint"}
	seen := 0
	for _, f := range r.Faults {
		assert.Equal(t, slices.Contains(on, f.Name), f.Good, f.Name)
		if f.Good {
			seen++
		}
		if f.Verdict == press.EarlyContact {
			assert.Zero(t, f.Detection, f.Name)
		}
	}
	assert.Len(t, on, seen)
	assert.Equal(t, 1.0, row(r, press.RowArrivalStuckOff).Detection)
	assert.Contains(t, say.CatalogueLead(r), lowerFirst(JudgedRightly))
	i := slices.IndexFunc(Glossary, func(term Term) bool { return term.Word == "judged rightly" })
	assert.Equal(t, JudgedRightly, Glossary[i].Meaning)
	assert.Contains(t, paperOf(t, "faults", p).Lead, lowerFirst(JudgedRightly))
}
