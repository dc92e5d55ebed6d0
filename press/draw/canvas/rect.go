package canvas

// Rectangle is a rectangle by its edges.
type Rectangle struct{ X0, Y0, X1, Y1 float64 }

// Rect makes a rectangle of its left, upper, right and lower edge.
func Rect(x0, y0, x1, y1 float64) Rectangle { return Rectangle{x0, y0, x1, y1} }

func (r Rectangle) corners() [][2]float64 {
	return [][2]float64{{r.X0, r.Y0}, {r.X1, r.Y0}, {r.X1, r.Y1}, {r.X0, r.Y1}}
}

// Inset is the same rectangle, so much smaller on every side.
func (r Rectangle) Inset(by float64) Rectangle {
	return Rectangle{r.X0 + by, r.Y0 + by, r.X1 - by, r.Y1 - by}
}

// Width of it.
func (r Rectangle) Width() float64 { return r.X1 - r.X0 }

// Height of it.
func (r Rectangle) Height() float64 { return r.Y1 - r.Y0 }
