package press

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

// Every value in this file: common practice, no source.

func codes(r *Result) map[string]Severity {
	out := map[string]Severity{}
	for _, f := range r.Findings {
		out[f.Code] = f.Severity
	}
	return out
}

// The push end is the approach end and the push stroke.
func TestPushEndIsApproachEndAndStroke(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := Evaluate(randomPlan(t)).Travel
		if r.PushEnd != nil {
			assert.InDelta(t, r.ApproachEnd+*r.PushStroke, *r.PushEnd, 1e-9)
		}
	})
}

// A slow push of about 20 mm/s is usual, and no blocker by itself.
func TestUsualSlowPush(t *testing.T) {
	r := Evaluate(with(t, example(t), "motion.slow_speed", "20"))
	assert.False(t, r.Blocked())
	assert.InDelta(t, (r.Travel.SeatReading-r.Travel.ApproachEnd)/20, r.Cycle.Press, 1e-12)
}

// Controllers accept a zone as narrow as the repeatability and as wide as the
// stroke; neither is advisable, and the plan says so.
func TestZonesThatAreAcceptedButNotAdvisable(t *testing.T) {
	narrow := codes(Evaluate(with(t, example(t), "window.zone_start", "115.13", "window.zone_end", "115.15")))
	assert.Equal(t, Caution, narrow[OverlapNarrow])
	wide := codes(Evaluate(with(t, example(t), "window.zone_start", "0", "window.zone_end", "150")))
	assert.Contains(t, wide, OverlapWider)
	assert.Contains(t, wide, AmbiguousTable)
}

// Both signals mean good; arrival alone too tall, zone alone too short or nothing there.
func TestOneSignalAlone(t *testing.T) {
	table := Evaluate(example(t)).Verdict.Table
	assert.Equal(t, []string{Good}, table.OnOn)
	assert.Equal(t, []string{Long}, table.OnOff)
	assert.Equal(t, []string{Short, Missing}, table.OffOn)
	assert.Empty(t, table.OffOff)
}
