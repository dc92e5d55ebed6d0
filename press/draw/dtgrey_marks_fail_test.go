package draw

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"gonum.org/v1/plot/vg"
)

// TestGreyTestFails: the test above finds what differs by hue alone.
func TestGreyTestFails(t *testing.T) {
	draw := func(paint func(*pen)) int {
		m := newMarks(200)
		p := newPen(m, 200)
		paint(p)
		return len(lostInGrey(m.list, p.texts))
	}
	left, right := rect{20, 20, 120, 60}, rect{200, 120, 300, 160}
	two := func(a, b ink, more func(*pen)) int {
		return draw(func(p *pen) {
			p.fill(a.tint(fillTint), left)
			p.fill(b.tint(fillTint), right)
			more(p)
		})
	}
	none := func(*pen) {}
	assert.Equal(t, 1, two(good, long, none), "two fields of different hue")
	assert.Equal(t, 0, two(good, long, func(p *pen) { p.hatch(long, risingHatch, right) }), "one of them hatched")
	assert.Equal(t, 1, two(short, long, func(p *pen) { p.hatch(long, risingHatch, right); p.hatch(short, risingHatch, left) }), "both hatched alike")
	assert.Equal(t, 0, two(short, long, func(p *pen) { p.hatch(long, risingHatch, right); p.hatch(short, fallingHatch, left) }), "hatched in two ways")
	assert.Equal(t, 0, two(good, long, func(p *pen) { p.text(style{black, small, false}, 30, 40, start, "good") }), "a word in one")
	lines := func(a, b ink, dash []vg.Length) int {
		return draw(func(p *pen) {
			p.line(a, outline, solid, [2]float64{20, 20}, [2]float64{220, 60})
			p.line(b, outline, dash, [2]float64{20, 120}, [2]float64{220, 190})
		})
	}
	assert.Equal(t, 1, lines(accent, alert, solid))
	assert.Equal(t, 1, lines(good, quiet, solid))
	assert.Equal(t, 0, lines(accent, alert, dashed))
	assert.Equal(t, 0, lines(good, black, solid), "much darker")
}
