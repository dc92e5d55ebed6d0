package proving_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/proving"
)

// What a study offers is listed with what the plan says, the curve first; what is the same
// already is no change.
func TestChanges(t *testing.T) {
	d := exampleDraft(t, nil)
	p, ps := d.Check()
	require.Empty(t, ps)
	points := [][2]float64{{10, 196.5}, {40, 1352.1}, {70, 2570}}
	a := &proving.Adopt{CurvePoints: points, ForceTolerance: of(2.62), Nest: of(140.01), Stiffness: of(18000.0), Repeatability: of(0.02)}
	changes := a.Changes(p)
	require.Len(t, changes, 3)
	assert.Equal(t, proving.Change{Path: "ram.curve.points", Points: p.Ram.Curve.Points, Offers: points}, changes[0])
	assert.Equal(t, proving.Change{Path: "ram.force_tolerance", Was: 7, Is: 2.62}, changes[1])
	assert.Equal(t, proving.Change{Path: "station.nest", Was: 140, Is: 140.01}, changes[2])

	// One value alone, or all; the draft that was given stays.
	before := len(d.Entries)
	single := proving.Put(d, changes[2])
	nest, _ := single.Get("station.nest")
	assert.Equal(t, "140.01", nest)
	old, _ := d.Get("station.nest")
	assert.Equal(t, "140", old)

	all := proving.Put(d, changes...)
	assert.Len(t, d.Entries, before)
	got, ps := all.Check()
	require.Empty(t, ps)
	assert.Equal(t, points, got.Ram.Curve.Points) // seven points became three
	assert.Equal(t, 2.62, got.Ram.ForceTolerance)
	assert.Empty(t, a.Changes(got))
	text, ok := all.Get("ram.curve.points[1][1]")
	assert.True(t, ok)
	assert.Equal(t, "1352.1", text)
	_, ok = all.Get("ram.curve.points[3][0]")
	assert.False(t, ok)

	// Into a draft without a curve, and of a study that offers nothing.
	empty := proving.Put(&press.Draft{}, changes...)
	text, _ = empty.Get("ram.curve.points[0][0]")
	assert.Equal(t, "10", text)
	assert.Empty(t, (*proving.Adopt)(nil).Changes(p))
}

// The nest of a trial that was adopted is not off any more: half a step is left at the most,
// and the parts are what they were.
func TestAdoptedNestIsWhereItWasFound(t *testing.T) {
	d := exampleDraft(t, nil)
	p, _ := d.Check()
	j := one(t, press.Evaluate(p), exampleStudy(t, "trial-parts"))
	corrected, ps := proving.Put(d, j.Adopt.Changes(p)...).Check()
	require.Empty(t, ps)
	again := one(t, press.Evaluate(corrected), exampleStudy(t, "trial-parts"))
	r, was := again.Result.(*proving.TrialResult), j.Result.(*proving.TrialResult)
	assert.InDelta(t, was.StationShift.Value-0.01, r.StationShift.Value, 1e-9)
	assert.InDelta(t, was.PartsShift.Value, r.PartsShift.Value, 1e-9)
	assert.InDelta(t, was.Correction.SharesAfter.OnOn, must(press.Evaluate(corrected), r.Shift.Value), 1e-9)
	assert.Nil(t, r.Correction)
	assert.Equal(t, []string{proving.OtherPlan}, []string{found(again)[1]}) // it named the plan before
}

func must(plan *press.Result, shift float64) float64 {
	c, _ := plan.PartChances(shift)
	return c.Of(true, true)
}
