package proving_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/proving"
)

// adopted is the example plan with everything taken over that some of its studies offer.
func adopted(t testing.TB, names ...string) *press.Result {
	t.Helper()
	d := exampleDraft(t, nil)
	p, ps := d.Check()
	require.Empty(t, ps)
	r := press.Evaluate(p)
	for _, name := range names {
		d = proving.Put(d, one(t, r, exampleStudy(t, name)).Adopt.Changes(p)...)
	}
	p, ps = d.Check()
	require.Empty(t, ps)
	return press.Evaluate(p)
}

// The same studies against the plan that took over what they offered: the force lies in the
// new band, nothing is scaled, nothing is off, and nothing more is offered of the place.
func TestWhatWasAdoptedIsFoundAgain(t *testing.T) {
	r := adopted(t, "load-cell", "stiffness")
	require.False(t, r.Blocked())
	cell := one(t, r, exampleStudy(t, "load-cell"))
	assert.Equal(t, proving.Pass, answers(cell)["band"])
	assert.Equal(t, proving.Pass, cell.Verdict)
	assert.NotContains(t, found(cell), proving.CurveScaled)
	for _, s := range cell.Result.(*proving.LoadCellResult).Settings {
		assert.InDelta(t, s.Plan[1], s.Mean, 0.05+1e-9) // the curve goes through the means, to 0.1 N
	}
	block := one(t, r, exampleStudy(t, "stiffness"))
	assert.Equal(t, proving.Pass, block.Verdict)
	a := block.Result.(*proving.StiffnessResult).Agreement
	assert.Less(t, *a.StiffnessEN, 0.001)
	assert.InDelta(t, 0, *a.PositionShift, 0.001)
	assert.Empty(t, block.Adopt.Changes(r.Plan))
}

// A station is proved: what the examples offer is taken over, a master and limit samples of
// the new plan are pushed, and the year runs from the first of the four. A crash takes it back.
func TestTheExampleIsProved(t *testing.T) {
	r := adopted(t, "load-cell", "stiffness")
	st := &r.Plan.Station
	master := onMaster(spread(25, st.Nest-40+(r.Force.Typical-st.NestForce)/st.Stiffness+0.001, 0.004)...)
	limits := onSamples()
	limits.PlanDigest = r.PlanDigest()[:len("sha256:")+12]
	sig, _ := r.Signals()
	for range 3 {
		for _, x := range []struct {
			name          string
			height        float64
			arrival, zone bool
		}{{"T1", r.Samples.Long + 0.005, true, false}, {"G1", *r.Samples.TallestGood - 0.005, true, true}, {"S1", r.Samples.Short - 0.005, false, true}} {
			row := sample(x.name, x.height, x.arrival, x.zone)
			row.Reading = of(min(r.ReadingOf(x.height), sig.End))
			limits.Rows = append(limits.Rows, row)
		}
		limits.Rows = append(limits.Rows, nothing(proving.BareNest, false, true))
	}
	studies := []*proving.Study{exampleStudy(t, "load-cell"), exampleStudy(t, "stiffness"), exampleStudy(t, "trial-parts"), master, limits}
	a := proving.Assess(r, studies, "2026-11-28")
	for _, j := range a.Studies {
		assert.Equal(t, proving.Pass, j.Verdict, "%s %v", j.Kind, answers(j))
	}
	assert.Equal(t, proving.StateProved, a.Proved.State)
	assert.Equal(t, "2027-11-20", *a.Proved.Until)
	assert.True(t, *a.Proved.AsFound.Met)
	assert.Equal(t, proving.StateOtherPlan, a.Proved.Kinds[proving.Trial].State) // it was pressed with the plan before

	crash := &proving.Study{Format: proving.Format, Kind: proving.Event, TakenAt: "2026-11-27", Event: proving.Crash}
	assert.Equal(t, proving.StateWithdrawn, proving.Assess(r, append(studies, crash), "2026-11-28").Proved.State)
	assert.Equal(t, proving.StateProved, proving.Assess(r, append(studies, crash), "2026-11-26").Proved.State)
	// Against the plan before, the samples were shown to another one.
	assert.Equal(t, proving.StateOtherPlan, proving.Assess(station(t, nil), studies, "2026-11-28").Proved.Kinds[proving.Samples].State)
}
