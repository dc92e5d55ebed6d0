package page

// A CurveEditor is the drawing of the curve, and its points, which a script lets
// people move.
type CurveEditor struct {
	Note    string // said while the drawing is not that of the points below
	Hint    string // how points are moved; said with the script only
	Drawing string // SVG
	Box     string // its view box
	X, Y    string // figures at the ends of an axis, their places, and the step: five numbers
	Points  []CurvePoint
}

// A CurvePoint is a point that can be moved.
type CurvePoint struct {
	ID, Row string // of the row, from 0
	Name    string // Point 3
}
