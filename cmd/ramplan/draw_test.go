package main

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/carry"
)

// TestSheetAndBack is what the quality engineer does: a sheet is drawn, and the
// plan comes out of it, the same bytes.
func TestSheetAndBack(t *testing.T) {
	plan, err := os.ReadFile(examplePlan)
	require.NoError(t, err)
	for _, format := range []string{"pdf", "png", "svg"} {
		for _, args := range [][]string{{"-size", "letter"}, {"-what", "force", "-width", "column", "-title=false"}} {
			sheet := filepath.Join(t.TempDir(), "sheet."+format)
			status, _, errs := command(t, "", append(append([]string{"draw", "-o", sheet}, args...), examplePlan)...)
			require.Zero(t, status, errs)
			status, out, errs := command(t, "", "extract", sheet)
			require.Zero(t, status, errs)
			assert.Equal(t, string(plan), out)
			assert.Contains(t, errs, "a draft, sha256:")
		}
	}
	sheet, err := os.ReadFile(drawnTo(t, "again.svg"))
	require.NoError(t, err)
	status, out, errs := command(t, string(sheet), "extract", "-")
	assert.Zero(t, status, errs)
	assert.Equal(t, string(plan), out)
	status, _, errs = command(t, string(sheet), "extract", "-o", filepath.Join(t.TempDir(), "no", "such.json"), "-")
	assert.Equal(t, statusRefused, status)
	assert.Contains(t, errs, "cannot write")
}

func drawnTo(t *testing.T, name string) string {
	t.Helper()
	name = filepath.Join(t.TempDir(), name)
	status, _, errs := command(t, "", "draw", "-o", name, examplePlan)
	require.Zero(t, status, errs)
	return name
}

// TestManyPlans: into one PDF, from which each comes out by its number, or each
// into a file of its own.
func TestManyPlans(t *testing.T) {
	one, two := examplePlan, blockedPlan(t)
	book := filepath.Join(t.TempDir(), "book.pdf")
	status, _, errs := command(t, "", "draw", "-o", book, one, two)
	require.Zero(t, status, errs)
	status, _, errs = command(t, "", "extract", book)
	assert.Equal(t, statusRefused, status)
	assert.Contains(t, errs, "2 plans are inside")
	want, err := os.ReadFile(two)
	require.NoError(t, err)
	status, out, _ := command(t, "", "extract", "-plan", "2", book)
	assert.Zero(t, status)
	assert.Equal(t, string(want), out)
	status, _, errs = command(t, "", "extract", "-plan", "3", book)
	assert.Equal(t, statusRefused, status)
	assert.Contains(t, errs, "there is no plan 3 inside; there are 2")

	folder := filepath.Join(t.TempDir(), "new") + "/"
	status, _, errs = command(t, "", "draw", "-o", folder, "-format", "svg", one, two, "missing.json")
	assert.Equal(t, statusRefused, status, "one plan is missing")
	assert.Contains(t, errs, "missing.json: no such file")
	for _, name := range []string{"example-plan.svg", "blocked.svg"} {
		data, err := os.ReadFile(filepath.Join(folder, name))
		require.NoError(t, err)
		_, err = carry.Extract(data)
		assert.NoError(t, err)
	}
	status, _, errs = command(t, "", "draw", "-o", folder, one, one)
	assert.Equal(t, statusRefused, status)
	assert.Contains(t, errs, "would both be written to example-plan.pdf")
}

// TestPages: behind the sheet, or their rows alone; a name that a spreadsheet would
// take for a formula is made harmless.
func TestPages(t *testing.T) {
	data, err := os.ReadFile(examplePlan)
	require.NoError(t, err)
	plan := filepath.Join(t.TempDir(), "plan.json")
	require.NoError(t, os.WriteFile(plan, bytes.Replace(data, []byte(`"number": "WS-210"`), []byte(`"number": "WS-210", "characteristic": "=1+1"`), 1), 0o600))
	rows := filepath.Join(t.TempDir(), "rows.csv")
	status, _, errs := command(t, "", "draw", "-pages", "control,failures", "-o", rows, plan)
	require.Zero(t, status, errs)
	file, err := os.ReadFile(rows)
	require.NoError(t, err)
	text := string(file)
	assert.True(t, strings.HasPrefix(text, "Table,Plan number,"), "nothing but ASCII: no mark")
	assert.Regexp(t, `\r\nControl-plan rows,WS-210,Bearing sleeve into anemometer hub,DRAFT,\d{4}-\d\d-\d\d,sha256:[0-9a-f]{12},,.*,'=1\+1,`, text)
	assert.Regexp(t, `\r\n\r\nTable,.*,Failure,What it is,`, text)
	assert.Contains(t, text, "\r\nFailure-mode rows,WS-210,")
	status, german, errs := command(t, "", "draw", "-pages", "faults", "-format", "csv", "-separator", "semicolon", plan)
	require.Zero(t, status, errs)
	assert.Contains(t, german, ";115,080;mm;;", "by hand: where the tallest good part reads")
	assert.Equal(t, strings.Count(text, "\n"), strings.Count(text, "\r\n"))
	for said, args := range map[string][]string{
		`draw knows no page "everything"; there are faults,`:   {"-pages", "everything", plan},
		"-pages are behind a sheet, not behind one drawing":    {"-what", "force", "-pages", "all", plan},
		"a .csv holds rows of one plan: name them with -pages": {"-o", "x.csv", plan},
	} {
		status, _, errs := command(t, "", append([]string{"draw"}, args...)...)
		assert.Equal(t, statusRefused, status, said)
		assert.Contains(t, errs, said)
	}
	none, one, all := filepath.Join(t.TempDir(), "none.pdf"), filepath.Join(t.TempDir(), "one.pdf"), filepath.Join(t.TempDir(), "all.pdf")
	for name, pages := range map[string][]string{none: nil, one: {"-pages", "shift"}, all: {"-pages", "all"}} {
		status, _, errs := command(t, "", append(append([]string{"draw"}, pages...), "-o", name, examplePlan)...)
		require.Zero(t, status, errs)
	}
	alone, err := os.ReadFile(none)
	require.NoError(t, err)
	few, err := os.ReadFile(one)
	require.NoError(t, err)
	many, err := os.ReadFile(all)
	require.NoError(t, err)
	assert.Equal(t, 1+bytes.Count(alone, []byte("/Type /Page\n")), bytes.Count(few, []byte("/Type /Page\n")))
	assert.Greater(t, bytes.Count(many, []byte("/Type /Page\n")), 5)
}

