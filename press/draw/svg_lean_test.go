package draw

import (
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
	"ramplan/press/draw/drawtest"
)

// TestSVGIsLean: an answer to typing draws four times, so a drawing does not take a piece
// of memory for each figure that it writes. The bound is an aim of this project, no source.
func TestSVGIsLean(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	figures, pieces := 0, 0.0
	for _, draw := range pictures {
		d := draw(p, r, Options{})
		figures += len(regexp.MustCompile(`[\d.]+`).FindAll(svgOf(d), -1))
		pieces += testing.AllocsPerRun(5, func() { svgOf(d) })
	}
	assert.Less(t, pieces, float64(figures)/2, "%d figures", figures)
}
