package drawtest

import (
	"os"
	"os/exec"
	"testing"

	"github.com/stretchr/testify/require"
)

// Tool runs a program of others on a file. Where it is not installed the test is
// skipped, unless RAMPLAN_PAPER=required.
func Tool(t *testing.T, name string, args ...string) string {
	t.Helper()
	if _, err := exec.LookPath(name); err != nil {
		if os.Getenv("RAMPLAN_PAPER") == "required" {
			t.Fatalf("%s is not installed, and RAMPLAN_PAPER=required", name)
		}
		t.Skipf("%s is not installed; with RAMPLAN_PAPER=required this is a failure", name)
	}
	out, err := exec.Command(name, args...).CombinedOutput()
	require.NoError(t, err, "%s %v: %s", name, args, out)
	return string(out)
}
