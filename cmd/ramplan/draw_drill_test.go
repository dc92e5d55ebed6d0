package main

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The drill goes into one .html, and into nothing else.
func TestDrawDrill(t *testing.T) {
	to := filepath.Join(t.TempDir(), "drill.html")
	status, _, errors := command(t, "", "draw", "-what", "drill", "-o", to, examplePlan)
	require.Equal(t, statusGood, status, errors)
	data, err := os.ReadFile(to)
	require.NoError(t, err)
	assert.Contains(t, string(data), "<!doctype html>")
	assert.Contains(t, string(data), "DRAFT")
	for _, wrong := range [][]string{
		{"-o", filepath.Join(t.TempDir(), "drill.pdf")},
		{"-o", to, "-pages", "all"},
		{"-o", to, "-title=false"},
		{"-o", to, examplePlan},
	} {
		status, _, errors := command(t, "", append(append([]string{"draw", "-what", "drill"}, wrong...), examplePlan)...)
		assert.Equal(t, statusRefused, status, wrong)
		assert.NotEmpty(t, errors)
	}
}
