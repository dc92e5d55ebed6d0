package draw

// rect is a rectangle by its edges.
type rect struct{ x0, y0, x1, y1 float64 }

// Rect makes a rectangle of its left, upper, right and lower edge.
func Rect(x0, y0, x1, y1 float64) rect { return rect{x0, y0, x1, y1} }

func (r rect) corners() [][2]float64 {
	return [][2]float64{{r.x0, r.y0}, {r.x1, r.y0}, {r.x1, r.y1}, {r.x0, r.y1}}
}

// inset is the same rectangle, so much smaller on every side.
func (r rect) inset(by float64) rect { return rect{r.x0 + by, r.y0 + by, r.x1 - by, r.y1 - by} }

// width and height of it.
func (r rect) width() float64  { return r.x1 - r.x0 }
func (r rect) height() float64 { return r.y1 - r.y0 }
