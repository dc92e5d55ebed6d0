package draw

import (
	"image"
	"image/color"
	"math"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/vgimg"
)

var inks = []ink{paper, ground, black, quiet, faint, good, long, short, accent, alert}

// TestStyleSheet: the page's style sheet has every class that a drawing uses.
func TestStyleSheet(t *testing.T) {
	css, err := os.ReadFile("../../static/css/strip.css")
	require.NoError(t, err)
	for _, k := range inks {
		assert.Contains(t, string(css), ".fill-"+k.name+" {")
		assert.Contains(t, string(css), ".line-"+k.name+" {")
	}
}

// luminance of a colour, WCAG 2.2, relative luminance.
func luminance(c color.NRGBA) float64 {
	linear := func(v uint8) float64 {
		x := float64(v) / 255
		if x <= 0.04045 {
			return x / 12.92
		}
		return math.Pow((x+0.055)/1.055, 2.4)
	}
	return 0.2126*linear(c.R) + 0.7152*linear(c.G) + 0.0722*linear(c.B)
}

// TestContrast: every ink that writes can be read on paper: 4.5 : 1 is the AA
// limit of WCAG 2.2, 1.4.3.
func TestContrast(t *testing.T) {
	for _, k := range []ink{black, quiet, good, long, short, accent, alert} {
		ratio := (luminance(paper.light) + 0.05) / (luminance(k.light) + 0.05)
		assert.GreaterOrEqual(t, ratio, 4.5, k.name)
	}
}

// TestFatesInGrey draws every fate without colour: what is left must tell them
// apart. Along the lines of a hatch little changes, across them much.
func TestFatesInGrey(t *testing.T) {
	type look struct{ rising, falling float64 }
	looks := map[fate]look{}
	for _, f := range []fate{fateGood, fateLong, fateShort, fateFault} {
		g := greySwatch(f)
		looks[f] = look{rising: change(g, 1, -1), falling: change(g, 1, 1)}
	}
	assert.Zero(t, looks[fateGood].rising+looks[fateGood].falling, "good is plain")
	assert.Greater(t, looks[fateLong].falling, 3*looks[fateLong].rising, "long is hatched rising")
	assert.Greater(t, looks[fateShort].rising, 3*looks[fateShort].falling, "short is hatched falling")
	fault := looks[fateFault]
	assert.Greater(t, math.Min(fault.rising, fault.falling), 3.0, "a fault is crossed")
	assert.Less(t, math.Abs(fault.rising-fault.falling), 0.2*fault.rising)
}

// greySwatch draws a fate on paper and takes its colour away.
func greySwatch(f fate) *image.Gray {
	const w, h = 160, 60
	canvas := vgimg.NewWith(vgimg.UseWH(w*vg.Inch/96, h*vg.Inch/96), vgimg.UseDPI(2*96))
	canvas.Scale(72.0/96, 72.0/96)
	p := &pen{c: canvas, h: h}
	p.fill(paper, rect{0, 0, w, h})
	p.swatch(f, rect{0, 0, w, h})
	img := canvas.Image()
	grey := image.NewGray(img.Bounds())
	for y := range img.Bounds().Dy() {
		for x := range img.Bounds().Dx() {
			grey.Set(x, y, img.At(x, y))
		}
	}
	return grey
}

// change is the mean difference of two pixels four apart in a direction.
func change(g *image.Gray, dx, dy int) float64 {
	var sum, n float64
	for y := 10; y < g.Bounds().Dy()-10; y++ {
		for x := 10; x < g.Bounds().Dx()-10; x++ {
			sum += math.Abs(float64(g.GrayAt(x, y).Y) - float64(g.GrayAt(x+4*dx, y+4*dy).Y))
			n++
		}
	}
	return sum / n
}
