package draw

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestGuidesPassNoWord: the lines that carry the window's edges through the lens
// never run through the words of its rows.
func TestGuidesPassNoWord(t *testing.T) {
	met := 0
	for name, p := range plans(t) {
		for _, o := range forms {
			d := newStripDrawing(modelOf(p), o)
			pen := newPen(blank{}, d.height)
			d.lens.paint(pen)
			for _, text := range pen.texts {
				if !slices.Contains([]string{"long", "short", "on", "off"}, text.text) || text.y1 > d.lens.frameEnd() {
					continue
				}
				for _, v := range []*float64{d.m.zoneStart, d.m.end, d.m.zoneEnd} {
					if v == nil || !d.lens.scale.has(*v) {
						continue
					}
					if x := d.lens.scale.x(*v); x > text.x0-2 && x < text.x1+2 {
						met++
						assert.True(t, text.clear, "%s, %+v: the edge at %v runs through %q", name, o, *v, text.text)
					}
				}
			}
		}
	}
	assert.Greater(t, met, 10, "the plans try it")
}
