package grey

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"gonum.org/v1/plot/vg"

	"ramplan/press/draw/canvas"
)

// TestGreyTestFails: the test above finds what differs by hue alone.
func TestGreyTestFails(t *testing.T) {
	draw := func(paint func(*canvas.Pen)) int {
		m := newMarks(200)
		p := canvas.NewPen(m, 200)
		paint(p)
		return len(Lost(m.list, p.Texts))
	}
	left, right := canvas.Rect(20, 20, 120, 60), canvas.Rect(200, 120, 300, 160)
	two := func(a, b canvas.Ink, more func(*canvas.Pen)) int {
		return draw(func(p *canvas.Pen) {
			p.Fill(a.Tint(canvas.FillTint), left)
			p.Fill(b.Tint(canvas.FillTint), right)
			more(p)
		})
	}
	none := func(*canvas.Pen) {}
	assert.Equal(t, 1, two(canvas.Good, canvas.Long, none), "two fields of different hue")
	assert.Equal(t, 0, two(canvas.Good, canvas.Long, func(p *canvas.Pen) { p.Hatch(canvas.Long, canvas.RisingHatch, right) }), "one of them hatched")
	assert.Equal(t, 1, two(canvas.Short, canvas.Long, func(p *canvas.Pen) {
		p.Hatch(canvas.Long, canvas.RisingHatch, right)
		p.Hatch(canvas.Short, canvas.RisingHatch, left)
	}), "both hatched alike")
	assert.Equal(t, 0, two(canvas.Short, canvas.Long, func(p *canvas.Pen) {
		p.Hatch(canvas.Long, canvas.RisingHatch, right)
		p.Hatch(canvas.Short, canvas.FallingHatch, left)
	}), "hatched in two ways")
	assert.Equal(t, 0, two(canvas.Good, canvas.Long, func(p *canvas.Pen) { p.Text(canvas.Plain(canvas.Black, canvas.Small), 30, 40, canvas.Start, "good") }), "a word in one")
	lines := func(a, b canvas.Ink, dash []vg.Length) int {
		return draw(func(p *canvas.Pen) {
			p.Line(a, canvas.Outline, canvas.Solid, [2]float64{20, 20}, [2]float64{220, 60})
			p.Line(b, canvas.Outline, dash, [2]float64{20, 120}, [2]float64{220, 190})
		})
	}
	assert.Equal(t, 1, lines(canvas.Accent, canvas.Alert, canvas.Solid))
	assert.Equal(t, 1, lines(canvas.Good, canvas.Quiet, canvas.Solid))
	assert.Equal(t, 0, lines(canvas.Accent, canvas.Alert, canvas.Dashed))
	assert.Equal(t, 0, lines(canvas.Good, canvas.Black, canvas.Solid), "much darker")
}
