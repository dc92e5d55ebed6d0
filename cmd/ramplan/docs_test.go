package main

import (
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// shellLines gives the lines of the sh blocks of a document.
func shellLines(t *testing.T, name string) []string {
	t.Helper()
	text, err := os.ReadFile("../../" + name)
	require.NoError(t, err)
	var out []string
	for _, block := range regexp.MustCompile("(?s)```sh\n(.*?)```").FindAllStringSubmatch(string(text), -1) {
		out = append(out, strings.Split(strings.TrimSpace(block[1]), "\n")...)
	}
	return out
}

// What the README tells people to type works as it stands.
func TestReadmeCommands(t *testing.T) {
	all := shellLines(t, "README.md")
	require.GreaterOrEqual(t, len(all), 4)
	assert.Equal(t, []string{"go run ./cmd/ramplan", "go test ./..."}, all[:2])
	folder := t.TempDir()
	require.NoError(t, os.CopyFS(filepath.Join(folder, "static/examples"), os.DirFS("../../static/examples")))
	t.Chdir(folder)
	for _, line := range all[2:] {
		words := strings.Fields(line)
		require.Equal(t, "ramplan", words[0], line)
		status, _, errs := command(t, "", words[1:]...)
		assert.Zero(t, status, "%s: %s", line, errs)
	}
	svg, err := os.ReadFile("strip.svg")
	require.NoError(t, err)
	assert.NotEmpty(t, svg)
}

// The commands in the contributor's guide name scripts, packages and tests that
// are there.
func TestGuideCommands(t *testing.T) {
	text, err := os.ReadFile("../../DEVELOPERS.md")
	require.NoError(t, err)
	commands := regexp.MustCompile("(?m)^\\| `([^`]+)` \\|").FindAllStringSubmatch(string(text), -1)
	checked := 0
	for _, c := range commands {
		words := strings.Fields(c[1])
		if words[0] != "go" && words[0] != "bash" {
			continue // a package of the layout
		}
		checked++
		for i, w := range words {
			switch {
			case strings.HasPrefix(w, ".ci/"):
				assert.FileExists(t, "../../"+w)
			case strings.HasPrefix(w, "./") && !strings.HasSuffix(w, "..."):
				assert.DirExists(t, "../../"+w)
			case w == "-run" && words[i+1] != "NONE":
				assert.True(t, hasTest(t, words[i+1]), "no test %s", words[i+1])
			}
		}
	}
	assert.GreaterOrEqual(t, checked, 6)
	for _, folder := range regexp.MustCompile("(?m)^\\| `([a-z/]+)`(?:, `([a-z/]+)`)? \\|").FindAllStringSubmatch(string(text), -1) {
		for _, name := range folder[1:] {
			if name != "" {
				assert.DirExists(t, "../../"+name)
			}
		}
	}
}

// hasTest looks for a test function whose name begins like this, as -run does, in
// the whole project.
func hasTest(t *testing.T, name string) bool {
	t.Helper()
	found := false
	err := filepath.WalkDir("../..", func(path string, d fs.DirEntry, err error) error {
		if err != nil || found || !strings.HasSuffix(path, "_test.go") {
			return err
		}
		text, err := os.ReadFile(path)
		found = strings.Contains(string(text), "func "+name)
		return err
	})
	require.NoError(t, err)
	return found
}
