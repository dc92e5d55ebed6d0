package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/archive"
	"ramplan/press/proving"
	saying "ramplan/press/words/proof"
)

// TestDrawStudies: a study is drawn beside its plan in every format, a sheet takes the proof
// behind it, and what does not go together is refused in words.
func TestDrawStudies(t *testing.T) {
	dir := onShelf(t)
	example, err := filepath.Abs(examplePlan)
	require.NoError(t, err)
	studies := filepath.Join(filepath.Dir(example), "studies")
	cell, parts := filepath.Join(studies, "load-cell.csv"), filepath.Join(studies, "trial-parts.csv")
	t.Chdir(t.TempDir())
	status, svg, errs := command(t, "", "draw", "-what", "forces", "-study", cell, example)
	require.Zero(t, status, errs)
	assert.Contains(t, svg, "The ram pushes 2416\u202fN at 66\u202f%")
	for _, file := range []string{"trial.pdf", "trial.png", "trial.svg"} {
		status, _, errs := command(t, "", "draw", "-what", "trial", "-width", "page", "-study", parts, "-o", file, example)
		require.Zero(t, status, errs)
		assert.FileExists(t, file)
	}
	pages := func(args ...string) int {
		require.NoError(t, os.MkdirAll("out", 0o700))
		status, _, errs := command(t, "", append([]string{"draw", "-o", "out/sheet.svg"}, args...)...)
		require.Zero(t, status, errs)
		files, err := filepath.Glob("out/*.svg")
		require.NoError(t, err)
		require.NoError(t, os.RemoveAll("out"))
		return len(files)
	}
	bare := pages(example)
	assert.Greater(t, pages("-study", cell+","+parts, example), bare+1)
	assert.Greater(t, pages("-data", dir, "-plan", "WS-210", "-pages", "record"), bare, "what is missing is told as well")
	status, _, errs = command(t, "", "draw", "-what", "trial", "-study", cell, example)
	assert.Equal(t, statusRefused, status)
	assert.Contains(t, errs, "trial is no drawing of a study of kind load_cell; there are forces, sheet")
	require.NoError(t, os.WriteFile("bad.csv", []byte("# kind: load_cell\n# taken_at: 2026-11-20\nsetting,force\n10,x\n"), 0o600))
	status, out, errs := command(t, "", "draw", "-what", "forces", "-study", "bad.csv", example)
	assert.Equal(t, statusRefused, status)
	assert.Empty(t, out)
	assert.Contains(t, errs, "bad.csv:4: force:")
}

// TestDrawSaysWhatWasTaken: the record behind the sheet of a kept plan names the values that its
// draft took over from a study.
func TestDrawSaysWhatWasTaken(t *testing.T) {
	dir := onShelf(t)
	a, err := archive.Open(t.Context(), dir, archive.Options{})
	require.NoError(t, err)
	head, err := a.Get(t.Context(), 1)
	require.NoError(t, err)
	head.Draft.Set("station.nest", "140.01")
	taken := saying.Words{}.TookValues(&proving.Study{Kind: proving.Trial, TakenAt: "2026-11-24"}, "sha256:711cd8aad66f0000")
	_, err = a.Save(t.Context(), 1, archive.At(head.Version), head.Draft, taken)
	require.NoError(t, err)
	require.NoError(t, a.Close())
	t.Chdir(t.TempDir())
	status, _, errs := command(t, "", "draw", "-data", dir, "-plan", "WS-210", "-pages", "record", "-o", "sheet.svg")
	require.Zero(t, status, errs)
	files, err := filepath.Glob("sheet*.svg")
	require.NoError(t, err)
	all := ""
	for _, file := range files {
		data, err := os.ReadFile(file)
		require.NoError(t, err)
		all += string(data)
	}
	for _, said := range []string{"Taken over from studies", ">711cd8aad66f<", ">140.000\u202fmm<", ">140.010\u202fmm<"} {
		assert.Contains(t, all, said)
	}
}
