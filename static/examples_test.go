package static_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/static"
)

// known are the cautions that the examples teach, and no others: in two the nest was
// only touched, which is what a station begins with; the run's are those of its design.
var known = map[string][]string{
	"WS-210": {press.DeflectionUntaught},
	"WS-340": {press.DeflectionUntaught, press.ProbeOverrun, press.LampSecondMeaning},
}

// TestExamples wants examples that an engineer would issue: sound, without blockers, one of
// each kind of joint and one with a probe and steps.
func TestExamples(t *testing.T) {
	kinds, runs := map[string]bool{}, 0
	for _, data := range static.Examples() {
		plan, faults := press.Decode(data)
		require.Empty(t, faults)
		r := press.Evaluate(plan)
		assert.Zero(t, r.Count(press.Blocker), plan.Title.Name)
		var cautions []string
		for _, f := range r.Findings {
			if f.Severity == press.Caution {
				cautions = append(cautions, f.Code)
			}
		}
		assert.ElementsMatch(t, known[plan.Title.Number], cautions, plan.Title.Name)
		kinds[plan.Joint.Kind] = true
		if r.Probe.InUse && r.Sequence != nil {
			runs++
		}
	}
	assert.Len(t, kinds, 3)
	assert.Equal(t, 1, runs)
}
