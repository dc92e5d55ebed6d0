package proof

import (
	"math"

	"gonum.org/v1/plot/vg"

	"ramplan/press/draw/canvas"
)

// rounds is a canvas that keeps the middles of round fills of a radius.
type rounds struct {
	canvas.Blank
	radius, high float64
	at           [][2]float64
}

func (r *rounds) Fill(p vg.Path) {
	for _, c := range p {
		if c.Type == vg.ArcComp && math.Abs(c.Radius.Points()-r.radius) < 1e-9 {
			r.at = append(r.at, [2]float64{c.Pos.X.Points(), r.high - c.Pos.Y.Points()})
		}
	}
}
