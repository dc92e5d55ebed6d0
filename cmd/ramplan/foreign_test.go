package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/archive"
	"ramplan/static"
)

// TestForeignFiles: of a file that is no plan that is said, before anything that
// its text lacks.
func TestForeignFiles(t *testing.T) {
	dir := t.TempDir()
	write := func(name, text string) string {
		path := filepath.Join(dir, name)
		require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
		return path
	}
	data := t.TempDir()
	_, _, _ = command(t, "", "in", "-data", data, examplePlan) // makes the archive, and says so
	foreign := "this is neither a plan nor a sheet with a plan inside"
	for name, text := range map[string]string{
		"letter.txt":   "Dear all,",
		"picture.jpg":  "\xFF\xD8\xFF\xE0",
		"stripped.svg": "<svg xmlns='http://www.w3.org/2000/svg'/>",
		"empty.json":   "",
		"other.json":   `{"title": "of another program"}`,
	} {
		path := write(name, text)
		for _, args := range [][]string{{"eval", path}, {"draw", "-o", "-", path}, {"in", "-data", data, path}} {
			status, _, errs := command(t, "", args...)
			assert.Equal(t, statusRefused, status, args)
			first, _, _ := strings.Cut(errs, "\n")
			assert.Contains(t, first, name+": "+foreign, args)
			if name != "other.json" || args[0] == "in" {
				assert.Equal(t, 1, strings.Count(errs, "\n"), "nothing else is said:\n%s", errs)
			}
		}
	}
	sheet := filepath.Join(dir, "sheet.svg")
	status, _, errs := command(t, "", "draw", "-o", sheet, examplePlan)
	require.Zero(t, status, errs)
	status, _, errs = command(t, "", "eval", sheet)
	assert.Equal(t, statusRefused, status)
	assert.Contains(t, errs, "ramplan extract", "the plan inside is led to")
}

// TestInTakesSheets: sheets and drawings come in as the plan inside, one with
// several plans as several.
func TestInTakesSheets(t *testing.T) {
	dir := t.TempDir()
	example, faults := press.Decode(static.Example())
	require.Empty(t, faults)
	var sheets []string
	for _, name := range []string{"sheet.svg", "sheet.png", "sheet.pdf"} {
		path := filepath.Join(dir, name)
		status, _, errs := command(t, "", "draw", "-o", path, examplePlan)
		require.Zero(t, status, errs)
		sheets = append(sheets, path)
	}
	drawing := filepath.Join(dir, "strip.png")
	status, _, errs := command(t, "", "draw", "-what", "strip", "-o", drawing, examplePlan)
	require.Zero(t, status, errs)
	two := filepath.Join(dir, "two.pdf")
	status, _, errs = command(t, "", "draw", "-o", two, examplePlan, blockedPlan(t))
	require.Zero(t, status, errs)

	data := t.TempDir()
	status, out, errs := command(t, "", append([]string{"in", "-data", data, drawing, two}, sheets...)...)
	require.Zero(t, status, errs)
	assert.Equal(t, "6 plans, 0 revisions, 0 rams came in\n", out)
	a, err := archive.Look(t.Context(), data)
	require.NoError(t, err)
	defer a.Close()
	for id := archive.ID(1); id <= 2; id++ {
		h, err := a.Get(t.Context(), id)
		require.NoError(t, err)
		plan, faults := h.Draft.Check()
		require.Empty(t, faults)
		assert.Equal(t, example.Digest(), plan.Digest(), "plan %d", id)
	}
}

// TestStopFirst: a verb that needs the archive for itself says what to do while
// it is served.
func TestStopFirst(t *testing.T) {
	dir := t.TempDir()
	status, _, errs := command(t, "", "in", "-data", dir, examplePlan)
	require.Zero(t, status, errs)
	backup := filepath.Join(t.TempDir(), "backup.db")
	status, _, errs = command(t, "", "backup", "-data", dir, backup)
	require.Zero(t, status, errs)
	address, stop := served(t, "-data", dir, "-listen", "127.0.0.1:0")
	for _, args := range [][]string{{"in", "-data", dir, examplePlan}, {"restore", "-data", dir, backup}} {
		status, _, errs := command(t, "", args...)
		assert.Equal(t, statusRefused, status, args)
		assert.Contains(t, errs, address, args)
		assert.Contains(t, errs, "stop that process first", args)
	}
	assert.Zero(t, stop())
}
