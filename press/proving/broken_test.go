package proving

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/strict"
)

var update = flag.Bool("update", false, "write the expected messages anew")

const brokenStudies = "../../testdata/studies/broken/"

// Every broken table is refused with exactly the messages beside it, and its good rows are
// kept. Line and column of each fault and the lines of the good rows were written by hand
// before the program was asked; the sentences behind them are regression values.
func TestBrokenTables(t *testing.T) {
	files, err := filepath.Glob(brokenStudies + "*.csv")
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(files), 60)
	for _, file := range files {
		t.Run(strings.TrimSuffix(filepath.Base(file), ".csv"), func(t *testing.T) {
			data, err := os.ReadFile(file)
			require.NoError(t, err)
			study, lines := ReadCSV(data)
			require.False(t, lines.Sound())
			require.Len(t, study.Rows, len(lines.Rows))
			nothingLost(t, data, lines)
			got := strings.Join(lines.Errors(file), "\n") + "\ngood: none\n"
			if len(lines.Rows) > 0 {
				got = strings.Join(lines.Errors(file), "\n") + "\ngood: " + strings.Trim(fmt.Sprint(lines.Rows), "[]") + "\n"
			}
			compare(t, strings.TrimSuffix(file, ".csv")+".txt", got)
		})
	}
}

// nothingLost wants every line that is neither blank nor a remark, nor the head, among the
// good rows or, as it stands, among the refused ones.
func nothingLost(t *testing.T, data []byte, lines Lines) {
	t.Helper()
	where := map[int]string{}
	for _, n := range lines.Rows {
		where[n] = "good"
	}
	text := strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(strings.TrimPrefix(string(data), "\ufeff"))
	all := strings.Split(text, "\n")
	for _, r := range lines.Refused {
		assert.Empty(t, where[r.Line], "line %d is both good and refused", r.Line)
		where[r.Line] = "refused"
		assert.Equal(t, all[r.Line-1], r.Text)
	}
	if strings.HasPrefix(text, "\xff\xfe") {
		return
	}
	head := false
	for i, line := range all {
		if strings.TrimSpace(line) == "" || strings.HasPrefix(line, "#") {
			assert.Empty(t, where[i+1])
			continue
		}
		if !head && strings.HasPrefix(strings.TrimLeft(line, " \t"), "#") {
			continue
		}
		if strings.Trim(line, separators) == "" || !head && inQuotes(line) != "" {
			continue // blank, or an entry, in a table that a spreadsheet has filled up
		}
		if !head && where[i+1] == "" {
			head = true
			continue
		}
		assert.NotEmpty(t, where[i+1], "line %d is lost", i+1)
	}
}

// compare holds a text to the file beside it.
func compare(t *testing.T, file, got string) {
	t.Helper()
	if *update {
		require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
	}
	want, err := os.ReadFile(file)
	require.NoError(t, err)
	assert.Equal(t, string(want), got)
}

// Every broken document is refused with exactly the messages beside it. The first two words
// of a line, path and code, were written by hand before the program was asked; the sentence
// after them is a regression value.
func TestBrokenDocuments(t *testing.T) {
	files, err := filepath.Glob(brokenStudies + "*.json")
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(files), 40)
	for _, file := range files {
		t.Run(strings.TrimSuffix(filepath.Base(file), ".json"), func(t *testing.T) {
			data, err := os.ReadFile(file)
			require.NoError(t, err)
			study, problems := Decode(data)
			require.NotEmpty(t, problems)
			assert.Nil(t, study)
			var got strings.Builder
			for _, p := range problems {
				got.WriteString(strict.PathOr(p.Path, "-") + " " + p.Code + " " + p.Message + "\n")
			}
			compare(t, file+".txt", got.String())
		})
	}
}
