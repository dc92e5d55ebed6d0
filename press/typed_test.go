package press

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/strict"
)

// TestTypedUnits: a figure may stand with the unit of its field, and with no
// other.
func TestTypedUnits(t *testing.T) {
	for _, c := range []struct {
		path, typed, want string // want is empty for a text that is no number
	}{
		{"station.nest", "120 mm", "120"},
		{"station.nest", " 120,5mm ", "120.5"},
		{"station.nest", "120\u202fmm", "120"},
		{"station.nest", "−3. mm", "-3"},
		{"station.nest", "1e2 mm", "100"},
		{"station.nest", "120 in", ""},
		{"station.nest", "120 m", ""},
		{"station.nest", "120 mm mm", ""},
		{"station.nest", "mm", ""},
		{"station.nest", "1 2 mm", ""},
		{"station.nest", "120 MM", ""},
		{"station.max_force", "2.9 kN", ""},
		{"station.max_force", "2900 N", "2900"},
		{"station.max_force", "2900 N/mm", ""},
		{"station.stiffness", "18000 N/mm", "18000"},
		{"motion.hold_time", "5 ms", ""},
		{"ram.max_accel", "2500 mm/s²", "2500"},
		{"ram.force_tolerance", "15%", "15"},
		{"joint.hole[0]", "18 µm", "18"},
		{"joint.hole[0]", "18 μm", "18"}, // the Greek letter
		{"joint.hub.expansion", "2.3e-5 1/K", "0.000023"},
		{"joint.hub.expansion", "2.3e-51/K", ""},
		{"joint.friction_low", "0.1 mm", ""}, // a plain number
	} {
		f, ok := FieldAt(c.path)
		require.True(t, ok, c.path)
		got, read := typedNumber(f.Bare(c.typed))
		assert.Equal(t, c.want != "", read, "%s %q", c.path, c.typed)
		if read {
			assert.Equal(t, c.want, got, "%s %q", c.path, c.typed)
		}
	}
}

// TestTypedAsPeopleDo makes the same plan of a draft with units and blanks, digest
// for digest, and refuses another unit with the one that is meant. A file is read
// to the letter.
func TestTypedAsPeopleDo(t *testing.T) {
	d := exampleDraft(t)
	plan, faults := d.Check()
	require.Empty(t, faults)
	d.Set("station.nest", "140 mm")
	d.Set("ram.curve.points[1][0]", "20 %")
	d.Set("joint.fit", " H7 / "+plan.Joint.Fit[3:]+" ")
	same, faults := d.Check()
	require.Empty(t, faults)
	assert.Equal(t, plan.Digest(), same.Digest())

	d.Set("station.nest", "5.5 in")
	_, faults = d.Check()
	assert.Equal(t, []string{`found "5.5 in"; a number in mm is needed`}, faults.At("station.nest"))

	d.Set("station.nest", "140")
	d.Set("joint.fit", "H7 - s6")
	_, faults = d.Check()
	assert.Len(t, faults.At("joint.fit"), 1)

	file, err := os.ReadFile("../static/examples/example-plan.json")
	require.NoError(t, err)
	for path, change := range map[string][2]string{"station.nest": {`"nest": 140`, `"nest": "140 mm"`}, "joint.fit": {`"H7/u6"`, `"H7 / u6"`}} {
		require.Contains(t, string(file), change[0])
		_, faults := Decode([]byte(strings.Replace(string(file), change[0], change[1], 1)))
		assert.Len(t, faults.At(path), 1, path)
	}
}

// TestDoubtfulFigures holds which figures are doubtful, and what is said of them to what
// the plan itself takes them for. Common practice, no source: three digits behind a comma
// are how thousands are parted elsewhere.
func TestDoubtfulFigures(t *testing.T) {
	field, _ := FieldAt("station.nest")
	for text, want := range map[string]string{
		"1,200": "1.2", " 140,125 ": "140.125", "12,000": "12", "-1,250": "-1.25", "−1,250": "-1.25", "+2,500": "2.5", "1234,500": "1234.5", "1,200 mm": "1.2",
		"1.200": "", "0,125": "", "1,20": "", "1,2000": "", "1,200,000": "", "1,200.5": "", "1200": "", "": "", "1,2oo": "", "1,200 in": "",
	} {
		x, doubtful := field.Doubtful(text)
		assert.Equal(t, want != "", doubtful, text)
		if want == "" {
			continue
		}
		assert.Equal(t, want, strict.PlainNumber(x), text)
		d := exampleDraft(t)
		d.Set("station.nest", text)
		plan, faults := d.Check()
		require.Empty(t, faults, text)
		assert.Equal(t, plan.Station.Nest, x, text)
	}
	name, _ := FieldAt("title.name")
	_, doubtful := name.Doubtful("1,200")
	assert.False(t, doubtful, "a text is no figure")
}
