package press

import (
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/strict"
)

var update = flag.Bool("update", false, "write the expected messages anew")

// Every broken plan is refused with exactly the messages beside it. The first
// two words of a line, path and code, were written by hand before the program
// was asked; the sentence after them is a regression value.
func TestBrokenPlans(t *testing.T) {
	files, err := filepath.Glob("../testdata/plans/bad/*.json")
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(files), 60)
	for _, file := range files {
		t.Run(strings.TrimSuffix(filepath.Base(file), ".json"), func(t *testing.T) {
			data, err := os.ReadFile(file)
			require.NoError(t, err)
			plan, problems := Decode(data)
			require.NotEmpty(t, problems)
			assert.Nil(t, plan)
			var got strings.Builder
			for _, p := range problems {
				got.WriteString(strict.PathOr(p.Path, "-") + " " + p.Code + " " + p.Message + "\n")
			}
			want := strings.TrimSuffix(file, ".json") + ".txt"
			if *update {
				require.NoError(t, os.WriteFile(want, []byte(got.String()), 0o644))
			}
			lines, err := os.ReadFile(want)
			require.NoError(t, err)
			assert.Equal(t, string(lines), got.String())
		})
	}
}
