package drawtest

import (
	"flag"
	"os"
	"path/filepath"
	"testing"

	"ramplan/press/presstest"

	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write the golden files anew")

// Golden compares a drawing with its file, byte for byte; what was drawn is left
// beside it when it differs.
func Golden(t *testing.T, name string, got []byte) {
	t.Helper()
	file := filepath.Join(presstest.Folder(t), "golden", name)
	if *update {
		require.NoError(t, os.WriteFile(file, got, 0o644))
	}
	want, err := os.ReadFile(file)
	require.NoError(t, err)
	if string(want) != string(got) {
		actual := filepath.Join(t.ArtifactDir(), name)
		require.NoError(t, os.WriteFile(actual, got, 0o644))
		t.Fatalf("%s differs from what is drawn now; look at %s, and take it over with -update if it is right", file, actual)
	}
}
