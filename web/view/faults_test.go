package view

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

func faultsPage(t *testing.T, data []byte) (page.FaultsPage, *press.Result) {
	t.Helper()
	p, r := evaluated(t, data)
	return FaultsPage{Typed: Take(p.Draft().Entries, nil), Plan: p, Result: r}.Page(page.Assets{}), r
}

// TestFaultsPage wants every row of the result in its order (derived), its
// detection never rounded up to certainty, and a mark exactly where it is less
// sure than the plan wants its limit samples judged.
func TestFaultsPage(t *testing.T) {
	own := example(t, `"window": {}`, `"faults": {"other": [{"name": "burr", "height": 0.02}, {"name": "tilt", "height": 0.04}, {"name": "paint", "height": -0.03, "good": true}]}`)
	got, r := faultsPage(t, own)
	require.Len(t, got.Rows, len(r.Faults))
	marked := 0
	for i, row := range got.Rows {
		f := r.Faults[i]
		assert.Equal(t, words.Fault(f).Word, row.Name)
		assert.Equal(t, f.Detection >= 0.999 || f.Name == press.RowNestWorn, row.Mark == "", "%s: %v", row.Name, f.Detection)
		if f.Detection < 1 {
			assert.NotEqual(t, "100\u202f%", row.Detection, row.Name)
		}
		if row.Mark != "" {
			marked++
		}
	}
	require.Len(t, got.Doubtful, marked)
	assert.Contains(t, strings.ReplaceAll(got.Sure, "\u202f", " "), "rows are judged rightly less than 99.9 % of the time.")
	assert.Equal(t, "Bearing sleeve into anemometer hub", got.Name)
	assert.Equal(t, "WS-210", got.Number)
	assert.NotEmpty(t, got.Unseen)
	assert.Empty(t, got.Lacking)
	assert.Empty(t, got.Trouble)
	byName := map[string]page.FaultCard{}
	for _, row := range got.Rows {
		byName[row.Name] = row
	}
	assert.Equal(t, "hardly ever detected", byName["Loose fit"].Mark)
	assert.Equal(t, "refused now and then", byName["paint"].Mark)
	assert.Equal(t, "mostly not detected", byName["tilt"].Mark)
	assert.Equal(t, "not judged by these signals: the approach strikes it", byName["Two inserts"].Mark)
	assert.Equal(t, none, byName["Two inserts"].Arrival)
	assert.Equal(t, "A fault of your own.", byName["burr"].Means)
}

// TestLimitSamples wants each height rounded to the side on which what is said
// of it still holds (derived: the heights of the result).
func TestLimitSamples(t *testing.T) {
	got, r := faultsPage(t, example(t))
	s := r.Samples
	require.NotNil(t, s)
	require.Len(t, got.Samples.Rows, 4)
	p := &press.Plan{}
	p.Station.PositionStep = 0.01
	pos := say.Positions(p).Fine()
	// Derived: one uncertainty of a reading wide, rounded inward, the good ones not past
	// their middle.
	u, middle := 2*r.Window.Uncertainty, (*s.TallestGood+*s.ShortestGood)/2
	up := func(mm float64) float64 { return math.Ceil(mm*1000-1e-6) / 1000 }
	want := []struct {
		name, height string
		must         string
	}{
		{"Too tall", pos.Bare(up(s.Long)) + " to " + pos.Below(s.Long+u), "Refuse it: not both signals on."},
		{"Tallest good", pos.Bare(up(max(*s.TallestGood-u, middle))) + " to " + pos.Below(*s.TallestGood), "Accept it: both signals on."},
		{"Shortest good", pos.Bare(up(*s.ShortestGood)) + " to " + pos.Below(min(*s.ShortestGood+u, middle)), "Accept it: both signals on."},
		{"Too short", pos.Bare(up(s.Short-u)) + " to " + pos.Below(s.Short), "Refuse it: not both signals on."},
	}
	for i, w := range want {
		row := got.Samples.Rows[i]
		assert.Equal(t, []string{w.name, w.height, w.must, "99.9\u202f%"}, []string{row.Name, row.Height, row.Must, row.Probability})
	}
	assert.Len(t, got.Samples.Notes, 2, "they are bounded, and the tall one is locked")
	assert.Contains(t, strings.ReplaceAll(got.Samples.Asked, "\u202f", " "), "24.91 to 25.09 mm")
}

// TestNoSureSample asks for more than any height gives: no figure, and said so.
func TestNoSureSample(t *testing.T) {
	got, r := faultsPage(t, example(t, `"window": {}`, `"faults": {"sample_probability": 0.9999999}`))
	require.NotNil(t, r.Samples)
	require.Nil(t, r.Samples.TallestGood)
	row := got.Samples.Rows[1]
	assert.Equal(t, none, row.Height)
	assert.Equal(t, none, row.Probability)
	assert.NotEmpty(t, row.Must)
}

// TestFaultsLacking shows plans that have no verdict, or no overlap.
func TestFaultsLacking(t *testing.T) {
	got, r := faultsPage(t, example(t, `"height_low": 24.91`, `"height_low": 25.05`))
	require.Nil(t, r.Verdict)
	assert.Empty(t, got.Rows)
	assert.Empty(t, got.Samples.Rows)
	require.Len(t, got.Lacking, 2)
	assert.Contains(t, got.Lacking[0], "zone start, zone end and push end are not known")
	assert.Contains(t, got.Lacking[1], "Nothing is left to accept")
	assert.NotEmpty(t, got.Unseen)
	assert.NotEmpty(t, got.Cautions)

	got, r = faultsPage(t, example(t, `"window": {}`, `"window": {"zone_start": 115.3, "zone_end": 115.4}`))
	require.NotNil(t, r.Verdict)
	require.Nil(t, r.Samples)
	assert.NotEmpty(t, got.Rows)
	assert.Empty(t, got.Samples.Rows)
	require.Len(t, got.Lacking, 2)
	assert.Contains(t, got.Lacking[1], "No reading gives both signals")
}

// TestTrouble says why there is nothing to show, or only what was before.
func TestTrouble(t *testing.T) {
	d := press.Draft{Entries: []press.Entry{{Path: "title.name", Text: " half "}, {Path: "station.nest", Text: "14o"}}}
	_, faults := d.Check()
	alone := FaultsPage{Typed: Take(d.Entries, nil), Faults: faults}.Page(page.Assets{})
	assert.False(t, alone.Shown)
	assert.Equal(t, "half", alone.Name)
	assert.Contains(t, alone.Trouble, "There is no catalogue before they are one.")
	var nest string
	for _, f := range alone.Wrong {
		if f.Where == "Station: nest" {
			nest = f.Text
		}
	}
	assert.Contains(t, nest, `found "14o"`)

	p, r := evaluated(t, example(t))
	older := FaultsPage{Typed: Take(d.Entries, nil), Faults: faults, Plan: p, Result: r}.Page(page.Assets{})
	assert.True(t, older.Shown)
	assert.True(t, older.Older)
	assert.Equal(t, "Bearing sleeve into anemometer hub", older.Name)
	assert.Contains(t, older.Trouble, "This page shows the last state that was one.")
}
