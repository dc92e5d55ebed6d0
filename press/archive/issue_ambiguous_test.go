package archive

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/static"
)

// A plan whose lamps mean two things is a caution and no blocker, and is issued only
// with a reason and a second name all the same.
func TestAmbiguousLampsAskForAReason(t *testing.T) {
	p, faults := press.Decode(static.Example())
	require.Empty(t, faults)
	d := p.Draft()
	d.Set("window.zone_start", "115.02")
	d.Set("faults.chip", "0.15")
	p, faults = d.Check()
	require.Empty(t, faults)
	require.False(t, press.Evaluate(p).Blocked())
	refused := issuable(p, Signed{Prepared: "A", Checked: "B", Approved: "C", Reason: "first"})
	require.NotEmpty(t, refused)
	assert.NotEmpty(t, refused.At(PathDespite))
	assert.Empty(t, issuable(p, Signed{Prepared: "A", Checked: "B", Approved: "C", Reason: "first", Despite: "trial parts only", Second: "D"}))
}
