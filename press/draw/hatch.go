package draw

import (
	"math"

	"gonum.org/v1/plot/vg"
)

// A hatch tells fields apart without colour.
type hatch struct {
	rising, falling bool
	gap             float64 // px between lines, measured across
}

// The hatches of the fates.
var (
	noHatch      = hatch{}
	risingHatch  = hatch{rising: true, gap: 7}
	fallingHatch = hatch{falling: true, gap: 7}
	crossHatch   = hatch{rising: true, falling: true, gap: 4}
)

// hatch fills a rectangle with lines at 45°, cut at its edges by arithmetic:
// the canvas has no clip path and no pattern. Lines of neighbouring fields meet,
// because they are counted from the origin.
func (p *pen) hatch(k ink, h hatch, r rect) {
	if h.gap <= 0 || r.x1 <= r.x0 || r.y1 <= r.y0 {
		return
	}
	var path vg.Path
	if h.rising {
		p.diagonals(&path, r, h.gap, 1)
	}
	if h.falling {
		p.diagonals(&path, r, h.gap, -1)
	}
	if len(path) > 0 {
		p.stroke(k, hatching, solid, path)
	}
}

// diagonals adds the pieces inside r of the lines x + slope·y = n·step.
func (p *pen) diagonals(path *vg.Path, r rect, gap, slope float64) {
	diagonalsOf(r, gap, slope, func(c float64) {
		// On the line, x = c − slope·y: cut at the left and right edges.
		ya, yb := slope*(c-r.x0), slope*(c-r.x1)
		top, bottom := math.Max(r.y0, math.Min(ya, yb)), math.Min(r.y1, math.Max(ya, yb))
		if bottom-top < 0.3 {
			return
		}
		path.Move(p.at(c-slope*top, top))
		path.Line(p.at(c-slope*bottom, bottom))
	})
}

// diagonalsOf gives c of the lines x + slope·y = c = n·step that pass a rectangle.
func diagonalsOf(r rect, gap, slope float64, line func(c float64)) {
	step := gap * math.Sqrt2
	lowY, highY := r.y0, r.y1
	if slope < 0 {
		lowY, highY = r.y1, r.y0
	}
	for n := math.Floor((r.x0+slope*lowY)/step) + 1; n*step < r.x1+slope*highY; n++ {
		line(n * step)
	}
}
