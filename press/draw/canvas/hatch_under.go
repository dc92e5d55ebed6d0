package canvas

import (
	"math"

	"gonum.org/v1/plot/vg"
)

// hatchStep is how finely the edge of a curve cuts the lines of a hatch, px.
const hatchStep = 0.5

// HatchUnder fills what lies under a curve with the lines of a hatch. The shape
// begins and ends on its base, and x never runs back on it.
func (p *Pen) HatchUnder(k Ink, h Hatch, shape [][2]float64) {
	if h.Gap <= 0 || len(shape) < 3 {
		return
	}
	base, top := shape[0][1], shape[0][1]
	for _, q := range shape {
		top = math.Min(top, q[1])
	}
	box := Rectangle{shape[0][0], top, shape[len(shape)-1][0], base}
	var path vg.Path
	for _, slope := range []float64{1, -1} {
		if slope > 0 && !h.Rising || slope < 0 && !h.Falling {
			continue
		}
		diagonalsOf(box, h.Gap, slope, func(c float64) { p.runs(&path, shape, box, c, slope) })
	}
	if len(path) > 0 {
		p.stroke(k, hatching, Solid, path)
	}
}

// runs adds the pieces of the line x + slope·y = c that lie under the curve.
func (p *Pen) runs(path *vg.Path, shape [][2]float64, box Rectangle, c, slope float64) {
	from, inside := 0.0, false
	last, i := 0.0, 1
	finish := func(x float64) {
		if inside && x-from >= 2*hatchStep {
			path.Move(p.at(from, (c-from)/slope))
			path.Line(p.at(x, (c-x)/slope))
		}
		inside = false
	}
	x0, x1 := c-slope*box.Y1, c-slope*box.Y0
	if x0 > x1 {
		x0, x1 = x1, x0
	}
	for x := math.Max(x0, box.X0); x <= math.Min(x1, box.X1); x += hatchStep {
		for i < len(shape)-1 && shape[i][0] < x {
			i++
		}
		a, b := shape[i-1], shape[i]
		edge := a[1]
		if b[0] > a[0] {
			edge += (b[1] - a[1]) * (x - a[0]) / (b[0] - a[0])
		}
		switch y := (c - x) / slope; {
		case y < edge || y > box.Y1:
			finish(last)
		case !inside:
			from, inside = x, true
		}
		last = x
	}
	finish(last)
}
