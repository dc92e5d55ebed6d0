package paper

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw/drawtest"
)

// TestGoldenSheets holds regression values: the first page of the example plan as a draft,
// with its mark, as it was issued, with who signed and without one, and of a later revision
// superseded, each as it was looked at and found right.
func TestGoldenSheets(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	for name, o := range map[string]SheetOptions{
		"sheet-draft.svg":      {Day: "2026-03-02"},
		"sheet-issued.svg":     {Issue: issued},
		"sheet-superseded.svg": {Issue: issued, Superseded: "superseded by revision C, issued 2026-03-09"},
	} {
		var b bytes.Buffer
		require.NoError(t, NewSheet(p, r, o).Page(0).SVG(&b))
		drawtest.Golden(t, name, b.Bytes())
	}
}
