package proving

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The three studies of the example station. Derived: the digests were computed by another
// program from the same files.
func TestDigestsOfTheExamples(t *testing.T) {
	for name, want := range map[string]string{
		"load-cell":   "sha256:56b3b07ad5d6",
		"stiffness":   "sha256:5c201802dbc4",
		"trial-parts": "sha256:711cd8aad66f",
	} {
		s, lines := ReadCSV(readExample(t, name))
		require.Empty(t, lines.Faults, name)
		assert.True(t, strings.HasPrefix(s.Digest(), want), "%s: %s", name, s.Digest())
	}
}

func readExample(t testing.TB, name string) []byte {
	t.Helper()
	data, err := os.ReadFile("../../static/examples/studies/" + name + ".csv")
	require.NoError(t, err)
	return data
}
