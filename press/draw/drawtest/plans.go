// Package drawtest is for tests of drawings: plans of every kind that they have to be clear
// for, golden pictures, and readers of what was written. It knows none of the rooms, so that
// all of them can use it.
package drawtest

import (
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/presstest"
)

// Changes are typed texts by the paths of their fields.
type Changes = map[string]string

// Example is the example plan with some typed texts changed. An empty text takes
// entries away.
func Example(t testing.TB, c Changes) *press.Plan {
	t.Helper()
	d := exampleDraft(t)
	paths := slices.Sorted(maps.Keys(c)) // the same plan each time, entry by entry
	for _, path := range paths {
		if c[path] == "" {
			d.Entries = slices.DeleteFunc(d.Entries, func(e press.Entry) bool { return strings.HasPrefix(e.Path, path) })
		}
	}
	for _, path := range paths {
		if strings.HasPrefix(path, "window.") {
			d.Entries = slices.DeleteFunc(d.Entries, func(e press.Entry) bool { return e.Path == "window" })
		}
		if text := c[path]; text != "" {
			d.Set(path, text)
		}
	}
	p, ps := d.Check()
	require.Empty(t, ps)
	return p
}

func exampleDraft(t testing.TB) *press.Draft {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(presstest.Folder(t), "../static/examples/example-plan.json"))
	require.NoError(t, err)
	p, ps := press.Decode(data)
	require.Empty(t, ps)
	return p.Draft()
}

// Kinds are plans of every kind that a drawing has to be clear for.
var Kinds = map[string]Changes{
	"example":        nil,
	"touch":          {"joint": "", "joint.kind": "touch", "parts[2].contact": "0"},
	"tight":          {"requirement.height_low": "24.97", "requirement.height_high": "25.03"},
	"roomy":          {"requirement.height_low": "23", "requirement.height_high": "27"},
	"nothing-left":   {"station.reference_uncertainty": "0.2"},
	"never-good":     {"window.zone_start": "115.3", "window.zone_end": "115.4"},
	"missing-good":   {"parts[1].insert": "false", "parts[2].insert": "true"},
	"end-past-zone":  {"window.push_stroke": "8.2", "window.zone_end": "115.25"},
	"end-in-zone":    {"window.push_stroke": "7.6", "window.zone_start": "115.02"},
	"end-before":     {"window.push_stroke": "7.5"},
	"zone-wide":      {"window.zone_start": "20", "window.zone_end": "140", "window.push_stroke": "7.8"},
	"beyond-stroke":  {"ram.stroke": "100"},
	"home-late":      {"station.home": "110"},
	"stalls":         {"window.setting": "12", "window.zone_start": "114"},
	"long-stroke":    {"ram.stroke": "2000", "station.nest": "1900"},
	"short-stroke":   {"ram.stroke": "12", "station.nest": "35"},
	"fine-step":      {"station.position_step": "0.0001"},
	"far-away":       {"station.nest": "1000000", "ram.stroke": "1000000"},
	"hand-set-early": {"window.approach_end": "115.12", "window.push_stroke": "0.05"},
	"only-start":     {"station.reference_uncertainty": "0.2", "window.zone_start": "115.1"},
	"long-names":     {"title.name": strings.Repeat("Bearing sleeve ", 12), "parts[0].name": strings.Repeat("x", 200)},
	"other-scripts":  {"title.name": "Гильза Ω 中文 <b>&amp;\"' 𝄞"},
}

// everyEighth derived plan is drawn by the usual tests: with RAMPLAN_PLANS=all, as
// .ci/plans has it, every one is.
const everyEighth = 8

// AllPlans tells whether every plan is drawn, however long that takes.
func AllPlans() bool { return os.Getenv("RAMPLAN_PLANS") == "all" }

// RandomOnes is how many random plans or results a test draws: a few, the first of all
// those that .ci/plans draws.
func RandomOnes(few, all int) int {
	if AllPlans() {
		return all
	}
	return few
}

// Plans are those of every kind, and the varied ones of testdata.
func Plans(t testing.TB) map[string]*press.Plan {
	t.Helper()
	out := map[string]*press.Plan{}
	for name, c := range Kinds {
		out[name] = Example(t, c)
	}
	files, err := filepath.Glob(filepath.Join(presstest.Folder(t), "plans/derived/*.json"))
	require.NoError(t, err)
	require.NotEmpty(t, files)
	files = slices.DeleteFunc(files, func(file string) bool { return strings.HasSuffix(file, ".result.json") })
	for i, file := range files {
		if i%everyEighth != 0 && !AllPlans() {
			continue
		}
		data, err := os.ReadFile(file)
		require.NoError(t, err)
		p, ps := press.Decode(data)
		require.Empty(t, ps, file)
		out[strings.TrimSuffix(filepath.Base(file), ".json")] = p
	}
	return out
}

// KindNames are the names of [Kinds], sorted.
func KindNames() []string {
	names := make([]string, 0, len(Kinds))
	for name := range Kinds {
		names = append(names, name)
	}
	slices.Sort(names)
	return names
}

// OfTheRun is the worked example of a probe and a sequence, with some typed texts
// changed.
func OfTheRun(t testing.TB, c Changes) (*press.Plan, *press.Result) {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(presstest.Folder(t), "../static/examples/pivot-bush.json"))
	require.NoError(t, err)
	p, ps := press.Decode(data)
	require.Empty(t, ps)
	d := p.Draft()
	for path, text := range c {
		d.Set(path, text)
	}
	p, ps = d.Check()
	require.Empty(t, ps)
	return p, press.Evaluate(p)
}
