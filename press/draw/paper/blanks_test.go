package paper

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press/draw/typeset"
)

// TestBlanksStayWithTheirNames: what is filled in by hand stands on one line with its
// name, however narrow the page, and each line has room over it to write.
func TestBlanksStayWithTheirNames(t *testing.T) {
	names := []string{"Date", "Load cell number", "Controller program"}
	for _, width := range []float64{1, 300, 1000} {
		lines := blanks(names, width)
		for _, line := range lines {
			assert.Len(t, typeset.Set([]typeset.Paragraph{{Text: line, Style: typeset.Text}}, 1000), 1)
		}
		all := strings.Join(lines, "\n")
		for _, name := range names {
			assert.Contains(t, strings.ReplaceAll(all, "\u00a0", " "), name+": ____________________")
		}
	}
	assert.Len(t, blanks(names, 1000), 1)
	assert.Len(t, blanks(names, 1), 3)
}
