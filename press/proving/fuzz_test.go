package proving

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Whatever a table holds, every line of it is among the good rows or the refused ones; what
// is taken as a study is taken as JSON too, and is the same when it is written and read again.
func FuzzReadCSV(f *testing.F) {
	seeds(f, "*.csv")
	for _, name := range []string{"load-cell", "stiffness", "trial-parts"} {
		f.Add(readExample(f, name))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		s, lines := ReadCSV(data)
		require.Len(t, s.Rows, len(lines.Rows))
		for _, e := range lines.Errors("x.csv") {
			assert.NotContains(t, e, "\n")
		}
		if len(data) <= 1<<16 {
			nothingLost(t, data, lines)
		}
		if !lines.Sound() {
			return
		}
		d, problems := Decode(s.JSON())
		require.Empty(t, problems)
		assert.Equal(t, s.Digest(), d.Digest())
		c, again := ReadCSV(s.CSV())
		require.Empty(t, again.Faults, string(s.CSV()))
		assert.Equal(t, s.Digest(), c.Digest())
	})
}

// Whatever a document holds, it is refused with a reason, or it is a study that is the same
// when it is written and read again, in JSON and, if a table can hold it, as a table.
func FuzzDecode(f *testing.F) {
	seeds(f, "*.json")
	for _, name := range []string{"load-cell", "stiffness", "trial-parts"} {
		s, _ := ReadCSV(readExample(f, name))
		f.Add(s.JSON())
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		s, problems := Decode(data)
		if s == nil {
			require.NotEmpty(t, problems)
			return
		}
		require.Empty(t, problems)
		d, problems := Decode(s.JSON())
		require.Empty(t, problems)
		assert.Equal(t, s.Digest(), d.Digest())
		c, lines := ReadCSV(s.CSV())
		require.Empty(t, lines.Faults, string(s.CSV()))
		if fitsATable(s) {
			assert.Equal(t, s.Digest(), c.Digest())
		}
	})
}

func fitsATable(s *Study) bool {
	for _, f := range Heads(s.Kind) {
		if text, ok := f.value(s, nil).(string); ok && (text != trim(text) || text != oneLine(text)) {
			return false
		}
	}
	for i := range s.Rows {
		if r := s.Rows[i]; strings.ContainsAny(r.Sample+r.Remark, "\r\n") {
			return false
		}
	}
	return len(s.empty) == 0
}

func seeds(f *testing.F, pattern string) {
	files, err := filepath.Glob(brokenStudies + pattern)
	require.NoError(f, err)
	for _, file := range files {
		data, err := os.ReadFile(file)
		require.NoError(f, err)
		f.Add(data)
	}
}
