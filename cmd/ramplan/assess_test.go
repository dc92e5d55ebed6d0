package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/proving"
)

const (
	exampleStudies = "../../static/examples/studies/"
	brokenStudies  = "../../testdata/studies/broken/"
)

// assessed runs assess with the example plan and gives what it printed.
func assessed(t *testing.T, stdin string, args ...string) (status int, a map[string]any) {
	t.Helper()
	status, out, errs := command(t, stdin, append([]string{"assess"}, args...)...)
	require.Empty(t, errs)
	require.NoError(t, json.Unmarshal([]byte(out), &a))
	return status, a
}

// The three studies of the example station pass, and every finding has a sentence. The
// figures behind are those of press/proving; the digests were computed by another program.
func TestAssessExample(t *testing.T) {
	status, a := assessed(t, "", "-on", "2026-11-28", examplePlan, exampleStudies+"load-cell.csv", exampleStudies+"stiffness.csv", exampleStudies+"trial-parts.csv")
	assert.Equal(t, statusGood, status)
	assert.Equal(t, "ramplan.assessment/1", a["format"])
	assert.Equal(t, "2026-11-28", a["on"])
	studies := a["studies"].([]any)
	require.Len(t, studies, 3)
	for i, start := range []string{"sha256:56b3b07ad5d6", "sha256:5c201802dbc4", "sha256:711cd8aad66f"} {
		s := studies[i].(map[string]any)
		assert.True(t, strings.HasPrefix(s["study_digest"].(string), start))
		assert.Equal(t, "pass", s["verdict"])
		assert.NotEmpty(t, s["adopt"])
		for _, f := range s["findings"].([]any) {
			assert.NotEmpty(t, f.(map[string]any)["message"])
		}
	}
	assert.Equal(t, "not_proved", a["proved"].(map[string]any)["state"], "master and samples are missing")
}

// JSON is read where the name does not end in .csv, also from standard input; an event has
// no verdict and does not keep the others from passing; what is open ends with 1.
func TestAssessStatuses(t *testing.T) {
	data, err := os.ReadFile(exampleStudies + "load-cell.csv")
	require.NoError(t, err)
	s, lines := proving.ReadCSV(data)
	require.True(t, lines.Sound())
	dir := t.TempDir()
	shouting, event := filepath.Join(dir, "FORCES.CSV"), filepath.Join(dir, "event.json")
	require.NoError(t, os.WriteFile(shouting, data, 0o600))
	require.NoError(t, os.WriteFile(event, []byte(`{"format":"ramplan.study/1","kind":"event","taken_at":"2026-11-25","event":"crash"}`), 0o600))

	status, a := assessed(t, string(s.JSON()), "-on", "2026-11-28", examplePlan, "-", shouting, event)
	assert.Equal(t, statusGood, status)
	studies := a["studies"].([]any)
	require.Len(t, studies, 3)
	assert.Equal(t, studies[0], studies[1])
	assert.Nil(t, studies[2].(map[string]any)["verdict"])

	s.Rows = s.Rows[:7] // one push at a setting is too little
	status, a = assessed(t, string(s.JSON()), examplePlan, "-")
	assert.Equal(t, statusNotPassed, status)
	assert.Equal(t, "open", a["studies"].([]any)[0].(map[string]any)["verdict"])
}

// Every fault of every file is told and nothing is printed.
func TestAssessRefuses(t *testing.T) {
	status, out, errs := command(t, "", "assess", "../../testdata/plans/bad/many-at-once.json", exampleStudies+"stiffness.csv",
		brokenStudies+"two-faults-in-a-line.csv", brokenStudies+"required-cells.json", "nowhere.csv")
	assert.Equal(t, statusRefused, status)
	assert.Empty(t, out)
	assert.Equal(t, 5+2+4+1, strings.Count(errs, "\n"), errs)
	assert.Contains(t, errs, "ramplan: two-faults-in-a-line.csv:5: setting: found \"ten\"")
	assert.Contains(t, errs, "required-cells.json: rows[0].arrival: not given")
	assert.Contains(t, errs, "nowhere.csv: no such file")

	status, out, errs = command(t, "", "assess", examplePlan, examplePlan)
	assert.Equal(t, statusRefused, status)
	assert.Empty(t, out)
	assert.Contains(t, errs, "a plan; a study is needed")
}
