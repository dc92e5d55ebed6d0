package curves_test

import (
	"fmt"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/curves"
)

// TestReadColumns holds the ways in which two columns are written.
func TestReadColumns(t *testing.T) {
	want := []curves.Point{{10.5, 200}, {20, 400.25}}
	for name, text := range map[string]string{
		"comma":                       "10.5,200\n20,400.25",
		"comma and blank":             "10.5, 200\n20 ,400.25\n",
		"comma between blanks":        "10.5 , 200\n20  ,  400.25",
		"tab":                         "10.5\t200\r\n20\t400.25\r\n",
		"tab, decimal comma":          "10,5\t200\n20\t400,25\n",
		"semicolon":                   "10.5;200\n20;400.25",
		"semicolon, decimal comma":    "10,5;200\n20; 400,25",
		"blank":                       "  10.5   200\n20 400.25  ",
		"blank, decimal comma":        "10,5 200\n20 400,25",
		"old line ends":               "10.5 200\r20 400.25\r",
		"mark, heading, blanks":       "\uFEFFSetting %;Force N\n\n \t\n10.5;200\n;\n20;400.25\n",
		"comments":                    "# of the ram\n10.5 200 # first\n20 400.25#last\n#",
		"empty columns at the end":    "10.5;200;;\n20;400.25;",
		"signs, exponents":            "+1.05e1 2E2\n2.0e+01 4.0025e2",
		"two headings, units in one":  "current limit\n(%)\t(N)\n10.5\t200\n20\t400.25",
		"blank that does not break":   "10,5\u00a0200\n20\u00a0400,25",
		"units apart":                 "10.5 % 200 N\n20 % 400.25 N",
		"units close":                 "10.5% 200N\n20%\t400.25N",
		"units, semicolon":            "10,5 %; 200 N\n20 %;400,25 N;",
		"units, decimal comma":        "10,5 % 200 N\n20 %   400,25 N",
		"units, comma":                "10.5 %, 200 N\n20%,400.25N",
		"units in columns":            "10.5\t%\t200\tN\n20\t%\t400.25\tN",
		"one unit":                    "10.5 200 N\n20 % 400.25",
		"heading of words, with text": "setting, push force, as measured\n10.5, 200\n20, 400.25",
	} {
		t.Run(name, func(t *testing.T) {
			table, faults := curves.ReadColumns(text)
			assert.Equal(t, want, table.Points)
			assert.False(t, table.ForceFirst)
			assert.Empty(t, faults)
		})
	}
}

// TestReadColumnsNothing holds that nothing is no fault; a curve of no points
// is for New to refuse.
func TestReadColumnsNothing(t *testing.T) {
	for _, text := range []string{"", "\n\n", "# nothing", "setting;force", "\uFEFF"} {
		table, faults := curves.ReadColumns(text)
		assert.Empty(t, table.Points, text)
		assert.Empty(t, faults, text)
	}
}

// TestReadColumnsFaults holds the message of each kind of bad line; the good
// lines around it are kept.
func TestReadColumnsFaults(t *testing.T) {
	for line, want := range map[string]string{
		"20":         "1 column, want 2: setting and force",
		"mean;none":  `setting "mean" is not a number`,
		"20;30;40":   "3 columns, want 2: setting and force",
		"20;":        "1 column, want 2: setting and force",
		"10,5,200":   "3 columns, want 2: setting and force; with decimal commas separate them by a semicolon or a tab",
		"20 ;x":      `force "x" is not a number`,
		"x 30":       `setting "x" is not a number`,
		"20;1.200,5": `force "1.200,5" has a point and a comma; write it without a thousands separator`,
		"20;1,2,3":   `force "1,2,3" is not a number`,
		"20;1e999":   `force "1e999" is too large`,
		"20;NaN":     `force "NaN" is not a number`,
		"Inf 30":     `setting "Inf" is not a number`,
		"0x10 30":    `setting "0x10" is not a number`,
		"20 1_000":   `force "1_000" is not a number`,
		"20 % 30 kN": `force "30kN": settings in %, forces in newtons`,
		"20;0,3 kN":  `force "0,3kN": settings in %, forces in newtons`,
		"20 N;30 %":  `setting "20N": settings in %, forces in newtons`,
		"20 A 30 N":  "3 columns, want 2: setting and force; leave out the units",
		"20;30 lbf":  `force "30 lbf" is not a number; leave out the units`,
		"20 %":       "1 column, want 2: setting and force",
		"20;N":       `force "N" is not a number`,
		";30":        `setting "" is not a number`,
	} {
		t.Run(line, func(t *testing.T) {
			table, faults := curves.ReadColumns("10 100\n" + line + "\n50 500")
			assert.Equal(t, []curves.Point{{10, 100}, {50, 500}}, table.Points)
			assert.Equal(t, []curves.LineError{{Line: 2, Text: line, Message: want}}, faults)
		})
	}
	_, faults := curves.ReadColumns("10x;200y")
	require.Len(t, faults, 1, "a first line that begins like a number is no heading")
	assert.EqualError(t, faults[0], `curves: line 1: setting "10x" is not a number; leave out the units`)
}

