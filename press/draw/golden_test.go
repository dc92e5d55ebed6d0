package draw

import (
	"flag"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"ramplan/press"
)

var update = flag.Bool("update", false, "write the golden files anew")

// golden compares a drawing with its file, byte for byte; what was drawn is left
// beside it when it differs.
func golden(t *testing.T, name string, got []byte) {
	t.Helper()
	file := filepath.Join("..", "..", "testdata", "golden", name)
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

// TestGoldenStrip is a regression value: the strip of the example plan as it was
// looked at and found right.
func TestGoldenStrip(t *testing.T) {
	golden(t, "strip-example.svg", modelOf(example(t, nil)).picture(Options{}).svg())
	golden(t, "strip-example-compact.svg", modelOf(example(t, nil)).picture(Options{Compact: true}).svg())
}

// TestGoldenCharts holds regression values too: the other drawings of the
// example plan.
func TestGoldenCharts(t *testing.T) {
	p := example(t, nil)
	r := press.Evaluate(p)
	for _, d := range drawings[1:] {
		golden(t, d.name+"-example.svg", d.make(p, r, Options{}).svg())
	}
}

// TestGoldenMini holds regression values: the small strips of two rows of the
// example plan, one with a reading and one without.
func TestGoldenMini(t *testing.T) {
	p := example(t, nil)
	r := press.Evaluate(p)
	minis := NewMinis(p, r)
	for name, row := range map[string]string{"mini-nominal": press.RowNominal, "mini-missing": press.RowMissing} {
		golden(t, name+"-example.svg", minis.Row(*faultRow(r, row), Options{ID: name}).svg())
	}
}
