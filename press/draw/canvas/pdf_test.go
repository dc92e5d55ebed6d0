package canvas

import (
	"bytes"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/plot/vg"

	"ramplan/press/draw/drawtest"
)

// drawn gives what the PDF of a small picture draws.
func drawn(t *testing.T, paint func(*Pen)) string {
	t.Helper()
	return drawtest.Content(t, pdfOf(t, NewPicture(Layout{Width: 100, Height: 80, Paint: paint})))
}

// TestPDFScripts: characters that the library cannot take become a box, which the text
// says of itself; title
// and subject hold any script.
func TestPDFScripts(t *testing.T) {
	page := drawn(t, func(p *Pen) {
		p.Text(Style{Black, Body, false}, 10, 20, Start, "Δx ≤ 60 µm 𝄞\n(\\)\uFFFF")
	})
	assert.Equal(t, "Δx ≤ 60 µm □□(\\)□ (no font)", drawtest.TextsOf(page)[0])
	assert.Equal(t, "\xFE\xFF\x00a\x03\xA9\xD8\x34\xDD\x1E", textString("aΩ𝄞")) // derived by RFC 2781, 2.1
}

// TestPDFTint: a thinned ink keeps its colour, and its share is the opacity.
func TestPDFTint(t *testing.T) {
	d := NewPicture(Layout{Width: 100, Height: 80, Paint: func(p *Pen) {
		p.Fill(Good.Tint(0.15), Rectangle{10, 10, 30, 30})
		p.HLine(Alert.Tint(0.7), 0, 50, 50)
	}})
	file := pdfOf(t, d)
	page := drawtest.Content(t, file)
	assert.Contains(t, page, "0.039 0.420 0.400 rg") // #0A6B66 over 255
	assert.Contains(t, page, "0.702 0.149 0.118 RG") // #B3261E over 255
	for _, share := range []string{"0.150", "0.700"} {
		assert.Contains(t, string(file), "/ca "+share)
		assert.Contains(t, string(file), "/CA "+share)
	}
}

// TestPDFPen: widths, dashes and sizes are in points, three quarters of a px;
// corners are cut like those of SVG (SVG 2, 13.5.6: stroke-miterlimit is 4).
func TestPDFPen(t *testing.T) {
	file := pdfOf(t, NewPicture(Layout{Width: 100, Height: 80, Paint: func(p *Pen) {
		p.Line(Black, 2, Dashed, [2]float64{0, 0}, [2]float64{40, 20})
		p.Line(Black, 2, Solid, [2]float64{0, 0}, [2]float64{40, 20})
		p.Text(Style{Black, 12, true}, 0, 40, Start, "bold")
		p.Text(Style{Black, 16, false}, 0, 60, Start, "regular")
	}}))
	page := drawtest.Content(t, file)
	assert.Equal(t, 2, strings.Count(page, "\n1.50 w\n"))
	assert.Contains(t, page, "[3.75 2.25] 0.00 d\n0.00 60.00 m\n30.00 45.00 l\nS")
	assert.Contains(t, page, "[] 0.00 d\n0.00 60.00 m\n30.00 45.00 l\nS")
	assert.Contains(t, page, "\n4 M\n")
	fonts := regexp.MustCompile(`BT /(F\w+) ([\d.]+) Tf ET`).FindAllStringSubmatch(page, -1)
	require.Len(t, fonts, 2)
	assert.Equal(t, "9.00", fonts[0][2])
	assert.Equal(t, "12.00", fonts[1][2])
	assert.NotEqual(t, fonts[0][1], fonts[1][1], "bold has its own font")
	assert.NotContains(t, string(file), "D:2", "no date is made up")
}

var curveTo = regexp.MustCompile(`([-\d.]+) ([-\d.]+) ([-\d.]+) ([-\d.]+) ([-\d.]+) ([-\d.]+) c\b`)

// TestPDFArc: an arc lies where it should, on its circle. Derived: an arc from
// 0 by a quarter turn counter-clockwise ends above its centre.
func TestPDFArc(t *testing.T) {
	for _, c := range []struct {
		start, angle float64
		x, y         float64 // where it ends, radii from the centre
		pieces       int
	}{
		{0, math.Pi / 2, 0, 1, 1},
		{0, -math.Pi / 2, 0, -1, 1},
		{math.Pi / 2, math.Pi, 0, -1, 2},
		{0, 2 * math.Pi, 1, 0, 4},
	} {
		page := drawn(t, func(p *Pen) {
			var path vg.Path
			path.Arc(p.at(40, 40), 20, c.start, c.angle)
			p.stroke(Black, 1, Solid, path)
		})
		curves := curveTo.FindAllStringSubmatch(page, -1)
		require.Len(t, curves, c.pieces)
		// The centre lies at (30, 30) points, the radius is 15 points.
		at := func(m []string, i int) (x, y float64) {
			x, _ = strconv.ParseFloat(m[i], 64)
			y, _ = strconv.ParseFloat(m[i+1], 64)
			return (x - 30) / 15, (y - 30) / 15
		}
		x0, y0 := math.Cos(c.start), math.Sin(c.start)
		for _, m := range curves {
			ax, ay := at(m, 1)
			bx, by := at(m, 3)
			x1, y1 := at(m, 5)
			// The middle of a cubic.
			mx, my := (x0+3*ax+3*bx+x1)/8, (y0+3*ay+3*by+y1)/8
			assert.InDelta(t, 1, math.Hypot(mx, my), 2e-3)
			x0, y0 = x1, y1
		}
		assert.InDelta(t, c.x, x0, 1e-3)
		assert.InDelta(t, c.y, y0, 1e-3)
	}
}

// TestTurned: what is turned and moved lands at the same place in SVG and PDF.
// Derived: a quarter turn about (10, 20) puts (5, 0) at (10, 25), counted from
// below.
func TestTurned(t *testing.T) {
	paint := func(c vg.Canvas) {
		c.Push()
		c.Translate(vg.Point{X: 10, Y: 20})
		c.Rotate(math.Pi / 2)
		c.FillString(regular().at(12), vg.Point{X: 5, Y: 0}, "up")
		c.Translate(vg.Point{X: 0, Y: 8}) // to the left, on the page
		c.FillString(regular().at(12), vg.Point{X: 5, Y: 0}, "beside")
		c.Pop()
		c.FillString(regular().at(12), vg.Point{X: 5, Y: 0}, "along")
	}
	vector := newSVG(100, 80)
	paint(vector)
	assert.Contains(t, string(vector.body), `x="10" y="55" font-size="12" transform="rotate(-90 10 55)"`)
	assert.Contains(t, string(vector.body), `x="2" y="55" font-size="12" transform="rotate(-90 2 55)"`)
	assert.Contains(t, string(vector.body), `x="5" y="80" font-size="12" class`)
	page := drawn(t, func(p *Pen) { paint(p.c) })
	places := drawtest.ShownText.FindAllStringSubmatch(page, -1)
	require.Len(t, places, 3)
	assert.Equal(t, []string{"7.50", "18.75"}, places[0][1:3])
	assert.Equal(t, []string{"1.50", "18.75"}, places[1][1:3])
	assert.Regexp(t, `0\.00000 1\.00000 -1\.00000 0\.00000 [-\d.]+ [-\d.]+ cm`, page)
	assert.Equal(t, []string{"3.75", "0.00"}, places[2][1:3])
}

func pdfOf(t *testing.T, d *Picture) []byte {
	t.Helper()
	var b bytes.Buffer
	require.NoError(t, d.PDF(&b))
	return b.Bytes()
}
