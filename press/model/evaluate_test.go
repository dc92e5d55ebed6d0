package model

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// Without risk every figure that does not rest on it is the same. Derived: two ways
// through one model.
func TestWithoutRiskTheRestIsTheSame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := randomInput(t)
		all, part := Evaluate(in), EvaluateWithoutRisk(in)
		assert.Equal(t, all.Force, part.Force)
		assert.Equal(t, all.Joint, part.Joint)
		assert.Equal(t, all.Travel, part.Travel)
		assert.Equal(t, all.Window, part.Window)
		assert.Equal(t, all.Verdict, part.Verdict)
		assert.Equal(t, all.Cycle, part.Cycle)
		assert.Nil(t, part.Samples)
		assert.Zero(t, part.Risk)
		require.Len(t, part.Faults, len(all.Faults))
		for i, f := range part.Faults {
			assert.Equal(t, all.Faults[i].Verdict, f.Verdict)
			assert.Equal(t, all.Faults[i].Time, f.Time)
		}
		_, ok := part.ChancesAt(all.Travel.SeatReading)
		assert.False(t, ok, "no chances without risk")
	})
}
