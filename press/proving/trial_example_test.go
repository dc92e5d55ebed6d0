package proving_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/proving"
)

// exampleParts are the readings and heights of forty parts, invented for the example, all
// with both lamps on.
var exampleParts = [][2]float64{
	{115.144, 25}, {115.153, 24.984}, {115.156, 24.996}, {115.146, 25.006}, {115.18, 24.979},
	{115.159, 24.992}, {115.146, 25.003}, {115.149, 25.005}, {115.153, 24.996}, {115.144, 25.008},
	{115.122, 25.019}, {115.161, 24.995}, {115.148, 25.013}, {115.157, 24.984}, {115.161, 24.99},
	{115.176, 24.984}, {115.144, 25.009}, {115.15, 24.993}, {115.162, 24.985}, {115.153, 24.995},
	{115.154, 24.993}, {115.159, 24.995}, {115.162, 24.994}, {115.135, 25.014}, {115.158, 25},
	{115.123, 25.02}, {115.166, 24.985}, {115.143, 25.007}, {115.153, 24.998}, {115.171, 24.988},
	{115.153, 24.997}, {115.151, 25.008}, {115.159, 24.997}, {115.147, 25.007}, {115.14, 25.002},
	{115.14, 25.007}, {115.16, 24.989}, {115.155, 24.998}, {115.142, 25.017}, {115.129, 25.014},
}

func exampleTrial() *proving.Study {
	s := &proving.Study{Format: proving.Format, Kind: proving.Trial, TakenAt: "2026-11-24", PlanDigest: "sha256:b74624aea0e6", HeightUncertainty: of(0.004)}
	for _, p := range exampleParts {
		s.Rows = append(s.Rows, part(p[0], p[1], true, true))
	}
	return s
}

// The figures of the example: the design's, computed by a second implementation, to all
// printed digits.
func TestExampleTrial(t *testing.T) {
	j := one(t, station(t, nil), exampleTrial())
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
