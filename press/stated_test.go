package press

import (
	"bytes"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/strict"
)

// TestStatedIsTheWholeTable: every field of the table that a kind of joint has is
// stated, at whatever path, and no other one; what was given has the value of the
// document, and nothing else is said to be given.
func TestStatedIsTheWholeTable(t *testing.T) {
	files, err := filepath.Glob("../testdata/plans/derived/[0-9][0-9].json")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	for _, file := range append(files, "../static/examples/pivot-bush.json") {
		data, err := os.ReadFile(file)
		require.NoError(t, err)
		p, faults := Decode(data)
		require.Empty(t, faults)
		seen, given := map[string]bool{}, map[string]bool{}
		for _, e := range Evaluate(p).Stated() {
			seen[e.Field.Path] = true
			if f, ok := FieldAt(e.Path); assert.True(t, ok, e.Path) {
				assert.Same(t, f, e.Field)
			}
			if e.From == FromPlan {
				given[e.Path] = true
				assert.NotNil(t, e.Value, e.Path)
			}
			assert.Equal(t, p.Given(e.Path) && e.Field.Kind != Rows, e.From == FromPlan, e.Path)
			if e.From != FromProposal { // of which some may not exist
				assert.Equal(t, e.From == FromNothing, e.Value == nil, "%s of %s", e.Path, file)
			}
		}
		for _, e := range p.Draft().Entries {
			if f, _ := FieldAt(e.Path); f != nil && f.Kind != Rows {
				assert.True(t, given[e.Path], "%s of %s", e.Path, file)
			}
		}
		for _, f := range Fields {
			has := f.For == nil || slices.Contains(f.For, p.Joint.Kind)
			if f.Kind == Rows || rowsOf(f.Path) != "" && !seen[f.Path] {
				continue // a list without rows
			}
			for _, section := range []string{"probe", "sequence", "sequence.hold"} {
				has = has && !(strict.Below(f.Path, section) && !p.Given(section)) // which may be absent as a whole
			}
			assert.Equal(t, has, seen[f.Path], "%s of %s", f.Path, file)
		}
	}
}

// rowsOf is the list that a path of the table lies in; empty for none.
func rowsOf(path string) string {
	if i := regexp.MustCompile(`\[\]`).FindStringIndex(path); i != nil {
		return path[:i[0]]
	}
	return ""
}

// TestStatedStandIns: what stands in has its figure. Derived by hand from the example:
// the sleeve stands out 6.4 mm and is engaged on 5.5; two scans of slow travel are
// 0.16 mm, more than four repeatabilities; the curve begins at 10 %; H7 begins at the
// nominal diameter (ISO 286).
func TestStatedStandIns(t *testing.T) {
	data, err := os.ReadFile("../static/examples/example-plan.json")
	require.NoError(t, err)
	for _, given := range []string{`"setting_min": 10,`, `"inertia_mass": 38,`} {
		require.Contains(t, string(data), given)
		data = bytes.Replace(data, []byte(given), nil, 1)
	}
	p, faults := Decode(data)
	require.Empty(t, faults)
	at := map[string]Stated{}
	for _, e := range Evaluate(p).Stated() {
		at[e.Path] = e
	}
	for path, want := range map[string]struct {
		from  Origin
		value any
	}{
		"ram.setting_min": {FromOthers, 10.0}, "ram.inertia_mass": {FromOthers, 2.4}, "joint.hole[0]": {FromOthers, 0.0}, "joint.pilot": {FromOthers, 0.9},
		"window.edge_margin": {FromOthers, 0.16}, "window.setting": {FromProposal, 66.0}, "joint.hub.expansion": {FromNothing, nil},
		"station.position_step": {FromDefault, 0.01}, "parts[0].insert": {FromDefault, false}, "parts[1].insert": {FromPlan, true},
		"joint.fit": {FromPlan, "H7/u6"}, "title.notes": {FromDefault, ""}, "faults.other": {FromNothing, nil}, "parts[2].nominal": {FromPlan, 6.4},
	} {
		assert.Equal(t, want.from, at[path].From, path)
		assert.Equal(t, want.value, at[path].Value, path)
	}
}
