package canvas

import (
	"context"
	"image"
	"image/color"
	"math"

	xfont "golang.org/x/image/font"
	"golang.org/x/image/math/fixed"
	"gonum.org/v1/plot/font"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/vgimg"
)

// raster is a canvas of dots that sets its texts itself: the library draws every
// character as a small picture that it then transforms, which costs half of the
// time of a page and blurs the letters. No text of a drawing is turned.
type raster struct {
	*vgimg.Canvas
	dots   *image.RGBA
	scale  float64 // dots for one point
	h      float64 // points
	colour color.Color
	faces  map[font.Font]xfont.Face
	ctx    context.Context // when it has ended, nothing more is drawn
}

func newRaster(w, h float64) *raster {
	c := vgimg.NewWith(vgimg.UseWH(vg.Length(w), vg.Length(h)), vgimg.UseDPI(72*pngDensity/pxPerInch))
	return &raster{c, c.Image().(*image.RGBA), c.DPI() / 72, h, color.Black, map[font.Font]xfont.Face{}, context.Background()}
}

// SetColor sets the colour of texts beside that of lines and fills.
func (c *raster) SetColor(k color.Color) {
	c.colour = k
	c.Canvas.SetColor(k)
}

// Stroke draws a line.
func (c *raster) Stroke(p vg.Path) {
	if c.ctx.Err() == nil {
		c.Canvas.Stroke(p)
	}
}

// Fill fills an area.
func (c *raster) Fill(p vg.Path) {
	if c.ctx.Err() == nil {
		c.Canvas.Fill(p)
	}
}

// FillString writes a text from its point to the right.
func (c *raster) FillString(f font.Face, pt vg.Point, s string) {
	if c.ctx.Err() != nil {
		return
	}
	face := c.faces[f.Font]
	if face == nil {
		face = f.FontFace(c.DPI())
		c.faces[f.Font] = face
	}
	d := xfont.Drawer{
		Dst: c.dots, Src: image.NewUniform(c.colour), Face: face,
		Dot: fixed.Point26_6{X: parts64(pt.X.Points() * c.scale), Y: parts64((c.h - pt.Y.Points()) * c.scale)},
	}
	d.DrawString(s)
}

// close gives back what the faces hold.
func (c *raster) close() {
	for _, f := range c.faces {
		_ = f.Close() // holds memory only
	}
}

// parts64 is a length in dots as the font package counts it, in parts of 64.
func parts64(x float64) fixed.Int26_6 { return fixed.Int26_6(math.Round(x * 64)) }
