package words

import (
	"bytes"
	"encoding/csv"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// rowsOf reads a file of rows whose cells stand between commas.
func rowsOf(t *testing.T, file []byte) [][]string {
	t.Helper()
	rows, err := csv.NewReader(bytes.NewReader(bytes.TrimPrefix(file, []byte("\uFEFF")))).ReadAll()
	require.NoError(t, err)
	return rows
}

var issuedA = Identity{Number: "WS-210", Name: "Sleeve", Revision: "A", Date: "2026-11-28", Digest: "sha256:0123456789abcdef"}

// TestRowsFile: by hand. The plan stands first in every row, a figure and its unit
// stand apart, boxes are left out, and no cell is a formula, whatever ends a cell.
func TestRowsFile(t *testing.T) {
	table := Table{
		Title:   "Rows",
		Columns: []Column{{"Name", 1, false}, {"Box", 1, true}, {"Reading", 1, false}, {"Limits", 1, false}, {"=Head", 1, false}},
		Figures: []string{"Reading"}, Ranges: []string{"Limits"},
		Rows: [][]string{
			{"=1+1", "", "115.080\u202fmm", "24.91 to 25.09\u202fmm", "−5"},
			{"a;@x", "", none, "at least 1\u202f020\u202fN, at most 2\u202f900\u202fN", "1\u202f234.5"},
			{"y", "", "<\u202f0.01\u202fppm", "25.101\u202fmm or taller", "-y"},
			{"z", "", "not looked at", "Judged as written", none},
		},
	}
	const head = "Table,Plan number,Plan,Revision,Date,Plan digest,Not ready for use,Name,Reading,\"Reading, unit\",\"Reading, note\"," +
		"Limits,\"Limits, value\",\"Limits, lower\",\"Limits, upper\",\"Limits, unit\",'=Head\r\n"
	const plan = "Rows,WS-210,Sleeve,A,2026-11-28,sha256:0123456789ab,,"
	assert.Equal(t, head+
		plan+"'=1+1,115.080,mm,,24.91 to 25.09 mm,,24.91,25.09,mm,-5\r\n"+
		plan+"a;'@x,,,,\"at least 1020 N, at most 2900 N\",,1020,2900,N,1234.5\r\n"+
		plan+"y,0.01,ppm,<,25.101 mm or taller,,25.101,,mm,'-y\r\n"+
		plan+"z,,,not looked at,Judged as written,,,,,\r\n",
		string(RowsFile([]Table{table}, issuedA, Separations[0])), "nothing but ASCII: no mark")
	semicolon, known := SeparationOf("semicolon")
	require.True(t, known)
	file := string(RowsFile([]Table{table}, issuedA, semicolon))
	assert.Contains(t, file, "Rows;WS-210;Sleeve;A;2026-11-28;sha256:0123456789ab;;'=1+1;115,080;mm;;24,91 to 25,09 mm;;24,91;25,09;mm;-5\r\n")
	assert.Contains(t, file, ";\"a;'@x\";")
	assert.Contains(t, file, ";1234,5\r\n")
	_, known = SeparationOf("tab")
	assert.False(t, known)

	table.Rows[0][0] = "Ø 12"
	draft := issuedA
	draft.Revision, draft.NotReady = "", "no setting"
	file = string(RowsFile([]Table{table, {Title: "None", Columns: table.Columns, Lacking: "No window."}}, draft, Separations[0]))
	assert.True(t, strings.HasPrefix(file, "\uFEFFTable,"), "more than ASCII: the mark")
	assert.Contains(t, file, "\r\nRows,WS-210,Sleeve,DRAFT,2026-11-28,sha256:0123456789ab,no setting,Ø 12,")
	assert.Contains(t, file, "\r\n\r\nTable,Plan number,")
	assert.Contains(t, file, "\r\nNone,WS-210,Sleeve,DRAFT,2026-11-28,sha256:0123456789ab,no setting,No window.,")
}

// TestFiguresStandApart: by hand. In the file with decimal commas no figure of a text
// keeps its point, what was typed stays as it was typed, and bounds and shares stand in
// columns of their own: also several in one cell, and those that a sentence says.
func TestFiguresStandApart(t *testing.T) {
	semicolon, _ := SeparationOf("semicolon")
	table := Table{
		Title:   "Rows",
		Columns: []Column{{"What", 1, false}, {"Must be", 1, false}, {"Value", 1, false}},
		Ranges:  []string{"Must be"}, Bare: []string{"Value"},
		Filed: []FiledColumn{{Head: "Target", Cells: []string{"at most 0.5\u202fppm", none}}},
		Rows: [][]string{
			{"Reads 115.14 to 115.21\u202fmm, 180, 8.5, 200\u202fmm/s, ±\u202f0.5\u202fmm; version 2.1", "stroke to 150.25\u202fmm; by hand; at most 8.5\u202fmm/s", "<\u202f0.01"},
			{"y", "139.98 to 140.04\u202fmm, typically 140.01\u202fmm", "2.5"},
		},
	}
	file := string(RowsFile([]Table{table}, issuedA, semicolon))
	const plan = "Rows;WS-210;Sleeve;A;2026-11-28;sha256:0123456789ab;;"
	const what = "\"Reads 115,14 to 115,21 mm, 180, 8,5, 200 mm/s, ± 0,5 mm; version 2.1\";"
	assert.Contains(t, file, plan+what+"stroke to 150,25 mm;150,25;;;mm;0,01;<;at most 0,5 ppm;;;0,5;ppm\r\n")
	assert.Contains(t, file, plan+what+"at most 8,5 mm/s;;;8,5;mm/s;0,01;<;at most 0,5 ppm;;;0,5;ppm\r\n")
	assert.Contains(t, file, plan+"y;139,98 to 140,04 mm, typically 140,01 mm;140,01;139,98;140,04;mm;2,5;;;;;;\r\n")

	p := decoded(t)
	r := press.Evaluate(p)
	for name, want := range map[string]string{ // derived: the example's result, beside what its paper says
		"faults":  ";;;lamps 41,7 %, master check 97,4 %;41,7;%;;97,4;%;\r\n",
		"basis":   ";at most 50 ppm;;;50;ppm\r\n",
		"control": ";;115,08;115,19;mm;",
	} {
		file := RowsFile([]Table{paperOf(t, name, p)}, IdentityOf(p, r, "", ""), semicolon)
		assert.Contains(t, string(file), want, name)
		assert.NotRegexp(t, `\d\.\d+ (mm|%|s|ppm|N)\b`, string(file), name)
	}
}

// TestFiguresIn: by hand.
func TestFiguresIn(t *testing.T) {
	for cell, want := range map[string]figured{
		"66\u202f%":                {value: "66", unit: "%", alone: true},
		"115.08":                   {value: "115.08", alone: true},
		"−12\u202f345\u202fN":      {value: "-12345", unit: "N", alone: true},
		"−0.5 to 0.5\u202fmm":      {lower: "-0.5", upper: "0.5", unit: "mm", alone: true},
		">\u202f99.9999\u202f%":    {lower: "99.9999", unit: "%", rest: ">", alone: true},
		"about 115.14\u202fmm":     {value: "115.14", unit: "mm", rest: "about", alone: true},
		"25.09\u202fmm, no taller": {upper: "25.09", unit: "mm", rest: ", no taller", alone: true},
		"holds 800\u202fN":         {value: "800", unit: "N", rest: "holds"},
		"at rest 900\u202fN to 950\u202fN, typically 920\u202fN": {value: "920", lower: "900", upper: "950", unit: "N", rest: "at rest"},
		"900\u202fN to 2\u202fkN":                                {rest: "900\u202fN to 2\u202fkN"},
		"3 pushes at 66\u202f%":                                  {rest: "3 pushes at 66\u202f%"},
		"stroke to 125\u202fmm; 66\u202f%":                       {rest: "stroke to 125\u202fmm; 66\u202f%"},
		"on / off":                                               {rest: "on / off"},
		"":                                                       {rest: ""},
	} {
		assert.Equal(t, want, figuresIn(cell), "%q", cell)
	}
}

// keptPlans are the derived plans and the example.
func keptPlans(t *testing.T) []*press.Plan {
	t.Helper()
	files, err := filepath.Glob("../../testdata/plans/derived/[0-9][0-9].json")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	var out []*press.Plan
	for _, file := range append(files, "../../static/examples/example-plan.json") {
		data, err := os.ReadFile(file)
		require.NoError(t, err)
		p, faults := press.Decode(data)
		require.Empty(t, faults)
		out = append(out, p)
	}
	return out
}

// TestRowsOfEveryPlan: in the rows of every page of every plan no figure has its unit
// in its own cell where its column is one of figures, no narrow blank is left, and
// each column whose cells are figures was declared as such, so that its place does
// not depend on the plan.
func TestRowsOfEveryPlan(t *testing.T) {
	files, err := filepath.Glob("../../testdata/plans/derived/[0-9][0-9].json")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	plain := regexp.MustCompile(`^-?\d+(\.\d+)?$`)
	figures := 0
	for _, file := range append(files, "../../static/examples/example-plan.json") {
		data, err := os.ReadFile(file)
		require.NoError(t, err)
		p, faults := press.Decode(data)
		require.Empty(t, faults)
		r := press.Evaluate(p)
		for _, name := range PaperNames() {
			whole, _ := Paper(name, p, r)
			for _, table := range whole.Parts() {
				for _, head := range slices.Concat(table.Figures, table.Ranges, table.Typed, table.Bare) {
					assert.Contains(t, heads(table), head, name)
				}
				for i, c := range table.Columns {
					declared := slices.Contains(slices.Concat(table.Figures, table.Ranges, table.Bare), c.Head)
					assert.True(t, declared || table.kindOf(i) <= typedColumn, "column %q of %s in %s holds figures; say so in Figures or Ranges", c.Head, name, file)
				}
				id := IdentityOf(p, r, "", "2026-11-28")
				text := RowsFile([]Table{table}, id, Separations[0])
				assert.NotContains(t, string(text), "\u202f")
				assert.NotContains(t, string(text), "−")
				rows := rowsOf(t, text)
				for _, row := range rows[1:] {
					assert.Equal(t, DraftMark, row[3])
					assert.Equal(t, "sha256:"+ShortDigest(p.Digest()), row[5])
					assert.Equal(t, r.Blocked(), row[6] != "")
					for i, head := range rows[0] {
						if base, unit := strings.CutSuffix(head, ", unit"); unit && row[i] != "" && slices.Contains(table.Figures, base) {
							figures++
							assert.Regexp(t, plain, row[i-1], "%s of %s", head, name)
						}
					}
				}
			}
		}
	}
	assert.Greater(t, figures, 100)
}

func heads(t Table) []string {
	var out []string
	for _, c := range t.Columns {
		out = append(out, c.Head)
	}
	return out
}
