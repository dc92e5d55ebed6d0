package main

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// serveFor runs serve for a moment and gives what it printed.
func serveFor(t *testing.T, dir string) (status int, out, errs string) {
	t.Helper()
	ctx, cancel := context.WithTimeout(t.Context(), time.Second)
	defer cancel()
	var o, e bytes.Buffer
	status = run(ctx, []string{"serve", "-data", dir, "-listen", "127.0.0.1:0"}, strings.NewReader(""), &o, &e)
	return status, o.String(), e.String()
}

// Whoever expects plans and gets a new archive is told so; where a log lies alone,
// none is made.
func TestANewArchiveIsTold(t *testing.T) {
	dir := t.TempDir()
	status, out, _ := serveFor(t, dir)
	require.Equal(t, statusGood, status)
	assert.Contains(t, out, "a new one, with examples on its shelf, was made in "+filepath.Join(dir, "ramplan.db"))
	status, out, _ = serveFor(t, dir)
	require.Equal(t, statusGood, status)
	assert.NotContains(t, out, "new one")
	assert.Contains(t, out, "The plans are kept in "+filepath.Join(dir, "ramplan.db"))

	other := t.TempDir()
	status, _, errs := command(t, "", "in", "-data", other, examplePlan)
	require.Equal(t, statusGood, status)
	assert.Contains(t, errs, "a new one was made in "+filepath.Join(other, "ramplan.db"))

	log := filepath.Join(other, "ramplan.db-wal")
	require.NoError(t, os.Truncate(filepath.Join(other, "ramplan.db"), 0))
	require.NoError(t, os.WriteFile(log, []byte(strings.Repeat("what was saved last ", 100)), 0o600))
	status, _, errs = serveFor(t, other)
	assert.Equal(t, statusRefused, status)
	assert.Contains(t, errs, "Nothing was touched")
	assert.Contains(t, errs, "ramplan restore -data "+other+" "+log)
	for line := range strings.Lines(errs) {
		assert.True(t, strings.HasPrefix(line, "ramplan: "), line)
	}
}
