package proving_test

import (
	"encoding/json"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/proving"
)

// Every code has a severity of its own and stands once.
func TestCodes(t *testing.T) {
	seen := map[string]bool{}
	for _, c := range proving.Codes {
		assert.False(t, seen[c.Code], c.Code)
		seen[c.Code] = true
		assert.Contains(t, []press.Severity{press.Caution, press.Note}, c.Severity)
		assert.NotEmpty(t, c.Path)
	}
}

// Cautions come first, and everywhere it is told that a study is of another ram or plan.
func TestOrderOfFindings(t *testing.T) {
	s := exampleStudy(t, "trial-parts")
	s.Ram, s.PlanDigest = "another ram", "sha256:0123456789ab"
	s.Rows[4].Zone = of(false)
	j := one(t, station(t, nil), s)
	assert.Equal(t, []string{proving.OtherRam, proving.LampsDiffer, proving.CapabilityFew, proving.NestCorrection, proving.OtherPlan}, found(j))
	s = onMaster(100.1)
	s.Ram = "Ram under test"
	assert.NotContains(t, found(one(t, station(t, nil), s)), proving.OtherRam)
}

// The assessment as a document: what cannot be computed is null, lists are lists, nothing is
// no number; an event judges nothing.
func TestAssessmentJSON(t *testing.T) {
	plan := station(t, nil)
	studies := []*proving.Study{
		exampleStudy(t, "trial-parts"), sampled(onSamples()), onMaster(100.137), onMaster(100.137, 100.137), starts(100.1), onTrial(read(115.19, false, true)),
		{Format: proving.Format, Kind: proving.Event, TakenAt: "2026-11-20", Event: proving.Crash},
	}
	a := proving.Assess(plan, studies, "2026-11-28")
	data := a.JSON()
	assert.Equal(t, data, proving.Assess(plan, studies, "2026-11-28").JSON())
	var doc map[string]any
	require.NoError(t, json.Unmarshal(data, &doc))
	assert.Equal(t, "ramplan.assessment/1", doc["format"])
	assert.Equal(t, plan.PlanDigest(), doc["plan_digest"])
	assert.Equal(t, "2026-11-28", doc["on"])
	list := doc["studies"].([]any)
	require.Len(t, list, len(studies))
	event := list[6].(map[string]any)
	for _, key := range []string{"verdict", "result", "adopt"} {
		value, has := event[key]
		assert.True(t, has, key)
		assert.Nil(t, value, key)
	}
	for i, raw := range list {
		s := raw.(map[string]any)
		for _, key := range []string{"checks", "findings"} {
			assert.IsType(t, []any{}, s[key], "%d %s", i, key)
		}
	}
	single := list[2].(map[string]any)["result"].(map[string]any)
	for _, key := range []string{"sd", "sd_limits", "trend", "serial"} {
		value, has := single[key]
		assert.True(t, has, key)
		assert.Nil(t, value, key)
	}
	assert.Equal(t, []any{}, single["outliers"])
	assert.Nil(t, list[2].(map[string]any)["adopt"])
	proved := doc["proved"].(map[string]any)
	assert.Equal(t, "not_proved", proved["state"])
	assert.Nil(t, proved["until"])
	assert.Equal(t, map[string]any{"state": "missing", "study": nil}, proved["kinds"].(map[string]any)["load_cell"])
	assert.Equal(t, map[string]any{"station.nest": 140.01}, list[0].(map[string]any)["adopt"])
	for _, word := range []string{"NaN", "Inf"} {
		assert.NotContains(t, string(data), word)
	}
	assert.NotContains(t, strings.ReplaceAll(string(data), `"message"`, ""), "-0,")
}

// A figure that is none is null also where nobody thought of it.
func TestNoNumberIsNull(t *testing.T) {
	a := &proving.Assessment{Studies: []proving.Judged{{Result: &proving.MasterResult{Mean: math.NaN(), Predicted: math.Inf(1)}}}}
	var doc map[string]any
	require.NoError(t, json.Unmarshal(a.JSON(), &doc))
	r := doc["studies"].([]any)[0].(map[string]any)["result"].(map[string]any)
	assert.Nil(t, r["mean"])
	assert.Nil(t, r["predicted"])
}

// A day that is none is a programmer's mistake.
func TestAssessAsksForADay(t *testing.T) {
	assert.Panics(t, func() { proving.Assess(station(t, nil), nil, "today") })
	assert.NotPanics(t, func() { proving.Assess(station(t, nil), nil, "2026-11-28") })
}
