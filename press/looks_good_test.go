package press

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// found gives the findings of a code.
func found(p *Plan, code string) []Finding {
	var out []Finding
	for _, f := range Evaluate(p).Findings {
		if f.Code == code {
			out = append(out, f)
		}
	}
	return out
}

// A fault that rests outside the drawing and gives both signals is a blocker that
// leads to the edge by hand which lets it in. By hand: the example reads 115.137
// nominally and is good from 115.047 to 115.227; a chip of 0.1 mm reads 115.037.
func TestFaultLooksGood(t *testing.T) {
	assert.Empty(t, found(example(t), FaultLooksGood))
	for name, c := range map[string]struct {
		entries []string
		path    string
	}{
		"zone start":   {[]string{"window.zone_start", "115.03"}, "window.zone_start"},
		"approach end": {[]string{"window.zone_start", "110", "window.approach_end", "115.03"}, "window.approach_end"},
		"push stroke":  {[]string{"window.push_stroke", "7.9", "faults.nest_wear", "0.12"}, "window.push_stroke"},
		"zone end":     {[]string{"window.push_stroke", "8.3", "window.zone_end", "115.3", "faults.nest_wear", "0.12"}, "window.zone_end"},
	} {
		fs := found(with(t, example(t), c.entries...), FaultLooksGood)
		require.NotEmpty(t, fs, name)
		assert.Equal(t, c.path, fs[0].Path, name)
		assert.Equal(t, Blocker, fs[0].Severity, name)
	}
}

// A named presence check settles the table: a missing insert that gives both
// signals contradicts nothing then.
func TestPresenceCheckSettlesTheTable(t *testing.T) {
	looksGood := []string{"parts[1].insert", "false"}
	bare := Evaluate(with(t, example(t), looksGood...))
	require.Contains(t, bare.Verdict.Table.OnOn, Missing)
	assert.True(t, bare.Verdict.Ambiguous)
	assert.True(t, bare.Verdict.Table.Contradicts(true, true))
	named := Evaluate(with(t, example(t), append(looksGood, "station.presence_check", "light barrier")...))
	require.Contains(t, named.Verdict.Table.OnOn, Missing)
	assert.False(t, named.Verdict.Ambiguous)
	assert.False(t, named.Verdict.Table.Contradicts(true, true))
}

// A station that refuses more than a quarter of all parts although they are good is
// blocked, also where it takes the nominal part.
func TestMoreThanAQuarterRefused(t *testing.T) {
	p := with(t, example(t), "window.zone_start", "115.13", "window.push_stroke", "7.69")
	r := Evaluate(p)
	require.NotNil(t, r.Risk.ProducerPPM)
	require.Greater(t, *r.Risk.ProducerPPM, 250000.0)
	require.Less(t, r.Window.Overlap[0], r.Nominal())
	require.Greater(t, r.Window.Overlap[1], r.Nominal())
	fs := found(p, NominalRejected)
	require.Len(t, fs, 1)
	assert.InDelta(t, *r.Risk.ProducerPPM, *fs[0].Figures.(NominalFigures).PPM, 1e-9)
}

// The two shares are about seated parts: where the nominal part stalls they are null.
func TestNoSharesOfHeightsWhereTheNominalPartStalls(t *testing.T) {
	r := Evaluate(with(t, example(t), "window.setting", "30", "window.zone_start", "110"))
	assert.Nil(t, r.Risk.ConsumerPPM)
	assert.Nil(t, r.Risk.ProducerPPM)
}
