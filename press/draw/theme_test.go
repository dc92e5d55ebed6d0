package draw

import (
	"os"
	"path/filepath"
	"testing"

	"ramplan/press/presstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var inks = []ink{paper, ground, black, quiet, faint, good, long, short, accent, alert}

// TestStyleSheet: the page's style sheet has every class that a drawing uses.
func TestStyleSheet(t *testing.T) {
	css, err := os.ReadFile(filepath.Join(presstest.Folder(t), "../static/css/strip.css"))
	require.NoError(t, err)
	for _, k := range inks {
		assert.Contains(t, string(css), ".fill-"+k.name+" {")
		assert.Contains(t, string(css), ".line-"+k.name+" {")
	}
}

// TestContrast: every ink that writes can be read on paper: 4.5 : 1 is the AA
// limit of WCAG 2.2, 1.4.3.
func TestContrast(t *testing.T) {
	for _, k := range []ink{black, quiet, good, long, short, accent, alert} {
		ratio := (luminance(paper.light) + 0.05) / (luminance(k.light) + 0.05)
		assert.GreaterOrEqual(t, ratio, 4.5, k.name)
	}
}
