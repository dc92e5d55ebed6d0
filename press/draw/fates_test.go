package draw

import (
	"image"
	"math"
	"testing"

	"ramplan/press/draw/canvas"

	"github.com/stretchr/testify/assert"
	"gonum.org/v1/plot/vg"
	"gonum.org/v1/plot/vg/vgimg"
)

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
	dots := vgimg.NewWith(vgimg.UseWH(w*vg.Inch/96, h*vg.Inch/96), vgimg.UseDPI(2*96))
	dots.Scale(72.0/96, 72.0/96)
	p := canvas.NewPen(dots, h)
	p.Fill(canvas.Paper, canvas.Rect(0, 0, w, h))
	swatch(p, f, canvas.Rect(0, 0, w, h))
	img := dots.Image()
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
