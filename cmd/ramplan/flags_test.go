package main

import (
	"context"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/archive"
)

// onShelf makes an archive with the example and gives its folder.
func onShelf(t *testing.T) string {
	t.Helper()
	data, err := os.ReadFile(examplePlan)
	require.NoError(t, err)
	plan, faults := press.Decode(data)
	require.Empty(t, faults)
	dir := t.TempDir()
	a, err := archive.Open(context.Background(), dir, archive.Options{First: []*press.Draft{plan.Draft()}})
	require.NoError(t, err)
	require.NoError(t, a.Close())
	return dir
}

// TestRowsOfAKeptPlan: the rows of a plan that is named in the archive are its own,
// also where a file of another plan bears the number as its name.
func TestRowsOfAKeptPlan(t *testing.T) {
	dir := onShelf(t)
	other, err := os.ReadFile("../../static/examples/pivot-pin.json")
	require.NoError(t, err)
	t.Chdir(t.TempDir())
	require.NoError(t, os.WriteFile("WS-210", other, 0o600))
	status, _, errs := command(t, "", "draw", "-data", dir, "-plan", "WS-210", "-pages", "control", "-o", "rows.csv")
	require.Zero(t, status, errs)
	rows, err := os.ReadFile("rows.csv")
	require.NoError(t, err)
	assert.Contains(t, string(rows), "24.91", "the lower limit of the plan in the archive")
	status, out, errs := command(t, "", "draw", "-data", dir, "-plan", "WS-210", "-pages", "control", "-format", "csv")
	require.Zero(t, status, errs)
	assert.Equal(t, string(rows), out, "on standard output the same")
	status, _, errs = command(t, "", "draw", "-data", dir, "-plan", "WS-999", "-pages", "control", "-o", "none.csv")
	assert.Equal(t, statusRefused, status)
	assert.Contains(t, errs, `has the number "WS-999"`)
	assert.NoFileExists(t, "none.csv")
	status, _, errs = command(t, "", "draw", "-data", dir, "-plan", "WS-210", "-o", "new/")
	require.Zero(t, status, errs)
	assert.FileExists(t, "new/WS-210-draft.pdf", "the whole number, though it looks like a name with an ending")
}

// TestEveryVerbReadsItsCommandLine: a flag that a verb does not have is refused, whatever the
// verb.
func TestEveryVerbReadsItsCommandLine(t *testing.T) {
	for _, v := range verbs() {
		status, out, errs := command(t, "", v.name, "-nothing")
		assert.Equal(t, statusRefused, status, v.name)
		assert.Empty(t, out, v.name)
		assert.NotEmpty(t, errs, v.name)
	}
}

