package proving

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A table and the document that says the same have one digest. By hand.
func TestTableAndDocumentAreOne(t *testing.T) {
	const loadCell = "# kind: load_cell\n# taken_at: 2026-11-20\n"
	asLoadCell := func(rows string) string {
		return `{"format":"ramplan.study/1","kind":"load_cell","taken_at":"2026-11-20","rows":[` + rows + `]}`
	}
	const master = "# kind: master\n# taken_at: 2026-11-20\n# height: 40\n"
	asMaster := func(rows string) string {
		return `{"format":"ramplan.study/1","kind":"master","taken_at":"2026-11-20","height":40,"rows":[` + rows + `]}`
	}
	const trial = "# kind: trial\n# taken_at: 2026-11-24\n"
	asTrial := func(rows string) string {
		return `{"format":"ramplan.study/1","kind":"trial","taken_at":"2026-11-24","rows":[` + rows + `]}`
	}
	for name, c := range map[string]struct{ table, document string }{
		"commas":                     {loadCell + "setting,force\n10,191.8\n", asLoadCell(`{"setting":10,"force":191.8}`)},
		"semicolons and commas":      {loadCell + "setting;force\n10;191,8\n", asLoadCell(`{"setting":10,"force":191.8}`)},
		"tabs and commas":            {loadCell + "setting\tforce\tremark\n10\t191,8\ta, b; c\n", asLoadCell(`{"setting":10,"force":191.8,"remark":"a, b; c"}`)},
		"tab before semicolon":       {loadCell + "setting\tforce\tremark\n10\t191.8\t;\n", asLoadCell(`{"setting":10,"force":191.8,"remark":";"}`)},
		"one column":                 {master + "reading\n100,14\n", asMaster(`{"reading":100.14}`)},
		"separator within quotes":    {master + "\"reading\",remark\n100.14,\n", asMaster(`{"reading":100.14}`)},
		"names":                      {trial + "Position [mm], Arrival Signal,ZONE-SIGNAL,True height,LOAD,note\n1,on,off,2,3,x\n", asTrial(`{"reading":1,"arrival":true,"zone":false,"height":2,"force":3,"remark":"x"}`)},
		"other names":                {trial + "reading,arrival,zone,seated_height,Comment\n1,1,0,2,x\n", asTrial(`{"reading":1,"arrival":true,"zone":false,"height":2,"remark":"x"}`)},
		"setting as current":         {loadCell + "current (%),load (kN)\n10,0.1918\n", asLoadCell(`{"setting":10,"force":191.8}`)},
		"micrometres":                {master + "reading [µm],time[ms]\n100140,1500\n", asMaster(`{"reading":100.14,"time":1.5}`)},
		"Greek letter":               {master + "reading (μm)\n100140\n", asMaster(`{"reading":100.14}`)},
		"plain letters":              {master + "reading [um]\n100140\n", asMaster(`{"reading":100.14}`)},
		"inches and pounds":          {loadCell + "setting,force [lbf],speed [in/s]\n10,2,0.5\n", asLoadCell(`{"setting":10,"force":8.896443230521,"speed":12.7}`)}, // 2 · 4.4482216152605, 0.5 · 25.4
		"entries in inches":          {"# kind: master\n# Taken-At: 2026-11-20\n# Height [in]: 2\n# height uncertainty (µm): 2\nreading\n1\n", `{"format":"ramplan.study/1","kind":"master","taken_at":"2026-11-20","height":50.8,"height_uncertainty":0.002,"rows":[{"reading":1}]}`},
		"entry of a comma":           {"# kind: master\n# taken_at: 2026-11-20\n# height: 40,5\nreading;remark\n1,5;\n", `{"format":"ramplan.study/1","kind":"master","taken_at":"2026-11-20","height":40.5,"rows":[{"reading":1.5}]}`},
		"signs and exponents":        {master + "reading\n−1.5\n+2\n-3e-2\n4E+1\n5e−1\n.5\n5.\n-0\n", asMaster(`{"reading":-1.5},{"reading":2},{"reading":-0.03},{"reading":40},{"reading":0.5},{"reading":0.5},{"reading":5},{"reading":0}`)},
		"lamps":                      {trial + "reading,arrival,zone\n1,on,OFF\n2,1,0\n3,True,FALSE\n4,yes,No\n", asTrial(`{"reading":1,"arrival":true,"zone":false},{"reading":2,"arrival":true,"zone":false},{"reading":3,"arrival":true,"zone":false},{"reading":4,"arrival":true,"zone":false}`)},
		"conditions":                 {loadCell + "setting,force,condition\n1,2,COLD\n3,4,Warm\n5,6,\n", asLoadCell(`{"setting":1,"force":2,"condition":"cold"},{"setting":3,"force":4,"condition":"warm"},{"setting":5,"force":6}`)},
		"clock":                      {master + "reading,time\n1,14:05\n2,14:05:30\n3,0:00\n4,7.5\n", asMaster(`{"reading":1,"time":50700},{"reading":2,"time":50730},{"reading":3,"time":0},{"reading":4,"time":7.5}`)},
		"quotes":                     {master + "reading,remark\n\"1\",\"said \"\"now\"\", then\"\n2,12\" ruler\n3, \" blanks \" \n4,\"\"\n5,\"#6\"\n", asMaster(`{"reading":1,"remark":"said \"now\", then"},{"reading":2,"remark":"12\" ruler"},{"reading":3,"remark":" blanks "},{"reading":4},{"reading":5,"remark":"#6"}`)},
		"byte-order mark":            {"\ufeff" + master + "reading\n1\n", asMaster(`{"reading":1}`)},
		"CR LF":                      {strings.ReplaceAll(master+"reading\n1\n2\n", "\n", "\r\n"), asMaster(`{"reading":1},{"reading":2}`)},
		"CR":                         {strings.ReplaceAll(master+"reading\n1\n2", "\n", "\r"), asMaster(`{"reading":1},{"reading":2}`)},
		"blank lines, remarks":       {"\n# \n # a remark\n" + master + "\n  \nreading\n\n1\n# between: these\n#\n2\n\n", asMaster(`{"reading":1},{"reading":2}`)},
		"empty cells beyond":         {loadCell + "setting,force,,\n10,191.8,,\n20,536\n30,940,,,,\n", asLoadCell(`{"setting":10,"force":191.8},{"setting":20,"force":536},{"setting":30,"force":940}`)},
		"empty column":               {loadCell + "setting,force,time,speed\n10,191.8,,\n", asLoadCell(`{"setting":10,"force":191.8}`)},
		"empty entry":                {master + "# taken_by:\n# resolution:\nreading\n1\n", asMaster(`{"reading":1}`)},
		"colon in an entry":          {master + "# notes: seen at 14:05: warm\nreading\n1\n", `{"format":"ramplan.study/1","kind":"master","taken_at":"2026-11-20","height":40,"notes":"seen at 14:05: warm","rows":[{"reading":1}]}`},
		"format":                     {"# format: ramplan.study/1\n" + master + "reading\n1\n", asMaster(`{"reading":1}`)},
		"block of each row":          {"# kind: stiffness\n# taken_at: 2026-11-21\nsetting,reading,height\n20,100,40\n", `{"format":"ramplan.study/1","kind":"stiffness","taken_at":"2026-11-21","rows":[{"setting":20,"reading":100,"height":40}]}`},
		"samples":                    {"# kind: samples\n# taken_at: 2026-11-21T07:30:00+01:00\n# plan_digest: sha256:b74624aea0e6\nname,height,arrival,zone\nlong 1,25.1,on,off\nmissing,,off,off\nempty,,off,off\n", `{"format":"ramplan.study/1","kind":"samples","taken_at":"2026-11-21T07:30:00+01:00","plan_digest":"sha256:b74624aea0e6","rows":[{"sample":"long 1","height":25.1,"arrival":true,"zone":false},{"sample":"missing","arrival":false,"zone":false},{"sample":"empty","arrival":false,"zone":false}]}`},
		"restart":                    {"# kind: restart\n# taken_at: 2026-11-21\nstart,reading,condition\n1,100.1,cold\n2,100.2,warm\n", `{"format":"ramplan.study/1","kind":"restart","taken_at":"2026-11-21","rows":[{"start":1,"reading":100.1,"condition":"cold"},{"start":2,"reading":100.2,"condition":"warm"}]}`},
		"filled up by a spreadsheet": {"# kind: master,,\r\n# taken_at: 2026-11-20,,\r\n# height: 40,,\r\n\"# notes: said \"\"now\"\", then\",,\r\n# taken_by: M. Weber,,\r\n,,\r\nreading,time,remark\r\n1,5,\r\n,,\r\n2,6,x\r\n,,\r\n", `{"format":"ramplan.study/1","kind":"master","taken_at":"2026-11-20","height":40,"notes":"said \"now\", then","taken_by":"M. Weber","rows":[{"reading":1,"time":5},{"reading":2,"time":6,"remark":"x"}]}`},
		"a text ends with a comma":   {master + "# taken_by: a,\nreading,remark\n1,\n", `{"format":"ramplan.study/1","kind":"master","taken_at":"2026-11-20","height":40,"taken_by":"a,","rows":[{"reading":1}]}`},
		"event":                      {"# kind: event\n# taken_at: 2026-11-25T14:05:00Z\n# event: crash\n# taken_by: M. Weber\n", `{"format":"ramplan.study/1","kind":"event","taken_at":"2026-11-25T14:05:00Z","event":"crash","taken_by":"M. Weber"}`},
	} {
		s, lines := ReadCSV([]byte(c.table))
		if !assert.Empty(t, lines.Faults, name) {
			continue
		}
		d, problems := Decode([]byte(c.document))
		require.Empty(t, problems, name)
		assert.Equal(t, string(d.Canonical()), string(s.Canonical()), name)
		again, lines := ReadCSV(s.CSV())
		require.Empty(t, lines.Faults, name)
		assert.Equal(t, s.Digest(), again.Digest(), name)
	}
}

