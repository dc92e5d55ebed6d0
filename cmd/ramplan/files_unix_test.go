//go:build unix

package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// TestGoodFileOutlives draws over a good PDF under a limit that lets no file grow to
// its size, as a full disk would: the program fails, and the PDF is what it was. So
// it is where a link leads to it, and where it may not be written.
func TestGoodFileOutlives(t *testing.T) {
	sheet := drawnTo(t, "sheet.pdf")
	good, err := os.ReadFile(sheet)
	require.NoError(t, err)
	require.Greater(t, len(good), 16*512)
	link := filepath.Join(filepath.Dir(sheet), "link.pdf")
	require.NoError(t, os.Symlink(sheet, link))
	for _, to := range []string{sheet, link} {
		program := exec.Command("sh", "-c", `ulimit -f 16; exec "$0" draw -o "$1" "$2"`, os.Args[0], to, examplePlan) // 16 blocks of 512 bytes
		program.Env = append(os.Environ(), programVariable+"=1")
		said, err := program.CombinedOutput()
		require.Error(t, err, "it should have met the limit: %s", said)
		again, err := os.ReadFile(sheet)
		require.NoError(t, err)
		assert.Equal(t, good, again)
	}
	status, _, errs := command(t, "", "draw", "-o", link, "-size", "letter", examplePlan)
	require.Zero(t, status, errs)
	info, err := os.Lstat(link)
	require.NoError(t, err)
	assert.Equal(t, os.ModeSymlink, info.Mode().Type(), "the link stays one")
	other, err := os.ReadFile(sheet)
	require.NoError(t, err)
	assert.NotEqual(t, good, other, "and what it leads to is new")
	status, out, errs := command(t, "", "extract", "-o", os.DevNull, sheet)
	assert.Zero(t, status, errs)
	assert.Empty(t, out, "a device is written to as it comes")
}