// TestDrawRefusals: what cannot be meant is refused before anything is drawn.
func TestDrawRefusals(t *testing.T) {
	for said, args := range map[string][]string{
		`draw knows no size "a3"; there are a4, letter`:                      {"-size", "a3", examplePlan},
		"-width and -title are for one drawing alone":                        {"-width", "page", examplePlan},
		`no width is called "wide"`:                                          {"-what", "strip", "-width", "wide", examplePlan},
		"many plans go into one .pdf, or into a folder":                      {"-o", "x.png", examplePlan, examplePlan},
		`draw cannot write "x.gif"`:                                          {"-o", "x.gif", examplePlan},
		`draw cannot write "x.svg"`:                                          {"-o", "x.svg", "-format", "pdf", examplePlan},
		`draw knows no format "gif"`:                                         {"-format", "gif", examplePlan},
		`draw knows no drawing "stripe"; it draws: sheet, strip, force, pre`: {"-what", "stripe", examplePlan},
		"draw takes one plan or more":                                        {},
	} {
		status, out, errs := command(t, "", append([]string{"draw"}, args...)...)
		assert.Equal(t, statusRefused, status, said)
		assert.Empty(t, out)
		assert.Contains(t, errs, said)
	}
}

// TestCutOff: of a file whose end is missing the plan is still taken out, and what is
// wrong is told.
func TestCutOff(t *testing.T) {
	plan, err := os.ReadFile(examplePlan)
	require.NoError(t, err)
	for _, format := range []string{"pdf", "png", "svg"} {
		sheet := drawnTo(t, "sheet."+format)
		data, err := os.ReadFile(sheet)
		require.NoError(t, err)
		status, _, errs := command(t, "", "extract", sheet)
		assert.Zero(t, status, errs)
		require.NoError(t, os.WriteFile(sheet, data[:len(data)-len(data)/50], 0o600))
		status, out, errs := command(t, "", "extract", sheet)
		assert.Equal(t, statusDamaged, status, format)
		assert.Equal(t, string(plan), out)
		assert.Contains(t, errs, "the end of the file is missing")
	}
}

// TestNothingInside: files out of which no plan comes are told apart.
func TestNothingInside(t *testing.T) {
	plain := filepath.Join(t.TempDir(), "plain.svg")
	require.NoError(t, os.WriteFile(plain, []byte("<svg xmlns='http://www.w3.org/2000/svg'/>"), 0o600))
	for said, args := range map[string][]string{
		"neither a plan nor a sheet with a plan inside": {plain},
		"this is neither an SVG, a PNG nor a PDF":       {examplePlan},
		"no such file":                               {"missing.pdf"},
		"extract takes one SVG, PNG or PDF":          {},
		"extract takes one SVG, PNG or PDF, after t": {plain, plain},
	} {
		status, out, errs := command(t, "", append([]string{"extract"}, args...)...)
		assert.Equal(t, statusRefused, status, said)
		assert.Empty(t, out)
		assert.Contains(t, errs, said)
	}
}

// TestDrawStopped: a signal stops long work between two plans, and no half file is
// left.
func TestDrawStopped(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	stop()
	folder := t.TempDir()
	for _, to := range []string{filepath.Join(folder, "all.pdf"), folder} {
		var out, errs bytes.Buffer
		status := run(ctx, []string{"draw", "-o", to, examplePlan, blockedPlan(t)}, strings.NewReader(""), &out, &errs)
		assert.Equal(t, statusRefused, status)
		assert.Contains(t, errs.String(), "stopped before ")
	}
	left, err := os.ReadDir(folder)
	require.NoError(t, err)
	assert.Empty(t, left)
}

// TestFontFlag: a font that is named must be one; what else would be drawn in it is
// not drawn in another one in silence.
func TestFontFlag(t *testing.T) {
	for _, verb := range [][]string{{"draw", "-font", examplePlan, examplePlan}, {"serve", "-font", examplePlan}, {"draw", "-font", "none.ttf", examplePlan}} {
		status, _, errs := command(t, "", verb...)
		assert.Equal(t, statusRefused, status, verb)
		assert.Contains(t, errs, filepath.Base(verb[2]), verb)
	}
}