// TestReadColumnsLimits holds each limit at its edge.
func TestReadColumnsLimits(t *testing.T) {
	rows := func(n int) string {
		var b strings.Builder
		for i := range n {
			fmt.Fprintf(&b, "%d;%d\n", i, i+1)
		}
		return b.String()
	}
	table, faults := curves.ReadColumns(rows(curves.MaxPoints))
	assert.Len(t, table.Points, curves.MaxPoints)
	assert.Empty(t, faults)
	table, faults = curves.ReadColumns(rows(curves.MaxPoints + 7))
	assert.Len(t, table.Points, curves.MaxPoints)
	assert.Equal(t, []curves.LineError{{Line: 501, Text: "500;501", Message: "more than 500 points, the rest is not read"}}, faults)

	_, faults = curves.ReadColumns(strings.Repeat("\n", curves.MaxLines))
	assert.Empty(t, faults)
	table, faults = curves.ReadColumns(strings.Repeat("\n", curves.MaxLines) + "1;2\n3;4")
	assert.Empty(t, table.Points)
	assert.Equal(t, []curves.LineError{{Line: 5001, Text: "1;2", Message: "more than 5000 lines, the rest is not read"}}, faults)

	wide := "1;2" + strings.Repeat(" ", curves.MaxLineLength-3)
	table, faults = curves.ReadColumns(wide + "\n" + wide + " \n3;4")
	assert.Equal(t, []curves.Point{{1, 2}, {3, 4}}, table.Points)
	require.Len(t, faults, 1)
	assert.Equal(t, 2, faults[0].Line)
	assert.Equal(t, "the line is longer than 1000 bytes", faults[0].Message)
	assert.Equal(t, wide[:80]+"…", faults[0].Text)
}

// FuzzReadColumns holds that no text breaks the reader, that its limits hold,
// and that what was read is read again from its plain form.
func FuzzReadColumns(f *testing.F) {
	for _, seed := range []string{
		"", "10,5;200\n20;400,25", "10.5,200", "a;b\n1\t2\r\n3 4\r5, 6", "\uFEFF# c\n1;2;;\n", "1,2,3\n;;\n,\n,,\t",
		"\xff\xfe1;2", "1e308;1e309", "--1 ++2", "1 \u00a0 2", strings.Repeat("9", 1001), "+.;-.", "\t1\t2", "10 % 95 N\n20% 3kN", "% N", "1 N N %",
		"Force;Setting\n95;10", "N %\n95 10",
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		table, faults := curves.ReadColumns(text)
		require.LessOrEqual(t, len(table.Points), curves.MaxPoints)
		require.True(t, table.Heading != "" || !table.ForceFirst, "only a heading turns the columns round")
		require.True(t, utf8.ValidString(table.Heading))
		var plain strings.Builder
		for _, p := range table.Points {
			fmt.Fprintf(&plain, "%v;%v\n", p.Setting, p.Force)
		}
		last := 0
		for _, fault := range faults {
			require.Greater(t, fault.Line, last, "one fault a line, in order")
			last = fault.Line
			require.NotEmpty(t, fault.Message)
			require.True(t, utf8.ValidString(fault.Error()+fault.Text))
		}
		require.LessOrEqual(t, last, curves.MaxLines+1)
		again, faults := curves.ReadColumns(plain.String())
		require.Empty(t, faults)
		require.Equal(t, table.Points, again.Points)
	})
}
