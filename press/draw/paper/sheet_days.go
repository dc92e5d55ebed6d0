package paper

import (
	"math"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
)

// days puts the drawings of the worst day beside one another under its rows, or on a page
// of their own where they find no room there.
func (s *sheet) days() {
	body := s.body()
	width := (body.Width() - 2*sheetGutter) / 3
	o := draw.Options{Compact: true, Width: math.Max(width/sheetScale+2*canvas.Margin, draw.ChartCompactLeast)}
	list := []func(*press.Plan, *press.Result, draw.Options) *canvas.Picture{draw.NewShift, draw.NewSpread, draw.NewWear}
	pictures := make([]*canvas.Picture, len(list))
	high := 0.0
	for i, of := range list {
		pictures[i] = of(s.p, s.r, o)
		high = max(high, fitted(pictures[i], width)*(pictures[i].Height-2*canvas.Margin))
	}
	g, y := s.last, s.tableEnd+sheetGutter
	if y+high > body.Y1 {
		g, y = s.page("Worst day, drawn"), body.Y0
	}
	for i, d := range pictures {
		k, x := fitted(d, width), body.X0+float64(i)*(width+sheetGutter)
		g.add(func(p *canvas.Pen) { p.Within(x-k*canvas.Margin, y-k*canvas.Margin, k, d.Paint) })
	}
	s.last, s.tableEnd = g, y+high
}

// fitted is the scale at which a drawing without its margins is so wide at most.
func fitted(d *canvas.Picture, width float64) float64 {
	return canvas.Fit(d.Width-2*canvas.Margin, width, sheetScale)
}
