package draw

import (
	"image/color"

	"gonum.org/v1/plot/vg"
)

// An ink is a named colour of the theme. It is a [color.Color], of the light
// theme, to any canvas; the SVG canvas writes its name as a class as well.
type ink struct {
	name    string
	light   color.NRGBA
	opacity float64 // 1: full
}

// RGBA makes an ink a color.Color.
func (k ink) RGBA() (r, g, b, a uint32) {
	c := k.light
	c.A = uint8(k.opacity*255 + 0.5)
	return c.RGBA()
}

// tint is the same ink, thinned.
func (k ink) tint(opacity float64) ink {
	k.opacity = opacity
	return k
}

func newInk(name string, rgb uint32) ink {
	return ink{name, color.NRGBA{uint8(rgb >> 16), uint8(rgb >> 8), uint8(rgb), 255}, 1}
}

// The inks. The dark theme of the same names is in the page's style sheet.
var (
	paper  = newInk("paper", 0xFFFFFF)
	ground = newInk("ground", 0xF4F6F8)
	black  = newInk("ink", 0x1B242D)
	quiet  = newInk("quiet", 0x5A6672)
	faint  = newInk("faint", 0xC9D0D7)
	good   = newInk("good", 0x0A6B66)
	long   = newInk("long", 0xB4530A)
	short  = newInk("short", 0x5B3FA6)
	accent = newInk("accent", 0x1F5FBF)
	alert  = newInk("alert", 0xB3261E)
)

// Tints of fills.
const (
	fillTint  = 0.15 // fields of a fate
	bandTint  = 0.22 // what a ram scatters by, darker in grey than the field of a fate
	quietTint = 0.08 // bodies and stretches
	lensTint  = 0.05 // between the projection lines
)

// Line widths, px: after the proportions of ISO 128, at screen scale.
const (
	outline  = 1.5
	thinLine = 1
	hatching = 0.9
)

// Type sizes, px.
const (
	small   = 12
	body    = 14
	heading = 16
)

// leading is the distance of baselines, in type sizes.
const leading = 1.35

// The one family of the drawings, and what stands in for it with the same
// widths where it is not installed.
const familyList = "'Liberation Sans', Arial, Helvetica, sans-serif"

// margin around a drawing, px.
const margin = 16

var (
	solid    []vg.Length
	dashed   = []vg.Length{5, 3}
	centring = []vg.Length{10, 3, 2, 3} // centre line: long dash, short dash
)
