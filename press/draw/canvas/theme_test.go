package canvas

import (
	"os"
	"path/filepath"
	"testing"

	"ramplan/press/presstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/draw/drawtest"
)

var inks = []Ink{Paper, Ground, Black, Quiet, Faint, Good, Long, Short, Accent, Alert}

// TestStyleSheet: the page's style sheet has every class that a drawing uses.
func TestStyleSheet(t *testing.T) {
	css, err := os.ReadFile(filepath.Join(presstest.Folder(t), "../static/css/strip.css"))
	require.NoError(t, err)
	for _, k := range inks {
		assert.Contains(t, string(css), ".fill-"+k.Name+" {")
		assert.Contains(t, string(css), ".line-"+k.Name+" {")
	}
}

// TestContrast: every ink that writes can be read on paper: 4.5 : 1 is the AA
// limit of WCAG 2.2, 1.4.3.
func TestContrast(t *testing.T) {
	for _, k := range []Ink{Black, Quiet, Good, Long, Short, Accent, Alert} {
		ratio := (drawtest.Luminance(Paper.Light) + 0.05) / (drawtest.Luminance(k.Light) + 0.05)
		assert.GreaterOrEqual(t, ratio, 4.5, k.Name)
	}
}
