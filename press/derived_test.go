package press_test

import (
	"encoding/json"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// Derived values: the results beside these plans were computed by a second
// implementation, written from the same description of the model by other hands
// in another language. Sentences and paths of findings are not part of them.
func TestDerivedResults(t *testing.T) {
	derived(t, "derived", compare)
}

// The same for plans with a probe, a sequence or both. Both sides integrate in their own
// way, so the shares agree to 2e-8 and what follows from them to 1e-6.
func TestDerivedRuns(t *testing.T) {
	derived(t, "derived-run", func(t *testing.T, path string, want, got any) {
		t.Helper()
		compareTo(t, path, want, got, ofRun)
	})
}

// derived holds every plan of a folder to the result that is kept beside it.
func derived(t *testing.T, folder string, compare func(t *testing.T, path string, want, got any)) {
	t.Helper()
	files, err := filepath.Glob("../testdata/plans/" + folder + "/*.result.json")
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(files), 60)
	for _, file := range files {
		t.Run(filepath.Base(file), func(t *testing.T) {
			plan := strings.TrimSuffix(file, ".result.json") + ".json"
			if strings.HasSuffix(file, "/example.result.json") {
				plan = "../static/examples/example-plan.json"
			}
			data, err := os.ReadFile(plan)
			require.NoError(t, err)
			p, problems := press.Decode(data)
			require.Empty(t, problems)
			text, err := press.Evaluate(p).JSON(false)
			require.NoError(t, err)

			wanted, err := os.ReadFile(file)
			require.NoError(t, err)
			var got, want any
			require.NoError(t, json.Unmarshal(text, &got))
			require.NoError(t, json.Unmarshal(wanted, &want))
			compare(t, "", want, got)
		})
	}
}

// ofRun is by how much two figures of a run may differ.
func ofRun(path string, want float64) float64 {
	switch {
	case strings.HasSuffix(path, "_ppm"):
		return 2e-2
	case strings.HasSuffix(path, "detection"), strings.Contains(path, "refused"):
		return 2e-8
	case strings.HasSuffix(path, ".effective"), strings.HasSuffix(path, "passed_above"):
		return 3e-6
	}
	return 1e-6 * math.Max(1, math.Abs(want))
}

// compare wants the same keys, words and nulls, probabilities to 0.001 ppm, and
// every other figure to 1e-9.
func compare(t *testing.T, path string, want, got any) {
	t.Helper()
	compareTo(t, path, want, got, func(path string, want float64) float64 {
		if strings.HasSuffix(path, "_ppm") {
			return 1e-3
		}
		return 1e-9 * math.Max(1, math.Abs(want))
	})
}

func compareTo(t *testing.T, path string, want, got any, tolerance func(path string, want float64) float64) {
	t.Helper()
	switch w := want.(type) {
	case map[string]any:
		g, ok := got.(map[string]any)
		if !assert.True(t, ok, "%s: want an object, got %v", path, got) {
			return
		}
		for key, v := range w {
			member, ok := g[key]
			if assert.True(t, ok, "%s.%s is not there", path, key) {
				compareTo(t, path+"."+key, v, member, tolerance)
			}
		}
	case []any:
		g, ok := got.([]any)
		if !assert.True(t, ok && len(g) == len(w), "%s: want %v, got %v", path, want, got) {
			return
		}
		for i, v := range w {
			compareTo(t, fmt.Sprintf("%s[%d]", path, i), v, g[i], tolerance)
		}
	case float64:
		g, ok := got.(float64)
		assert.True(t, ok && math.Abs(g-w) <= tolerance(path, w), "%s: want %v, got %v", path, w, got)
	default:
		assert.Equal(t, want, got, path)
	}
}
