package proof_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
	"ramplan/press/proving"
	"ramplan/press/words/proof"
)

// What was taken of a study is told by the name that the step was given, as long as it stands.
func TestAdoptions(t *testing.T) {
	var say proof.Words
	draft := func(entries ...string) *press.Draft {
		d := &press.Draft{}
		for i := 0; i < len(entries); i += 2 {
			d.Set(entries[i], entries[i+1])
		}
		return d
	}
	plan := &press.Plan{}
	const nest, repeatability = "station.nest", "ram.repeatability"
	did := say.TookValues(&proving.Study{Kind: proving.Master, TakenAt: "2026-11-21"}, "sha256:0123456789abcdef")
	at := time.Date(2026, 11, 22, 12, 0, 0, 0, time.Local)
	first, second := draft(nest, "140"), draft(nest, "140.01", repeatability, "0.012", "title.name", "other")
	curve := proving.Put(second, proving.Change{Path: "ram.curve.points", Offers: [][2]float64{{10, 200}, {70, 2600}}})
	steps := []proof.Taking{
		{At: at, Did: did, Was: first, Is: second},
		{At: at, Did: "typed", Was: first, Is: second},
		{At: at.AddDate(0, 0, 1), Did: did, Was: second, Is: curve},
	}
	told := func(now *press.Draft) (out []string) {
		for _, a := range say.Adoptions(plan, steps, now) {
			assert.Equal(t, "sha256:0123456789ab", a.Digest)
			out = append(out, a.On+" "+a.Label+": "+a.Was+" to "+a.Is)
		}
		return out
	}
	of := func(path string) string { f, _ := press.FieldAt(path); return f.Label }
	sharp, moved := "2026-11-22 "+of(repeatability)+":  to ±\u202f0.012\u202fmm", "2026-11-22 "+of(nest)+": 140.000\u202fmm to 140.010\u202fmm"
	bent := "2026-11-23 " + say.AdoptName("ram.curve.points") + ":  to 2 points, 10\u202f% 200.0\u202fN to 70\u202f% 2600.0\u202fN"
	assert.Equal(t, []string{sharp, moved, bent}, told(curve), "what was not given before has no figure")
	same := proving.Put(curve)
	same.Set(nest, "140.010")
	assert.Equal(t, []string{sharp, moved, bent}, told(same), "the same figure in another writing")
	same.Set(nest, "140.02")
	assert.Equal(t, []string{sharp, bent}, told(same), "changed since")
	same.Set("ram.curve.points[1][1]", "2500")
	assert.Equal(t, []string{sharp}, told(same))
	assert.Empty(t, told(draft()))
	assert.Empty(t, say.Adoptions(plan, nil, nil))
}