// TestNothingIsDropped: whatever stands on a command line is used, or refused with
// its reason. Files bear the names of flags, so that a flag that is taken for a file
// would be found.
func TestNothingIsDropped(t *testing.T) {
	dir := onShelf(t)
	example, err := filepath.Abs(examplePlan)
	require.NoError(t, err)
	data, err := os.ReadFile(example)
	require.NoError(t, err)
	t.Chdir(t.TempDir())
	for _, name := range []string{"-o", "-data", "-size", "letter", "-", "x.pdf", "-revision", "A"} {
		require.NoError(t, os.WriteFile(name, data, 0o600))
	}
	for _, c := range []struct {
		want string
		args []string
	}{
		{"found -o behind them", []string{"draw", example, "-o", "x.pdf"}},
		{"found -size behind them", []string{"draw", "-o", "out.pdf", example, "-size", "letter"}},
		{"found -data behind them", []string{"in", example, "-data", dir}},
		{"found -data behind them", []string{"out", "folder", "-data", dir}},
		{"found -data behind them", []string{"backup", "file", "-data", dir}},
		{"found -data behind them", []string{"restore", "file", "-data", dir}},
		{"found -data behind them", []string{"verify", "x.pdf", "-data", dir}},
		{"found -o behind them", []string{"extract", "x.pdf", "-o", "plan.json"}},
		{"found -o behind them", []string{"eval", example, "-o"}},
		{"not defined: -o", []string{"eval", "-o", example}},
		{"found -on behind them", []string{"assess", example, "x.csv", "-on", "2026-11-28"}},
		{"flag -on: it names nothing", []string{"assess", "-on", "", example, "x.csv"}},
		{"flag -on: it was given before", []string{"assess", "-on", "2026-11-28", "-on", "2026-11-29", example, "x.csv"}},
		{`found "28.11.2026"`, []string{"assess", "-on", "28.11.2026", example, "x.csv"}},
		{`found "2026-02-29"`, []string{"assess", "-on", "2026-02-29", example, "x.csv"}},
		{"assess needs a plan file and the studies", []string{"assess", example}},
		{"can be read once only", []string{"assess", "-", "-"}},
		{"flag -data: it names nothing", []string{"backup", "-data", "", "file"}},
		{"flag -data: it names nothing", []string{"serve", "-data", ""}},
		{"flag -listen: it names nothing", []string{"serve", "-listen", ""}},
		{"flag -data: it was given before", []string{"restore", "-data", dir, "-data", t.TempDir(), "file"}},
		{"flag -plan: it names nothing", []string{"draw", "-plan", "", "-o", "out.pdf", example}},
		{"flag -plan: it was given before", []string{"draw", "-plan", "A", "-plan", "B", "-o", "out.pdf"}},
		{"flag -pages: it names nothing", []string{"draw", "-pages", "", "-o", "out.pdf", example}},
		{"-data needs -plan", []string{"draw", "-data", dir, "-o", "out.pdf", example}},
		{"-revision needs -plan", []string{"draw", "-revision", "A", "-o", "out.pdf", example}},
		{"flag -study: it names nothing", []string{"draw", "-study", "", "-o", "out.pdf", example}},
		{"-study is for the sheet and for drawings of studies", []string{"draw", "-what", "strip", "-study", "x.csv", "-o", "out.pdf", example}},
		{"a plan in the archive has its own studies", []string{"draw", "-data", dir, "-plan", "WS-210", "-study", "x.csv", "-o", "out.pdf"}},
		{"forces is drawn of one study", []string{"draw", "-what", "forces", "-o", "out.pdf", example}},
		{"forces is drawn of one study", []string{"draw", "-what", "forces", "-study", "x.csv,y.csv", "-o", "out.pdf", example}},
		{"no study that counts was found", []string{"draw", "-data", dir, "-plan", "WS-210", "-what", "forces", "-o", "out.pdf"}},
		{"the page record is of studies", []string{"draw", "-pages", "record", "-o", "out.pdf", example}},
		{"the page record is for paper and has no rows", []string{"draw", "-pages", "record", "-study", "x.csv", "-o", "out.csv", example}},
		{"-size is for a sheet", []string{"draw", "-what", "strip", "-size", "letter", "-o", "out.pdf", example}},
		{"-size is for a sheet", []string{"draw", "-pages", "shift", "-size", "letter", "-o", "out.csv", example}},
		{"-separator is for rows", []string{"draw", "-separator", "semicolon", "-o", "out.pdf", example}},
		{`no separator "tab"; there are comma, semicolon`, []string{"draw", "-separator", "tab", "-pages", "shift", "-o", "out.csv", example}},
		{"-font is for what is drawn", []string{"draw", "-pages", "shift", "-font", "x.pdf", "-o", "out.csv", example}},
		{"flag -font: it names nothing", []string{"draw", "-font", "", "-o", "out.pdf", example}},
		{"are not for the drill", []string{"draw", "-what", "drill", "-size", "a4", "-o", "out.html", example}},
		{"the card keeps its title", []string{"draw", "-what", "card", "-title=false", "-o", "out.pdf", example}},
		{"rows go into one file", []string{"draw", "-pages", "shift", "-format", "csv", "-o", "folder/", example}},
		{"counted from 1, found -plan 0", []string{"extract", "-plan", "0", "x.pdf"}},
		{"it knows no standard input or output", []string{"backup", "-data", dir, "-"}},
		{"version takes nothing", []string{"version", "draw"}},
		{"help prints its page, or", []string{"help", "drawing"}},
		{"help prints its page, or", []string{"-h", "drawing"}},
		{"serve takes no files", []string{"serve", "-data", dir, "x.pdf"}},
		{"would be written to x-2.svg", []string{"draw", "-format", "svg", "-o", "folder/", "x.json", "x-2.json"}},
		{"would both be written to A.pdf", []string{"draw", "-o", "folder/", "a.json", "b/A.json"}},
	} {
		status, out, errs := command(t, "", c.args...)
		assert.Equal(t, statusRefused, status, c.args)
		assert.Empty(t, out, c.args)
		assert.Contains(t, errs, c.want, c.args)
	}
	for _, name := range []string{"out.pdf", "out.csv", "folder", "file", "plan.json"} {
		assert.NoFileExists(t, name)
	}
	status, _, errs := command(t, "", "draw", "-o", "good.pdf", "--", "-size")
	assert.Zero(t, status, errs)
	status, out, errs := command(t, "", "help", "draw")
	assert.Zero(t, status, errs)
	assert.Contains(t, out, "-pages PAGES")
}
