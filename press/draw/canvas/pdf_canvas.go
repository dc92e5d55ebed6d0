package canvas

import (
	"math"
	"strings"

	"codeberg.org/go-pdf/fpdf"
	xfont "golang.org/x/image/font"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/vg"
)

// pdf is a vg.Canvas on one page of a PDF document.
type pdf struct {
	surface
	doc *fpdf.Fpdf
}

var _ vg.CanvasSizer = (*pdf)(nil)

// Stroke draws the line of a path.
func (c *pdf) Stroke(path vg.Path) {
	s := c.now()
	if s.width <= 0 {
		return
	}
	_, k, opacity := s.paint()
	c.doc.SetDrawColor(int(k.R), int(k.G), int(k.B))
	c.doc.SetAlpha(opacity, "Normal")
	c.doc.SetLineWidth(s.width * points)
	dash := make([]float64, len(s.dash))
	for i, d := range s.dash {
		dash[i] = d.Points() * points
	}
	c.doc.SetDashPattern(dash, 0)
	c.trace(path)
	c.doc.DrawPath("D")
}

// Fill fills a path.
func (c *pdf) Fill(path vg.Path) {
	_, k, opacity := c.now().paint()
	c.doc.SetFillColor(int(k.R), int(k.G), int(k.B))
	c.doc.SetAlpha(opacity, "Normal")
	c.trace(path)
	c.doc.DrawPath("F")
}

// on gives the place of a point on the page.
func (c *pdf) on(p vg.Point) (x, y float64) {
	x, y = c.place(p)
	return x * points, y * points
}

func (c *pdf) trace(path vg.Path) {
	for i, p := range path {
		x, y := c.on(p.Pos)
		switch p.Type {
		case vg.MoveComp:
			c.doc.MoveTo(x, y)
		case vg.LineComp:
			c.doc.LineTo(x, y)
		case vg.ArcComp:
			c.arc(p, i == 0)
		case vg.CurveComp:
			x0, y0 := c.on(p.Control[0])
			if len(p.Control) == 1 {
				c.doc.CurveTo(x0, y0, x, y)
				continue
			}
			x1, y1 := c.on(p.Control[1])
			c.doc.CurveBezierCubicTo(x0, y0, x1, y1, x, y)
		case vg.CloseComp:
			c.doc.ClosePath()
		}
	}
}

// arc writes an arc as cubics of at most a quarter of a circle each, whose
// control points lie at 4/3·tan(angle/4) radii on the tangents.
func (c *pdf) arc(p vg.PathComp, first bool) {
	at := func(angle, tangent float64) (x, y float64) {
		sin, cos := math.Sincos(angle)
		return c.on(vg.Point{
			X: p.Pos.X + p.Radius*vg.Length(cos-tangent*sin),
			Y: p.Pos.Y + p.Radius*vg.Length(sin+tangent*cos),
		})
	}
	if x, y := at(p.Start, 0); first {
		c.doc.MoveTo(x, y)
	} else {
		c.doc.LineTo(x, y)
	}
	n := math.Ceil(math.Abs(p.Angle)/(math.Pi/2) - 1e-9)
	step := p.Angle / math.Max(n, 1)
	reach := 4.0 / 3 * math.Tan(step/4)
	for i := range int(n) {
		from := p.Start + float64(i)*step
		x0, y0 := at(from, reach)
		x1, y1 := at(from+step, -reach)
		x, y := at(from+step, 0)
		c.doc.CurveBezierCubicTo(x0, y0, x1, y1, x, y)
	}
}

// FillString writes a text from its point to the right.
func (c *pdf) FillString(f font.Face, pt vg.Point, s string) {
	weight := ""
	if f.Font.Weight == xfont.WeightBold {
		weight = "B"
	}
	_, k, opacity := c.now().paint()
	c.doc.SetFont(pdfFamily, weight, f.Font.Size.Points()*points)
	c.doc.SetTextColor(int(k.R), int(k.G), int(k.B))
	c.doc.SetAlpha(opacity, "Normal")
	x, y := c.on(pt)
	turn := c.now().turn()
	if turn != 0 {
		c.doc.TransformBegin()
		c.doc.TransformRotate(turn, x, y)
	}
	c.doc.Text(x, y, basicPlane(s))
	if turn != 0 {
		c.doc.TransformEnd()
	}
}

// basicPlane puts an empty box in the place of every character that the library
// cannot take: it panics on those beyond the basic plane.
func basicPlane(s string) string {
	return strings.Map(func(r rune) rune {
		if r > 0xFFFE || r < ' ' {
			return emptyBox
		}
		return r
	}, s)
}
