package proving_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/proving"
)

// The figures of the example: the design's, computed by a second implementation, to all
// printed digits.
func TestExampleTrial(t *testing.T) {
	j := one(t, station(t, nil), exampleStudy(t, "trial-parts"))
	r := j.Result.(*proving.TrialResult)
	close := func(want, got float64, digits float64) { t.Helper(); assert.InDelta(t, want, got, digits/2) }
	close(0.0136641, r.StationShift.Value, 1e-7)
	close(0.0044322, *r.StationShift.Uncertainty, 1e-7)
	close(0.417613, r.Normality.A2Adjusted, 1e-6)
	close(0.329578, r.Normality.P, 1e-6)
	close(2.808250, *r.Capability.Ppk, 1e-6)
	close(2.176534, r.Capability.PpkLimits[0], 1e-6)
	close(3.439967, r.Capability.PpkLimits[1], 1e-6)
	require.NotNil(t, r.Correction)
	assert.Equal(t, 1, r.Correction.Steps)
	assert.Equal(t, 140.01, r.Correction.Nest)
	close(0.985646, r.Correction.SharesNow.OnOn, 1e-6)
	close(0.997145, r.Correction.SharesAfter.OnOn, 1e-6)
	assert.Equal(t, proving.Pass, j.Verdict)
	assert.Equal(t, 140.01, *j.Adopt.Nest)
}
