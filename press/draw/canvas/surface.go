package canvas

import (
	"image"
	"image/color"
	"math"

	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/vg"
)

// surface is what the canvases of our own share: their size, and the state that
// the next shape is drawn with. Coordinates are px.
type surface struct {
	w, h  float64
	stack []state
}

// state is what Push saves.
type state struct {
	colour color.Color
	width  float64
	dash   []vg.Length
	a      [6]float64 // x' = a0·x + a2·y + a4, y' = a1·x + a3·y + a5
}

func newSurface(w, h float64) surface {
	return surface{w, h, []state{{colour: Black, width: 1, a: [6]float64{1, 0, 0, 1, 0, 0}}}}
}

func (c *surface) now() *state { return &c.stack[len(c.stack)-1] }

// paint gives the name of an ink, its colour in the light theme, and how much of
// it is put on.
func (s *state) paint() (name string, k color.NRGBA, opacity float64) {
	if named, ok := s.colour.(Ink); ok {
		return named.Name, named.Light, named.Opacity
	}
	k = color.NRGBAModel.Convert(s.colour).(color.NRGBA)
	return "", k, float64(k.A) / 255
}

// turn is the angle by which texts are turned, degrees, counter-clockwise.
func (s *state) turn() float64 {
	if s.a[1] == 0 && s.a[2] == 0 {
		return 0
	}
	return math.Atan2(s.a[1], s.a[0]) * 180 / math.Pi
}

// Size: see vg.CanvasSizer; the other methods are those of vg.Canvas.
func (c *surface) Size() (x, y vg.Length) { return vg.Length(c.w), vg.Length(c.h) }

// SetLineWidth sets the width of strokes.
func (c *surface) SetLineWidth(w vg.Length) { c.now().width = w.Points() }

// SetLineDash sets the dashes of strokes; an offset is not used here.
func (c *surface) SetLineDash(pattern []vg.Length, _ vg.Length) { c.now().dash = pattern }

// SetColor sets the colour of fills and strokes.
func (c *surface) SetColor(k color.Color) {
	if k == nil {
		k = Black
	}
	c.now().colour = k
}

// Rotate turns what follows.
func (c *surface) Rotate(rad float64) {
	sin, cos := math.Sincos(rad)
	c.transform([6]float64{cos, sin, -sin, cos, 0, 0})
}

// Translate moves what follows.
func (c *surface) Translate(p vg.Point) {
	c.transform([6]float64{1, 0, 0, 1, p.X.Points(), p.Y.Points()})
}

// Scale scales what follows.
func (c *surface) Scale(x, y float64) { c.transform([6]float64{x, 0, 0, y, 0, 0}) }

func (c *surface) transform(b [6]float64) {
	a := c.now().a
	c.now().a = [6]float64{
		a[0]*b[0] + a[2]*b[1], a[1]*b[0] + a[3]*b[1],
		a[0]*b[2] + a[2]*b[3], a[1]*b[2] + a[3]*b[3],
		a[0]*b[4] + a[2]*b[5] + a[4], a[1]*b[4] + a[3]*b[5] + a[5],
	}
}

// Push saves the state, Pop restores it.
func (c *surface) Push() { c.stack = append(c.stack, *c.now()) }

// Pop: see Push.
func (c *surface) Pop() { c.stack = c.stack[:len(c.stack)-1] }

// place gives a point counted from the top left: the origin of vg is bottom left.
func (c *surface) place(p vg.Point) (x, y float64) {
	a, px, py := c.now().a, p.X.Points(), p.Y.Points()
	return a[0]*px + a[2]*py + a[4], c.h - (a[1]*px + a[3]*py + a[5])
}

// Blank is a canvas on which nothing is drawn.
type Blank struct{}

// See vg.Canvas.
func (Blank) SetLineWidth(vg.Length)                 {}
func (Blank) SetLineDash([]vg.Length, vg.Length)     {}
func (Blank) SetColor(color.Color)                   {}
func (Blank) Rotate(float64)                         {}
func (Blank) Translate(vg.Point)                     {}
func (Blank) Scale(float64, float64)                 {}
func (Blank) Push()                                  {}
func (Blank) Pop()                                   {}
func (Blank) Stroke(vg.Path)                         {}
func (Blank) Fill(vg.Path)                           {}
func (Blank) FillString(font.Face, vg.Point, string) {}
func (Blank) DrawImage(vg.Rectangle, image.Image)    {}

// DrawImage is not used by any drawing.
func (c *surface) DrawImage(vg.Rectangle, image.Image) {
	panic("draw: drawings hold no pictures")
}
