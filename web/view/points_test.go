package view

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

func TestReadingSaid(t *testing.T) {
	four := [][2]float64{{20, 200}, {10, 95}, {40, 455}, {30, 300}}
	for want, r := range map[string]Reading{
		"Read 1 point: setting 10\u202f%, force 95.5\u202fN.":                                                           {Points: [][2]float64{{10, 95.5}}},
		"Read 4 points: settings 10 to 40\u202f%, forces 95 to 455\u202fN.":                                             {Points: four},
		"Read 4 points by the heading “Force;Setting”, force first: settings 10 to 40\u202f%, forces 95 to 455\u202fN.": {Points: four, Heading: "Force;Setting", ForceFirst: true},
		"Read 4 points, turned round because the list fell: settings 10 to 40\u202f%, forces 95 to 455\u202fN.":         {Points: four, Turned: true},
	} {
		assert.Equal(t, want, r.Said())
	}
}

// TestReadingDoubts holds which figures are asked about, and what is offered.
// Bounds are ours: a setting over 100 % is possible, one over 100 % beside forces
// that are no larger is more likely a force.
func TestReadingDoubts(t *testing.T) {
	for _, c := range []struct {
		name   string
		points [][2]float64
		text   string
		do     string
	}{
		{"sound", [][2]float64{{10, 95}, {100, 2620}}, "", ""},
		{"over the rating", [][2]float64{{10, 95}, {250, 4000}}, "", ""},
		{"weak", [][2]float64{{10, 2}, {100, 30}}, "", ""},
		{"swapped", [][2]float64{{120, 10}, {505, 100}}, "Settings from 120 to 505\u202f%, and forces from 10 to 100\u202fN: are the columns swapped?", DoSwap},
		{"fractions", [][2]float64{{0.2, 120}, {1, 505}}, "Settings from 0.2 to 1\u202f%: are these fractions of the rated current?", DoHundred},
		{"one fraction", [][2]float64{{0.5, 120}}, "Setting 0.5\u202f%: are these fractions of the rated current?", DoHundred},
		{"percents from 1", [][2]float64{{1, 12}, {2, 505}}, "", ""},
		{"in disorder", [][2]float64{{10, 95}, {30, 300}, {20, 200}}, "The settings do not rise from row to row.", DoSort},
	} {
		got := Reading{Points: c.points}.Doubts()
		if c.do == "" {
			assert.Empty(t, got, c.name)
			continue
		}
		require.Len(t, got, 1, c.name)
		assert.Equal(t, c.text, got[0].Text, c.name)
		assert.Equal(t, c.do, got[0].Do, c.name)
	}
}

// curveOf gives the texts of the curve's rows.
func curveOf(t Typed) (out [][2]string) {
	for i := range rowsIn(t.Draft.Entries, curveRows) {
		var row [2]string
		for k := range row {
			row[k], _ = t.Draft.Get(rowPath(rowPath(curveRows, i), k))
		}
		out = append(out, row)
	}
	return out
}

func TestMendCurve(t *testing.T) {
	typed := WithCurve(Take([]press.Entry{{Path: "title.name", Text: "0.5"}}, nil), [][2]float64{{0.55, 120}, {0.07, 20}, {1, 505}})
	typed.Draft.Set("ram.curve.points[2][0]", "1 %")
	typed, _ = Move(typed, "add", curveRows, 0)
	for do, want := range map[string][][2]string{
		DoSwap:    {{"120", "0.55"}, {"20", "0.07"}, {"505", "1 %"}, {}},
		DoHundred: {{"55", "120"}, {"7", "20"}, {"100", "505"}, {}},
		DoSort:    {{"0.07", "20"}, {"0.55", "120"}, {"1 %", "505"}, {}},
	} {
		before := curveOf(typed)
		got, said, ok := MendCurve(typed, do)
		require.True(t, ok)
		assert.Contains(t, said, "Undo")
		assert.Equal(t, want, curveOf(got), do)
		name, _ := got.Draft.Get("title.name")
		assert.Equal(t, "0.5", name, "nothing else is touched")
		assert.Equal(t, before, curveOf(typed), "nor is what it was made from")
	}
	odd := WithCurve(Typed{}, [][2]float64{{0.2, 1}})
	odd.Draft.Set("ram.curve.points[0][0]", "half")
	got, _, _ := MendCurve(odd, DoHundred)
	assert.Equal(t, [][2]string{{"half", "1"}}, curveOf(got), "what is no number stays as typed")
	_, _, ok := MendCurve(typed, "sort parts")
	assert.False(t, ok)
}
