package press

import (
	"encoding/json"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A part that is lower before it is pressed than after cannot be pressed in:
// everything that rests on a seated part is null, and nothing is found about it.
func TestNothingCanBePressedIn(t *testing.T) {
	p := with(t, example(t), "parts[2].contact", "-1", "window.zone_start", "115.08")
	r := Evaluate(p)
	require.False(t, r.Pressable())
	text, err := r.JSON(false)
	require.NoError(t, err)
	var got map[string]any
	require.NoError(t, json.Unmarshal(text, &got))
	for _, key := range []string{"travel", "window", "verdict", "risk", "faults", "samples"} {
		value, there := got[key]
		assert.True(t, there, key)
		assert.Nil(t, value, key)
	}
	for _, key := range []string{"stack", "joint", "force", "cycle", "impact", "heating", "probe"} {
		assert.NotNil(t, got[key], key)
	}
	assert.Equal(t, ResultFormat, got["format"])
	for _, f := range r.Findings {
		assert.NotContains(t, []string{NoAcceptance, NeverGood, NominalRejected, EarlyContactBlocked, EarlyContactWorstCase, ConformingShareLow, FalseAccept, FalseReject, DeflectionUntaught}, f.Code)
	}
	assert.Len(t, found(p, TravelNegative), 1)
}
