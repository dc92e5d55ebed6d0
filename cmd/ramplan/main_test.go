package main

import (
	"fmt"
	"os"
	"testing"
)

// No test may touch the user's own archive: without -data, a folder that goes
// away stands in for it (on macOS, where no variable names it, nothing does).
func TestMain(m *testing.M) {
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