// What the lines tell beside the study: where each row stands, and how the head was read.
func TestLinesTellHowTheTableWasRead(t *testing.T) {
	s, lines := ReadCSV([]byte("# kind: load_cell\n# taken_at: 2026-11-20\nsetting; load [kN]\n\n10;0,1918\n20;x\n30;0,94\n#40;1,2\n"))
	require.Len(t, s.Rows, 2)
	assert.Equal(t, []int{5, 7}, lines.Rows)
	assert.Equal(t, ";", lines.Separator)
	assert.True(t, lines.Comma)
	require.Len(t, lines.Columns, 2)
	assert.Equal(t, "load [kN]", lines.Columns[1].Head)
	assert.Equal(t, "force", lines.Columns[1].Field.Name)
	assert.Equal(t, 1000.0, lines.Columns[1].Factor)
	assert.Equal(t, []int{8}, lines.Remarks)
	require.Len(t, lines.Refused, 1)
	assert.Equal(t, "20;x", lines.Refused[0].Text)
	assert.Equal(t, []string{"20", "x"}, lines.Refused[0].Cells)
	assert.Equal(t, []string{`forces.csv:6: force: found "x"; a number in N, 0 or more, is needed`}, lines.Errors(`/some\folder/forces.csv`))
}

// At most 10,000 pushes and 4 MiB are read; the lines beyond are kept as they stand.
func TestTableThatIsTooLarge(t *testing.T) {
	const head = "# kind: master\n# taken_at: 2026-11-20\n# height: 40\nreading\n"
	s, lines := ReadCSV([]byte(head + strings.Repeat("100.14\n", MostRows)))
	require.Empty(t, lines.Faults)
	assert.Len(t, s.Rows, MostRows)
	s, lines = ReadCSV([]byte(head + strings.Repeat("100.14\n", MostRows+2)))
	require.Len(t, lines.Faults, 1)
	assert.Equal(t, MostRows+5, lines.Faults[0].Line)
	assert.Len(t, s.Rows, MostRows)
	assert.Len(t, lines.Refused, 2)
	_, lines = ReadCSV([]byte(head + strings.Repeat("#", 4<<20)))
	require.Len(t, lines.Faults, 1)
	assert.Contains(t, lines.Faults[0].String(), "4 MiB")
	data := `{"format":"ramplan.study/1","kind":"master","taken_at":"2026-11-20","height":40,"rows":[{"reading":1}` + strings.Repeat(`,{"reading":1}`, MostRows) + `]}`
	_, problems := Decode([]byte(data))
	require.Len(t, problems, 1)
	assert.Contains(t, problems[0].String(), "rows: found 10001 rows")
}
