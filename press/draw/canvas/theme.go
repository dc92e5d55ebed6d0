package canvas

import (
	"image/color"

	"gonum.org/v1/plot/vg"
)

// An Ink is a named colour of the theme. It is a [color.Color], of the light
// theme, to any canvas; the SVG canvas writes its name as a class as well.
type Ink struct {
	Name    string
	Light   color.NRGBA
	Opacity float64 // 1: full
}

// RGBA makes an ink a color.Color.
func (k Ink) RGBA() (r, g, b, a uint32) {
	c := k.Light
	c.A = uint8(k.Opacity*255 + 0.5)
	return c.RGBA()
}

// Tint is the same ink, thinned.
func (k Ink) Tint(opacity float64) Ink {
	k.Opacity = opacity
	return k
}

func newInk(name string, rgb uint32) Ink {
	return Ink{name, color.NRGBA{uint8(rgb >> 16), uint8(rgb >> 8), uint8(rgb), 255}, 1}
}

// The inks. The dark theme of the same names is in the page's style sheet.
var (
	Paper  = newInk("paper", 0xFFFFFF)
	Ground = newInk("ground", 0xF4F6F8)
	Black  = newInk("ink", 0x1B242D)
	Quiet  = newInk("quiet", 0x5A6672)
	Faint  = newInk("faint", 0xC9D0D7)
	Good   = newInk("good", 0x0A6B66)
	Long   = newInk("long", 0xB4530A)
	Short  = newInk("short", 0x5B3FA6)
	Accent = newInk("accent", 0x1F5FBF)
	Alert  = newInk("alert", 0xB3261E)
)

// Tints of fills.
const (
	FillTint  = 0.15 // fields of a fate
	BandTint  = 0.22 // what a ram scatters by, darker in grey than the field of a fate
	QuietTint = 0.08 // bodies and stretches
	LensTint  = 0.05 // between the projection lines
)

// Line widths, px: after the proportions of ISO 128, at screen scale.
const (
	Outline  = 1.5
	ThinLine = 1
	hatching = 0.9
)

// Type sizes, px.
const (
	Small   = 12
	Body    = 14
	Heading = 16
)

// Leading is the distance of baselines, in type sizes.
const Leading = 1.35

// The one family of the drawings, and what stands in for it with the same
// widths where it is not installed.
const familyList = "'Liberation Sans', Arial, Helvetica, sans-serif"

// Margin around a drawing, px.
const Margin = 16

// A Dash is how a line is broken: the px of its pieces and gaps in turn; nil: not at all.
type Dash []vg.Length

// The dashes.
var (
	Solid    Dash
	Dashed   = Dash{5, 3}
	Centring = Dash{10, 3, 2, 3} // centre line: long dash, short dash
)
