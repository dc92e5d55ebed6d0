package words

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// TestMasterIsSpecified: what every other page presses has its height, its boxes and a
// step in which it is proved at the production setting. Derived by hand: the nominal sleeve
// is 25.00 mm high and the station sets its positions to 0.01 mm.
func TestMasterIsSpecified(t *testing.T) {
	p := decoded(t)
	samples := paperOf(t, "samples", p)
	found := map[string][]string{}
	for _, row := range samples.Rows {
		found[row[0]] = row
	}
	for _, name := range []string{"Master", "Loose sample"} {
		require.Contains(t, found, name)
		assert.Equal(t, "24.990 to 25.010\u202fmm", found[name][1])
		assert.Equal(t, "arrival on, zone on", found[name][5])
	}
	assert.Contains(t, strings.Join(samples.Notes, "\n"), "Write its number, its measured height")
	proving := paperOf(t, "proving", p)
	at := stepOf(proving, "Press the master, 24.990 to 25.010\u202fmm, three times at the production setting 66\u202f%")
	require.Positive(t, at)
	assert.Less(t, stepOf(proving, "“too short”"), at)
	assert.Less(t, at, stepOf(proving, "Enter full speed"))
	assert.Contains(t, proving.Rows[at][2], "reads 115.11 to 115.16\u202fmm each time; arrival on, zone on")
}

// TestSampleBandsSayHowFine: by hand from the bands that the page prints, the narrowest of
// them 25.003 to 25.014 mm.
func TestSampleBandsSayHowFine(t *testing.T) {
	notes := plain(strings.Join(paperOf(t, "samples", decoded(t)).Notes, "\n"))
	assert.Contains(t, notes, "the narrowest band is 0.011 mm wide, so the measurement may be uncertain by ± 0.005 mm at most")
	assert.Contains(t, notes, "The good samples stand well inside the drawing")
}

// TestOneListOfChanges: which change takes what back stands on one page, and the others
// point to it.
func TestOneListOfChanges(t *testing.T) {
	p := decoded(t)
	list := paperOf(t, "reproving", p)
	var after []string
	for _, row := range list.Rows {
		after = append(after, row[0])
	}
	assert.Contains(t, after, "New lot of parts")
	assert.Contains(t, after, "Setpoints changed, or a new revision issued")
	for _, name := range []string{"samples", "reactions"} {
		assert.Contains(t, allOf(paperOf(t, name, p)), "“"+list.Title+"”", name)
	}
	control := allOf(paperOf(t, "control", p))
	assert.Equal(t, strings.Count(control, "after a change"), strings.Count(control, "after a change as on its own page"))
}

// TestGoodRowsExcludeEachOther: a good part is never passed on by one row of the reaction
// plan and kept back by another that holds at the same time.
func TestGoodRowsExcludeEachOther(t *testing.T) {
	table := paperOf(t, "reactions", decoded(t))
	passed := 0
	for _, row := range table.Rows {
		switch when, part := row[2], row[3]; {
		case row[0] != "arrival on, zone on":
		case strings.Contains(strings.ToLower(part), "keep"):
			assert.Contains(t, when, "until its checks have passed")
		default:
			passed++
			assert.Contains(t, when, "Normal running")
		}
	}
	assert.Equal(t, 2, passed)
}

// TestDeniedLimits: what is not over a figure is bounded above by it, on every page of
// every kept plan.
func TestDeniedLimits(t *testing.T) {
	for text, want := range map[string][2]string{ // by hand: lower, upper
		"peak not over 2900\u202fN": {"", "2900"}, "no more than 8\u202fmm/s": {"", "8"}, "not more than 8\u202fmm/s": {"", "8"}, "at most 8\u202fN": {"", "8"},
		"not under 5\u202fmm": {"5", ""}, "no less than 5\u202fmm": {"5", ""}, "at least 5\u202fmm": {"5", ""}, "over 5\u202fmm": {"5", ""}, "under 5\u202fmm": {"", "5"},
	} {
		f := figuresIn(text)
		assert.Equal(t, want, [2]string{f.lower, f.upper}, text)
	}
	met := 0
	for _, p := range keptPlans(t) {
		r := press.Evaluate(p)
		for _, name := range PaperNames() {
			table, _ := Paper(name, p, r)
			rows := rowsOf(t, RowsFile(table.Parts()[:1], IdentityOf(p, r, "", ""), Separations[0]))
			for i, head := range rows[0] {
				base, is := strings.CutSuffix(head, ", lower")
				if !is {
					continue
				}
				for _, row := range rows[1:] {
					text := row[i-2]
					if limit := strings.Contains(text, "not over") && !strings.Contains(text, " to "); limit {
						met++
						assert.Empty(t, row[i], "%s of %s: %s", base, name, text)
					}
					if row[i] != "" && strings.Contains(text, "not over "+row[i]) {
						assert.Fail(t, "an upper limit stands as a lower one", "%s of %s: %s", base, name, text)
					}
				}
			}
		}
	}
	assert.NotZero(t, met)
}

// TestRareDetectionIsAFigure: one in so many is a share that a program can read.
func TestRareDetectionIsAFigure(t *testing.T) {
	k := rowColumn{kind: figureColumn}
	assert.Equal(t, []string{"0.0083", "%", "1 in 12000"}, k.cells("1 in 12\u202f000", "1 in 12\u202f000", Separations[0]), "by hand: 100 % / 12000")
	assert.Equal(t, []string{"0.67", "%", "1 in 150"}, k.cells("1 in 150", "1 in 150", Separations[0]))
	rows := rowsOf(t, RowsFile([]Table{paperOf(t, "failures", decoded(t))}, issuedA, Separations[0]))
	assert.Contains(t, rows[0], "Severity")
	assert.Contains(t, rows[0], "Occurrence")
}

// TestHalfFoundIsSaid: a failure that the signals miss now and then is not told as one that
// the station reports.
func TestHalfFoundIsSaid(t *testing.T) {
	p := decoded(t)
	r := press.Evaluate(p)
	gap := row(r, press.RowGap)
	for _, x := range paperOf(t, "failures", p).Rows {
		if x[0] == Fault(*gap).Word && gap.Detection < p.Faults.SampleProbability {
			assert.NotContains(t, x[6], "The station reports: ")
		}
	}
}
