package draw

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"gonum.org/v1/plot/vg"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
)

// uprights is a canvas that keeps the vertical pieces of what is stroked.
type uprights struct {
	canvas.Blank
	lines []vg.Path
}

func (u *uprights) Stroke(p vg.Path) { u.lines = append(u.lines, p) }

// TestAxisNameIsFree: no line of the force window passes through the name of the
// axis of settings, whatever the settings are.
func TestAxisNameIsFree(t *testing.T) {
	for name, p := range drawtest.Plans(t) {
		for _, o := range []Options{{}, {Compact: true}, {NoTitle: true, Flat: true, Compact: true, Width: 437}} {
			d := layForce(newForceModel(p, press.Evaluate(p), *press.Evaluate(p).Traces()), o)
			u := &uprights{}
			pen := canvas.NewPen(u, d.height)
			d.paint(pen)
			var box canvas.Label
			for _, l := range pen.Texts {
				if l.Text == d.xName {
					box = l
				}
			}
			assert.NotZero(t, box.X1, "%s, %+v: no name", name, o)
			assert.LessOrEqual(t, box.Y1, d.height, "%s, %+v", name, o)
			for _, path := range u.lines {
				for i := 1; i < len(path); i++ {
					a, b := path[i-1].Pos, path[i].Pos
					if path[i].Type != vg.LineComp || min(float64(a.X), float64(b.X)) > box.X1 || max(float64(a.X), float64(b.X)) < box.X0 {
						continue
					}
					top, bottom := d.height-max(float64(a.Y), float64(b.Y)), d.height-min(float64(a.Y), float64(b.Y))
					assert.False(t, bottom > box.Y0 && top < box.Y1, "%s, %+v: a line passes through %q", name, o, box.Text)
				}
			}
		}
	}
}
