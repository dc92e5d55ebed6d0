package main

import (
	"cmp"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write the files and the arrows of the guide's table of packages anew")

const guide = "../../DEVELOPERS.md"

// mostFiles of a folder: whoever opens it should see from their names what is inside.
const mostFiles = 40

// crowded are the folders of more, for which the guide says why.
var crowded = []string{"press/model", "press/words", "press/archive", "press/proving", "web/view", "web"}

var guideRow = regexp.MustCompile("^\\| `([a-z/]+)` \\| ([^|]*) \\| ([^|]*) \\| ")

// TestGuideTable: the guide's table of packages has each of them, under all that it stands
// on, with the number of its files (tests and what is generated left out) and its arrows:
// the packages that it imports and that none of the others that it imports stands on.
func TestGuideTable(t *testing.T) {
	text, err := os.ReadFile(guide)
	require.NoError(t, err)
	imports := importsOf(t)
	lines := strings.Split(string(text), "\n")
	var above []string
	for i, line := range lines {
		m := guideRow.FindStringSubmatch(line)
		if m == nil {
			continue
		}
		name := m[1]
		list, known := imports[name]
		if !known {
			t.Errorf("there is no package %s any more", name)
			continue
		}
		for _, to := range list {
			assert.Contains(t, above, to, "%s stands over what it stands on", name)
		}
		above = append(above, name)
		files := filesOf(t, name)
		if files > mostFiles {
			assert.Contains(t, crowded, name, "%d files: divide it, or say in the guide why not", files)
		}
		want := fmt.Sprintf("| `%s` | %d | %s | ", name, files, cmp.Or(strings.Join(nearest(list, imports), ", "), "–"))
		if *update {
			lines[i] = want + line[len(m[0]):]
			continue
		}
		assert.Equal(t, want, m[0], "go test ./cmd/ramplan -run TestGuideTable -update writes it anew")
	}
	for name := range imports {
		assert.Contains(t, above, name, "the table has no row for it")
	}
	if *update {
		require.NoError(t, os.WriteFile(guide, []byte(strings.Join(lines, "\n")), 0o644))
	}
}

// importsOf gives what each package imports of the project.
func importsOf(t *testing.T) map[string][]string {
	t.Helper()
	out, err := exec.Command("go", "list", "-f", `{{.ImportPath}}{{range .Imports}} {{.}}{{end}}`, "ramplan/...").Output()
	require.NoError(t, err)
	imports := map[string][]string{}
	for line := range strings.Lines(string(out)) {
		words := strings.Fields(line)
		var own []string
		for _, to := range words[1:] {
			if name, ok := strings.CutPrefix(to, "ramplan/"); ok {
				own = append(own, name)
			}
		}
		imports[strings.TrimPrefix(words[0], "ramplan/")] = own
	}
	return imports
}

// nearest leaves out of a list what others of it stand on.
func nearest(list []string, imports map[string][]string) []string {
	var under func(name, of string) bool
	under = func(name, of string) bool {
		return slices.ContainsFunc(imports[of], func(to string) bool { return to == name || under(name, to) })
	}
	return slices.DeleteFunc(slices.Clone(list), func(name string) bool {
		return slices.ContainsFunc(list, func(of string) bool { return under(name, of) })
	})
}

// filesOf counts the files of a package that people write, without tests.
func filesOf(t *testing.T, name string) int {
	t.Helper()
	files, err := filepath.Glob(filepath.Join("../..", name, "*.go"))
	require.NoError(t, err)
	return len(slices.DeleteFunc(files, func(f string) bool {
		return strings.HasSuffix(f, "_test.go") || strings.HasSuffix(f, "_templ.go")
	}))
}
