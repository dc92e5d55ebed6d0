package static_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/static"
)

// TestExamples wants examples that an engineer would issue: sound, without
// blockers, one of each kind of joint, and without cautions but one: in the first
// example the nest was only touched, which is what a station begins with.
func TestExamples(t *testing.T) {
	kinds := map[string]bool{}
	for _, data := range static.Examples() {
		plan, faults := press.Decode(data)
		require.Empty(t, faults)
		r := press.Evaluate(plan)
		assert.Zero(t, r.Count(press.Blocker), plan.Title.Name)
		for _, f := range r.Findings {
			if f.Severity == press.Caution {
				assert.Equal(t, press.DeflectionUntaught, f.Code, plan.Title.Name)
				assert.Equal(t, press.Interference, plan.Joint.Kind, plan.Title.Name)
			}
		}
		kinds[plan.Joint.Kind] = true
	}
	assert.Len(t, kinds, 3)
}
