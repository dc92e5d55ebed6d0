package view

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/words"
	"ramplan/web/page"
)

// TestComparedTimesOfFaults: the time after which a fault is known is listed where it
// changed, and left out where it did not. By hand: a confirm time longer by 0.1 s makes
// every time longer by as much, and the requirement changes none of these.
func TestComparedTimesOfFaults(t *testing.T) {
	of := func(edits ...string) page.ComparedPage {
		p, r := shownPlan(t)
		q, s := shownPlan(t, edits...)
		return Compared{From: Side{Name: "A", Plan: p, Result: r}, To: Side{Name: "B", Plan: q, Result: s}}.Page(page.Assets{})
	}
	times := func(list []page.ComparedFigure) (out []page.ComparedFigure) {
		for _, f := range list {
			if f.Group == "Known after" {
				out = append(out, f)
			}
		}
		return out
	}

	p, r := shownPlan(t)
	longer := of("motion.confirm_time", words.Exact(p.Motion.ConfirmTime+0.1))
	got := map[string]page.ComparedFigure{}
	for _, f := range times(longer.Differing) {
		got[f.Label] = f
	}
	timed := 0
	for _, row := range r.Faults {
		f, listed := got[words.Fault(row).Word]
		assert.Equal(t, row.Time != nil, listed, row.Name)
		if row.Time == nil {
			continue
		}
		timed++
		assert.Equal(t, []string{words.AfterBare(*row.Time) + " s", words.AfterBare(*row.Time+0.1) + " s"}, []string{f.Was, f.Is}, row.Name)
	}
	require.Greater(t, timed, 5)

	same := of("requirement.min_seating_force", words.Exact(p.Requirement.MinSeatingForce+1))
	assert.Empty(t, times(same.Differing))
	assert.Empty(t, times(same.Same))
	assert.NotEmpty(t, same.Differing)
}
