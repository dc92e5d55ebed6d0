package words

import (
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

func paperOf(t *testing.T, name string, p *press.Plan) Table {
	t.Helper()
	table, ok := Paper(name, p, press.Evaluate(p))
	require.True(t, ok, name)
	return table
}

func decoded(t *testing.T, edits ...string) *press.Plan {
	t.Helper()
	data, err := os.ReadFile("../../static/examples/example-plan.json")
	require.NoError(t, err)
	s := string(data)
	for i := 0; i+1 < len(edits); i += 2 {
		require.Contains(t, s, edits[i])
		s = strings.Replace(s, edits[i], edits[i+1], 1)
	}
	p, faults := press.Decode([]byte(s))
	require.Empty(t, faults)
	return p
}

// TestPapersOfEveryPlan makes every page of every derived plan: each row fills its
// columns, boxes are empty, nothing is written that is no figure, and a table
// without rows says why.
func TestPapersOfEveryPlan(t *testing.T) {
	files, err := filepath.Glob("../../testdata/plans/derived/[0-9][0-9].json")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	for _, file := range append(files, "../../static/examples/example-plan.json") {
		data, err := os.ReadFile(file)
		require.NoError(t, err)
		p, faults := press.Decode(data)
		require.Empty(t, faults)
		for _, name := range PaperNames() {
			for _, table := range paperOf(t, name, p).Parts() {
				assert.NotEmpty(t, table.Title)
				assert.NotEmpty(t, table.Lead)
				assert.Equal(t, len(table.Rows) == 0, table.Lacking != "", "%s of %s", name, file)
				for _, row := range table.Rows {
					require.Len(t, row, len(table.Columns), "%s of %s", name, file)
					for i, c := range table.Columns {
						assert.NotContains(t, row[i], "NaN")
						assert.NotContains(t, row[i], "Inf")
						assert.Equal(t, c.Box, row[i] == "", "%s of %s, column %s", name, file, c.Head)
					}
				}
				rows := rowsOf(t, RowsFile([]Table{table}, Identity{}, Separations[0]))
				assert.GreaterOrEqual(t, len(rows), 1+max(1, len(table.Rows)))
				if len(table.Ranges) == 0 {
					assert.Len(t, rows, 1+max(1, len(table.Rows)))
				}
			}
		}
	}
	_, known := Paper("nothing", nil, nil)
	assert.False(t, known)
	assert.Empty(t, PaperTitle("nothing"))
}

// TestPapersSayThePlan wants the plan's own figures and words on its pages
// (derived: the example's result).
func TestPapersSayThePlan(t *testing.T) {
	p := decoded(t, `"window": {}`, `"window": {}, "quality": {"limit_check": "every four hours", "samples_each": 5, "reject_place": "locked box 3",
		"reactions": [{"lamps": "on-off", "check": "Look for a chip first."}, {"lamps": "on-off", "check": "Then ask the shift lead."}]},
		"controller": {"words": [{"setpoint": "zone_start", "name": "P1", "unit": "1/100 mm", "factor": 100}, {"setpoint": "setting", "name": "I max"}]}`)
	r := press.Evaluate(p)
	all := func(name string) string {
		table := paperOf(t, name, p)
		s := table.Lead + "\n" + strings.Join(table.Notes, "\n")
		for _, row := range table.Rows {
			s += "\n" + strings.Join(row, "|")
		}
		return s
	}
	assert.Contains(t, all("samples"), "every four hours")
	assert.Contains(t, all("samples"), "|5|")
	assert.Contains(t, all("setpoints"), "Zone start|115.08\u202fmm|P1|11508|1/100 mm|")
	assert.Contains(t, all("setpoints"), "Setting|66\u202f%|I max|66|%|")
	assert.Contains(t, all("setpoints"), "Push end|115.19\u202fmm|–|115.19|mm|")
	assert.Contains(t, all("reactions"), "1. Look for a chip first.\n2. Then ask the shift lead.")
	assert.Contains(t, all("reactions"), "locked box 3")
	assert.Contains(t, all("control"), "24.91 to 25.09\u202fmm")
	assert.Contains(t, all("control"), Force(r.Force.Need))
	assert.Contains(t, all("shift"), "A loose sample")
	assert.Contains(t, all("proving"), Force(r.Force.Typical))
	assert.NotContains(t, all("setpoints"), "no words of the controller")
	assert.NotContains(t, all("control"), "not known")

	plain := decoded(t)
	bare := paperOf(t, "setpoints", plain)
	assert.Contains(t, strings.Join(bare.Notes, ""), "no words of the controller yet")
	assert.Equal(t, []string{"Zone start", "115.08\u202fmm", "", ""}, bare.Rows[4], "without words of the controller a figure stands once")
	blocked := decoded(t, `"max_force": 2900`, `"max_force": 2000`)
	assert.Contains(t, paperOf(t, "setpoints", blocked).Lead, "Not ready to be typed in")
}

// TestPapersOfATouchingPart: where nothing is pressed in, no page speaks of a fit.
func TestPapersOfATouchingPart(t *testing.T) {
	data, err := os.ReadFile("../../static/examples/rain-gauge-lid.json")
	require.NoError(t, err)
	p, faults := press.Decode(data)
	require.Empty(t, faults)
	for _, name := range PaperNames() {
		table := paperOf(t, name, p)
		for _, row := range append(table.Rows, table.Notes) {
			assert.NotContains(t, strings.Join(row, "|"), "loose", name)
		}
	}
}

// TestMisfit says on which side a setting lies outside the force window (derived by
// hand: the example needs 2089 N, its parts bear 2900 N).
func TestMisfit(t *testing.T) {
	for window, want := range map[string]string{`{"setting": 20}`: "by hand, not enough", `{"setting": 70}`: "by hand"} {
		p := decoded(t, `"window": {}`, `"window": `+window)
		assert.Equal(t, want, Setpoints(p, press.Evaluate(p))[0].From, window)
	}
	p := decoded(t, `"window": {}`, `"window": {"setting": 66}`, `"max_force": 2900`, `"max_force": 2500`)
	assert.Equal(t, "by hand, too much", Setpoints(p, press.Evaluate(p))[0].From)
}

// TestDatum says from where heights are measured, in the plan's own words.
func TestDatum(t *testing.T) {
	assert.Equal(t, "seated height above the nest", SeatedHeight(decoded(t)))
	one := decoded(t, `"name": "hub shoulder above nest",`, `"name": "hub shoulder above nest", "datum": true,`, `"height_low": 24.91`, `"height_low": 2.91`, `"height_high": 25.09`, `"height_high": 3.09`)
	assert.Equal(t, "seated height above the datum face of “hub shoulder above nest”", SeatedHeight(one))
	assert.Contains(t, paperOf(t, "samples", one).Lead, "above the datum face of “hub shoulder above nest”, and no reading of the ram")
	two := decoded(t, `"name": "hub shoulder above nest",`, `"name": "hub shoulder above nest", "datum": true,`, `"name": "sleeve flange",`, `"name": "sleeve flange", "datum": true,`, `"height_low": 24.91`, `"height_low": -0.09`, `"height_high": 25.09`, `"height_high": 0.09`)
	assert.Equal(t, "seated height above the datum", SeatedHeight(two))
}

// TestRowsThatLieClose: readings and heights that lie 0.001 mm apart are written
// apart, on paper and in the CSV (derived: the example's rows just inside and just
// outside the window lie 0.001 mm from each other).
func TestRowsThatLieClose(t *testing.T) {
	p := decoded(t)
	r := press.Evaluate(p)
	table := paperOf(t, "faults", p)
	rows := rowsOf(t, RowsFile([]Table{table}, Identity{}, Separations[0]))
	reading := slices.Index(rows[0], "Reading")
	at, seen := map[string]string{}, 0
	for i, f := range r.Faults {
		if f.Reading == nil {
			assert.Empty(t, rows[i+1][reading])
			continue
		}
		assert.Equal(t, table.Rows[i][4], Unit(rows[i+1][reading], rows[i+1][reading+1]), "paper and CSV differ")
		at[f.Name] = table.Rows[i][4]
		for k, other := range r.Faults[:i] {
			if other.Reading != nil && math.Abs(*other.Reading-*f.Reading) > 0.00099 {
				seen++
				assert.NotEqual(t, table.Rows[k][4], table.Rows[i][4], "%s and %s look the same", other.Name, f.Name)
			}
		}
	}
	assert.NotZero(t, seen)
	assert.Equal(t, "115.080\u202fmm", at[press.RowTallest])
	assert.Equal(t, "115.079\u202fmm", at[press.RowLong])
	heights := map[string]bool{}
	for _, row := range paperOf(t, "samples", p).Rows {
		heights[row[1]] = true
		assert.Regexp(t, `^\d+\.\d{3} to \d+\.\d{3}\x{202f}mm$`, row[1])
	}
	assert.Len(t, heights, 5, "four limits and the master")
	assert.Equal(t, "1.2345", Positions{decimals: 4}.Fine().Bare(1.23451), "a finer station stays finer")
}

// TestSetpointsAreNotRounded: what was set finer than the step is typed in as it
// was set. Derived by hand from the figures that are put in.
func TestSetpointsAreNotRounded(t *testing.T) {
	p := example(t, changes{"window.zone_start": "115.0805", "window.approach_end": "107.5"})
	list := map[string]string{}
	for _, s := range Setpoints(p, press.Evaluate(p)) {
		list[s.Name] = s.Value
	}
	assert.Equal(t, "115.0805", list["zone_start"])
	assert.Equal(t, "107.50", list["approach_end"])
}

// TestProbeProvedAgain: a change of the probe, or of the fit that it feels, takes back
// what was proved of it; without a probe nothing is said of one.
func TestProbeProvedAgain(t *testing.T) {
	data, err := os.ReadFile("../../static/examples/pivot-bush.json")
	require.NoError(t, err)
	probed, problems := press.Decode(data)
	require.Empty(t, problems)
	of := func(p *press.Plan) string {
		var all []string
		for _, row := range paperOf(t, "reproving", p).Rows {
			all = append(all, row...)
		}
		return strings.Join(all, " | ")
	}
	assert.Contains(t, of(probed), "Probe setting, probe end or its confirm time changed")
	assert.NotContains(t, of(decoded(t)), "robe")
}
