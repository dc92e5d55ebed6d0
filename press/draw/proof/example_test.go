package proof

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/press/draw/drawtest"
	"ramplan/press/presstest"
	"ramplan/press/proving"
)

// TestExampleStudies draws the example studies as they are assessed, in every form. Figures
// of the design (regression values): 2415.609 N at 66 %, 16935.913 N/mm.
func TestExampleStudies(t *testing.T) {
	r := press.Evaluate(drawtest.Example(t, nil))
	for file, want := range map[string]string{"load-cell.csv": "2416\u202fN", "stiffness.csv": "16.9\u202fkN", "trial-parts.csv": "40 parts"} {
		data, err := os.ReadFile(filepath.Join(presstest.Folder(t), "../static/examples/studies", file))
		require.NoError(t, err)
		s, lines := proving.ReadCSV(data)
		require.Empty(t, lines.Faults, file)
		a := proving.Assess(r, []*proving.Study{s}, "2026-11-28")
		for _, d := range Drawings(s.Kind) {
			subject := Subject{r, s, &a.Studies[0]}
			for _, o := range forms {
				picture := d.New(subject, o)
				labelsApart(t, picture, d.Name)
				drawtest.WellFormedSVG(t, svgOf(picture))
				if d.Name != "seen" {
					assert.Contains(t, picture.Title(), want)
				}
			}
			if *look != "" {
				for form, o := range map[string]draw.Options{"wide": {}, "compact": {Compact: true}} {
					var b bytes.Buffer
					require.NoError(t, d.Write(&b, "png", subject, o))
					require.NoError(t, os.WriteFile(filepath.Join(*look, "real-"+d.Name+"-"+form+".png"), b.Bytes(), 0o644))
				}
			}
		}
	}
}
