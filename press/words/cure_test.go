package words

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// found gives a finding of a plan with its sentence.
func found(t *testing.T, code string, c changes) press.Finding {
	t.Helper()
	r := press.Evaluate(example(t, c))
	Explain(r)
	for _, f := range r.Findings {
		if f.Code == code {
			return f
		}
	}
	require.Failf(t, "no finding", "%s: %v", code, c)
	return press.Finding{}
}

// TestNoCureThatDoesNothing: the guard factor is offered only where it moves the edge
// that matters, "most of it" is said of more than half, and what is said of the parts
// leads to the very row.
func TestNoCureThatDoesNothing(t *testing.T) {
	// With zone start and push end by hand the guard factor moves nothing.
	hand := changes{"window.zone_start": "115.1", "window.push_stroke": "7.7", "targets.false_reject_ppm": "100"}
	f := found(t, press.FalseReject, hand)
	assert.NotEqual(t, "window.guard_factor", f.Path)
	assert.NotContains(t, f.Message, "lower the guard factor")
	assert.Contains(t, f.Message, "the guard factor does not move it")
	for _, factor := range []string{"0.5", "2"} { // and so it is: by the plan's own figures
		r, other := press.Evaluate(example(t, hand)), press.Evaluate(example(t, with(hand, changes{"window.guard_factor": factor})))
		assert.Equal(t, *r.Risk.ProducerPPM, *other.Risk.ProducerPPM)
	}
	f = found(t, press.FalseReject, changes{"window.guard_factor": "2"})
	assert.Equal(t, "window.guard_factor", f.Path)
	assert.Contains(t, f.Message, "lower the guard factor")

	// A guard factor of 0 cannot be lowered.
	f = found(t, press.FalseReject, changes{"window.guard_factor": "0", "requirement.height_low": "24.96", "requirement.height_high": "25.04", "targets.false_reject_ppm": "0"})
	assert.NotContains(t, f.Message, "guard factor")
	assert.Contains(t, f.Message, "make the reading surer")

	// Over half, and the largest share of less.
	f = found(t, press.NoAcceptance, changes{"station.reference_uncertainty": "0.2"})
	assert.Contains(t, f.Message, "(most of it comes from: reference uncertainty)")
	f = found(t, press.NoAcceptance, changes{"requirement.height_low": "24.98", "requirement.height_high": "25.02", "station.reference_uncertainty": "0.012"})
	assert.Contains(t, f.Message, "(the largest share of it comes from: repeatability)")

	// Nothing is held, so nothing can be held for less time.
	f = found(t, press.HeatingOver, changes{"motion.handling_time": "0", "motion.hold_time": "0", "ram.setting_continuous": "5"})
	assert.Equal(t, "motion.handling_time", f.Path)
	assert.NotContains(t, f.Message, "hold for less time")

	// The rows: the one that makes the travel negative, and the one that spreads most.
	f = found(t, press.TravelNegative, changes{"parts[1].contact": "-2"})
	assert.Equal(t, "parts[1]", f.Path)
	f = found(t, press.ConformingShareLow, changes{"parts[0].minus": "0.2", "parts[0].plus": "0.2"})
	assert.Equal(t, "parts[0]", f.Path)
	assert.Contains(t, f.Message, "row \u201chub shoulder above nest\u201d first")
	f = found(t, press.ConformingShareLow, changes{"parts[0].nominal": "22.1"})
	assert.Equal(t, "requirement.height_low", f.Path)
	assert.Contains(t, f.Message, "to the middle of the requirement")
}

// TestARowIsCalledByItsName: a row of the parts is named as its user named it; one without
// a name, or with one too long for a sentence, by its number.
func TestARowIsCalledByItsName(t *testing.T) {
	datum := changes{"parts[1].insert": "false", "parts[1].datum": "true", "parts[1].minus": "0.02", "parts[1].plus": "0.02", "requirement.height_low": "21.95", "requirement.height_high": "22.05"}
	f := found(t, press.OverlapNarrow, datum)
	assert.Equal(t, "parts[1]", f.Path)
	assert.Contains(t, f.Message, "comes from: datum row \u201csleeve flange\u201d)")
	for _, name := range []string{"", " ", "a flange with a name that nobody would put into a sentence"} {
		f = found(t, press.OverlapNarrow, with(datum, changes{"parts[1].name": name}))
		assert.Contains(t, f.Message, "comes from: datum row 2 of the parts)")
	}
	f = found(t, press.TravelMayVanish, changes{"parts[2].minus": "7"})
	assert.Contains(t, f.Message, "row \u201csleeve standing out before pressing\u201d first")
}
