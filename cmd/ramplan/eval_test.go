package main

import (
	"bytes"
	"context"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const examplePlan = "../../static/examples/example-plan.json"

// command runs the program in this process.
func command(t *testing.T, stdin string, args ...string) (status int, out, errs string) {
	t.Helper()
	var o, e bytes.Buffer
	status = run(context.Background(), args, strings.NewReader(stdin), &o, &e)
	return status, o.String(), e.String()
}

// lines decodes output of one object a line.
func lines(t *testing.T, out string) []map[string]any {
	t.Helper()
	var all []map[string]any
	for line := range strings.Lines(out) {
		var v map[string]any
		require.NoError(t, json.Unmarshal([]byte(line), &v), line)
		all = append(all, v)
	}
	return all
}

func blockedPlan(t *testing.T) string {
	t.Helper()
	data, err := os.ReadFile(examplePlan)
	require.NoError(t, err)
	name := filepath.Join(t.TempDir(), "blocked.json")
	require.NoError(t, os.WriteFile(name, bytes.Replace(data, []byte(`"max_force": 2900`), []byte(`"max_force": 900`), 1), 0o600))
	return name
}

func TestEvalExample(t *testing.T) {
	status, out, errs := command(t, "", "eval", examplePlan)
	assert.Equal(t, 0, status)
	assert.Empty(t, errs)
	var r map[string]any
	require.NoError(t, json.Unmarshal([]byte(out), &r))
	assert.Equal(t, "ramplan.result/1", r["format"])
	assert.NotContains(t, r, "file")
	for _, f := range r["findings"].([]any) {
		assert.NotEmpty(t, f.(map[string]any)["message"])
	}
}

func TestEvalStatuses(t *testing.T) {
	data, err := os.ReadFile(examplePlan)
	require.NoError(t, err)

	status, out, _ := command(t, "", "eval", blockedPlan(t))
	assert.Equal(t, 1, status)
	assert.Contains(t, out, "no-setting")

	status, out, errs := command(t, string(data), "eval", "-")
	assert.Equal(t, 0, status, errs)
	assert.Len(t, lines(t, out), 1)

	status, out, errs = command(t, "", "eval", examplePlan, "../../testdata/plans/bad/many-at-once.json", blockedPlan(t), "nowhere.json")
	assert.Equal(t, 2, status)
	results := lines(t, out)
	require.Len(t, results, 2, "the sound ones are still printed")
	assert.Equal(t, examplePlan, results[0]["file"])
	assert.Equal(t, 6, strings.Count(errs, "\n"), "five faults and one file that is not there, one a line:\n%s", errs)
	assert.Contains(t, errs, "nowhere.json: no such file")

	status, _, errs = command(t, "", "eval")
	assert.Equal(t, 2, status)
	assert.Contains(t, errs, "ramplan eval PLAN.json")
}

func TestEvalRefusesWhatIsTooLarge(t *testing.T) {
	status, out, errs := command(t, strings.Repeat(" ", 4<<20+1), "eval", "-")
	assert.Equal(t, 2, status)
	assert.Empty(t, out)
	assert.Contains(t, errs, "4 MiB")
}

func TestUnknownVerb(t *testing.T) {
	status, _, errs := command(t, "", "evaluate")
	assert.Equal(t, 2, status)
	assert.Contains(t, errs, "ramplan help")
}

func TestHelpNamesEveryVerb(t *testing.T) {
	status, out, _ := command(t, "", "help")
	assert.Equal(t, 0, status)
	for _, v := range verbs() {
		assert.Contains(t, out, v.usage)
	}
}

func TestDraw(t *testing.T) {
	starts := map[string]string{"svg": "<svg", "png": "\x89PNG", "pdf": "%PDF-"}
	for _, what := range []string{"strip", "force", "press", "cycle", "card", "run", "probe"} {
		for format, start := range starts {
			name := filepath.Join(t.TempDir(), what+"."+format)
			status, _, errs := command(t, "", "draw", "-what", what, "-o", name, examplePlan)
			require.Equal(t, 0, status, errs)
			data, err := os.ReadFile(name)
			require.NoError(t, err)
			assert.True(t, strings.HasPrefix(string(data), start), "%s begins with %.20q", name, data)
		}
	}
	status, out, _ := command(t, "", "draw", blockedPlan(t))
	assert.Equal(t, 0, status, "a blocked plan is drawn too")
	assert.True(t, strings.Contains(out, "no setting seats every part"))
	for _, args := range [][]string{{"draw"}, {"draw", "-what", "nothing", examplePlan}, {"draw", "-o", "x.gif", examplePlan}, {"draw", examplePlan, examplePlan}, {"draw", "-wat"}} {
		status, _, errs := command(t, "", args...)
		assert.Equal(t, 2, status)
		assert.NotEmpty(t, errs)
	}
}
