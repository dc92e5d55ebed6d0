package draw

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
)

// TestGuidesPassNoWord: the lines that carry the window's edges through the lens
// never run through the words of its rows.
func TestGuidesPassNoWord(t *testing.T) {
	met := 0
	for name, p := range drawtest.Plans(t) {
		for _, o := range forms {
			d := newStripDrawing(modelOf(p), o)
			pen := canvas.NewPen(canvas.Blank{}, d.height)
			d.lens.paint(pen)
			for _, text := range pen.Texts {
				if !slices.Contains([]string{"long", "short", "on", "off"}, text.Text) || text.Y1 > d.lens.frameEnd() {
					continue
				}
				for _, v := range []*float64{d.m.zoneStart, d.m.end, d.m.zoneEnd} {
					if v == nil || !d.lens.scale.Has(*v) {
						continue
					}
					if x := d.lens.scale.At(*v); x > text.X0-2 && x < text.X1+2 {
						met++
						assert.True(t, text.Clear, "%s, %+v: the edge at %v runs through %q", name, o, *v, text.Text)
					}
				}
			}
		}
	}
	assert.Greater(t, met, 10, "the plans try it")
}
