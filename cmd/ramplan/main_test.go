package main

import (
	"fmt"
	"os"
	"testing"
)

// With this variable set the test binary is the program itself, so that a test can
// kill it.
const programVariable = "RAMPLAN_TEST_PROGRAM"

// No test may touch the user's own archive: without -data, a folder that goes
// away stands in for it (on macOS, where no variable names it, nothing does).
func TestMain(m *testing.M) {
	if os.Getenv(programVariable) != "" {
		main()
	}
	dir, err := os.MkdirTemp("", "ramplan-test-")
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
	for _, name := range []string{"XDG_DATA_HOME", "LocalAppData"} {
		os.Setenv(name, dir)
	}
	status := m.Run()
	os.RemoveAll(dir)
	os.Exit(status)
}
