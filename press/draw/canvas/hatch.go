package canvas

import (
	"math"

	"gonum.org/v1/plot/vg"
)

// A Hatch tells fields apart without colour.
type Hatch struct {
	Rising, Falling bool
	Gap             float64 // px between lines, measured across
}

// The hatches of the fates.
var (
	NoHatch      = Hatch{}
	RisingHatch  = Hatch{Rising: true, Gap: 7}
	FallingHatch = Hatch{Falling: true, Gap: 7}
	CrossHatch   = Hatch{Rising: true, Falling: true, Gap: 4}
)

// Hatch fills a rectangle with lines at 45°, cut at its edges by arithmetic:
// the canvas has no clip path and no pattern. Lines of neighbouring fields meet,
// because they are counted from the origin.
func (p *Pen) Hatch(k Ink, h Hatch, r Rectangle) {
	if h.Gap <= 0 || r.X1 <= r.X0 || r.Y1 <= r.Y0 {
		return
	}
	var path vg.Path
	if h.Rising {
		p.diagonals(&path, r, h.Gap, 1)
	}
	if h.Falling {
		p.diagonals(&path, r, h.Gap, -1)
	}
	if len(path) > 0 {
		p.stroke(k, hatching, Solid, path)
	}
}

// diagonals adds the pieces inside r of the lines x + slope·y = n·step.
func (p *Pen) diagonals(path *vg.Path, r Rectangle, gap, slope float64) {
	diagonalsOf(r, gap, slope, func(c float64) {
		// On the line, x = c − slope·y: cut at the left and right edges.
		ya, yb := slope*(c-r.X0), slope*(c-r.X1)
		top, bottom := math.Max(r.Y0, math.Min(ya, yb)), math.Min(r.Y1, math.Max(ya, yb))
		if bottom-top < 0.3 {
			return
		}
		path.Move(p.at(c-slope*top, top))
		path.Line(p.at(c-slope*bottom, bottom))
	})
}

// diagonalsOf gives c of the lines x + slope·y = c = n·step that pass a rectangle.
func diagonalsOf(r Rectangle, gap, slope float64, line func(c float64)) {
	step := gap * math.Sqrt2
	lowY, highY := r.Y0, r.Y1
	if slope < 0 {
		lowY, highY = r.Y1, r.Y0
	}
	for n := math.Floor((r.X0+slope*lowY)/step) + 1; n*step < r.X1+slope*highY; n++ {
		line(n * step)
	}
}
