package static_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/static"
)

// TestExamples wants examples that an engineer would issue: sound, without
// blockers and cautions, and one of each kind of joint.
func TestExamples(t *testing.T) {
	kinds := map[string]bool{}
	for _, data := range static.Examples() {
		plan, faults := press.Decode(data)
		require.Empty(t, faults)
		r := press.Evaluate(plan)
		assert.Zero(t, r.Count(press.Blocker), plan.Title.Name)
		assert.Zero(t, r.Count(press.Caution), plan.Title.Name)
		kinds[plan.Joint.Kind] = true
	}
	assert.Len(t, kinds, 3)
}
