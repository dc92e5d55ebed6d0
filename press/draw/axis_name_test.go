package draw

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"gonum.org/v1/plot/vg"

	"ramplan/press"
)

// uprights is a canvas that keeps the vertical pieces of what is stroked.
type uprights struct {
	blank
	lines []vg.Path
}

func (u *uprights) Stroke(p vg.Path) { u.lines = append(u.lines, p) }

// TestAxisNameIsFree: no line of the force window passes through the name of the
// axis of settings, whatever the settings are.
func TestAxisNameIsFree(t *testing.T) {
	for name, p := range plans(t) {
		for _, o := range []Options{{}, {Compact: true}, {NoTitle: true, Flat: true, Compact: true, Width: 437}} {
			d := layForce(newForceModel(p, press.Evaluate(p), *press.Evaluate(p).Traces()), o)
			u := &uprights{}
			pen := newPen(u, d.height)
			d.paint(pen)
			var box label
			for _, l := range pen.texts {
				if l.text == d.xName {
					box = l
				}
			}
			assert.NotZero(t, box.x1, "%s, %+v: no name", name, o)
			assert.LessOrEqual(t, box.y1, d.height, "%s, %+v", name, o)
			for _, path := range u.lines {
				for i := 1; i < len(path); i++ {
					a, b := path[i-1].Pos, path[i].Pos
					if path[i].Type != vg.LineComp || min(float64(a.X), float64(b.X)) > box.x1 || max(float64(a.X), float64(b.X)) < box.x0 {
						continue
					}
					top, bottom := d.height-max(float64(a.Y), float64(b.Y)), d.height-min(float64(a.Y), float64(b.Y))
					assert.False(t, bottom > box.y0 && top < box.y1, "%s, %+v: a line passes through %q", name, o, box.text)
				}
			}
		}
	}
}
