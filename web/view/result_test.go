package view

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

func evaluated(t *testing.T, data []byte) (*press.Plan, *press.Result) {
	t.Helper()
	p, faults := press.Decode(data)
	require.Empty(t, faults)
	return p, press.Evaluate(p)
}

func example(t *testing.T, edits ...string) []byte {
	t.Helper()
	data, err := os.ReadFile("../../static/examples/example-plan.json")
	require.NoError(t, err)
	return []byte(strings.NewReplacer(edits...).Replace(string(data)))
}

func shown(t *testing.T, data []byte) *page.Result {
	t.Helper()
	p, r := evaluated(t, data)
	b := Bench{Typed: Take(p.Draft().Entries, nil), Plan: p, Result: r}
	return b.Page(page.Assets{}).Result
}

// TestSetpoints compares the large figures with the result that they come from
// (derived: the same figures as eval prints for the example plan).
func TestSetpoints(t *testing.T) {
	r := shown(t, example(t))
	var got []string
	for _, f := range r.Setpoints {
		got = append(got, f.Label+" "+f.Value+" "+f.Unit+", "+f.Note)
		if f.Label != "Expected reading" {
			assert.NotEmpty(t, f.Link, f.Label)
		}
	}
	assert.Equal(t, []string{
		"Setting 66 %, proposed", "Approach end 107.46 mm, proposed", "Push stroke 7.73 mm, proposed", "Push end 115.19 mm, proposed",
		"Zone start 115.08 mm, proposed", "Zone end 115.35 mm, proposed", "Expected reading 115.14 mm, nominal part, seated",
	}, got)
	assert.Contains(t, r.Copy, "Zone start\t115.08\tmm\n")
	assert.Contains(t, r.Copy, "Bearing sleeve into anemometer hub\tWS-210\tDraft, nothing issued\n")
}

// TestSetpointsInOwnWords: what the controller calls a setpoint stands under it,
// and beside it where it is copied. Derived by hand: 66 % times 10.
func TestSetpointsInOwnWords(t *testing.T) {
	r := shown(t, example(t, `"window": {}`, `"window": {}, "controller": {"words": [{"setpoint": "setting", "name": "Push limit", "unit": "1/10 %", "factor": 10}]}`))
	assert.Equal(t, "Push limit: 660 (1/10 %)", r.Setpoints[0].Own)
	assert.Empty(t, r.Setpoints[1].Own)
	assert.Contains(t, r.Copy, "Setting\t66\t%\tPush limit\t660\t1/10 %\n")
}

func TestSetpointsByHand(t *testing.T) {
	r := shown(t, example(t, `"window": {}`, `"window": {"zone_start": 115.1}`))
	assert.Equal(t, "by hand", r.Setpoints[4].Note)
	assert.Equal(t, "115.10", r.Setpoints[4].Value)
	assert.Equal(t, "proposed", r.Setpoints[5].Note)
}

// TestNoWindow shows a plan whose guard bands leave nothing: what does not exist
// is a dash, never a zero.
func TestNoWindow(t *testing.T) {
	r := shown(t, example(t, `"height_low": 24.91`, `"height_low": 25.05`))
	for _, f := range r.Setpoints[2:6] {
		assert.Equal(t, none, f.Value, f.Label)
		assert.Equal(t, "not known", f.Note)
	}
	assert.Empty(t, r.Table)
	require.NotEmpty(t, r.Findings)
	assert.Equal(t, "blocker", r.Findings[0].Severity)
}

// TestFindingsHavePlaces evaluates every plan of testdata: each finding has a
// sentence and leads to a place on the page.
func TestFindingsHavePlaces(t *testing.T) {
	files, err := filepath.Glob("../../testdata/plans/derived/*.json")
	require.NoError(t, err)
	tried := 0
	for _, name := range files {
		if strings.HasSuffix(name, ".result.json") {
			continue
		}
		data, err := os.ReadFile(name)
		require.NoError(t, err)
		for _, f := range shown(t, data).Findings {
			tried++
			assert.NotEmpty(t, f.Text, name)
			assert.NotEmpty(t, f.Link, "%s: %s", name, f.Text)
			assert.NotEmpty(t, f.Where)
		}
	}
	assert.Greater(t, tried, 5)
}

// TestCatalogue wants one row a fault, its words and its name in plain language.
func TestCatalogue(t *testing.T) {
	p, r := evaluated(t, example(t))
	rows := shown(t, example(t)).Faults
	require.Len(t, rows, len(r.Faults))
	for i, row := range rows {
		assert.NotEqual(t, r.Faults[i].Name, row.Name)
		assert.NotEmpty(t, row.Means)
		assert.NotEmpty(t, row.Verdict)
		var said []string
		for _, w := range row.Verdict {
			said = append(said, w.Text)
		}
		assert.Equal(t, words.SayVerdict(p, r.Faults[i]), strings.Join(said, " or "))
	}
}

// TestOneDrawingOfTheCycle: where the steps of the ram are drawn, the plain cycle is not,
// and its figures stay.
func TestOneDrawingOfTheCycle(t *testing.T) {
	steps, err := os.ReadFile("../../static/examples/pivot-bush.json")
	require.NoError(t, err)
	for want, data := range map[string][]byte{"": steps, "drawn": example(t)} {
		p, r := evaluated(t, data)
		w := writer{p, r, places{}, words.PositionsOf(p)}
		for _, g := range w.groups(Drawings{Cycle: "drawn", Run: "drawn"}) {
			switch g.ID {
			case "cycle":
				assert.Equal(t, want, g.Drawing)
				assert.NotEmpty(t, g.Rows)
			case "run":
				assert.Equal(t, "drawn", g.Drawing)
			}
		}
	}
}
