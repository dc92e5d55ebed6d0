package canvas_test

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	"image/png"
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
)

// TestPDFText: every text of a drawing stands in the PDF as it is, letter by
// letter.
func TestPDFText(t *testing.T) {
	for _, kind := range []string{"example", "touch", "stalls", "missing-good", "other-scripts"} {
		p := drawtest.Example(t, drawtest.Kinds[kind])
		r := press.Evaluate(p)
		for _, what := range draw.Names() {
			picture := pictureOf(t, what, p, r)
			var want []string
			width, height := picture.Size()
			for _, l := range picture.Texts() {
				want = append(want, l.Printed()) // what the face lacks is a box
			}
			var out bytes.Buffer
			require.NoError(t, picture.PDF(&out))
			file := out.Bytes()
			assert.Equal(t, want, drawtest.TextsOf(drawtest.Content(t, file)), "%s of %s", what, kind)
			assert.Contains(t, string(file), fmt.Sprintf("/MediaBox [0 0 %.2f %.2f]", width*0.75, height*0.75))
			assert.Less(t, len(file), 60_000, "whole fonts are embedded")
		}
	}
}

// pictureOf is a drawing as it is usual.
func pictureOf(t *testing.T, what string, p *press.Plan, r *press.Result) *canvas.Picture {
	t.Helper()
	d, err := draw.New(what, p, r, draw.Options{})
	require.NoError(t, err)
	return d
}

// TestPNG: 300 dots an inch, every text where the layout put it.
func TestPNG(t *testing.T) {
	plans := []string{"example", "stalls", "other-scripts"}
	if testing.Short() {
		plans = plans[:1]
	}
	for _, kind := range plans {
		p := drawtest.Example(t, drawtest.Kinds[kind])
		r := press.Evaluate(p)
		for _, what := range draw.Names() {
			t.Run(kind+"/"+what, func(t *testing.T) {
				t.Parallel()
				picture := pictureOf(t, what, p, r)
				width, height := picture.Size()
				var b bytes.Buffer
				require.NoError(t, picture.PNG(&b))
				img, err := png.Decode(&b)
				require.NoError(t, err)
				assert.InDelta(t, canvas.DotsPerPx*width, img.Bounds().Dx(), 1)
				assert.InDelta(t, canvas.DotsPerPx*height, img.Bounds().Dy(), 1)
				for _, l := range picture.Texts() {
					assert.Less(t, darkest(img, l), 0.35, "nothing is written at %q", l.Text)
				}
			})
		}
	}
}

// darkest gives the least luminance in the box of a text, as far as the first dot that
// is written. That of paper is 1, of tints over 0.5, and of every ink that writes under
// 0.2.
func darkest(img image.Image, l canvas.Label) float64 {
	least := 1.0
	for y := int(canvas.DotsPerPx * l.Y0); y < int(canvas.DotsPerPx*l.Y1); y++ {
		for x := int(canvas.DotsPerPx * l.X0); x < int(canvas.DotsPerPx*l.X1); x++ {
			least = math.Min(least, drawtest.Luminance(color.NRGBAModel.Convert(img.At(x, y)).(color.NRGBA)))
			if least < 0.2 {
				return least
			}
		}
	}
	return least
}

// TestLackingNowhere: what the drawings themselves say, the typeface has.
func TestLackingNowhere(t *testing.T) {
	for name, p := range drawtest.Plans(t) {
		r := press.Evaluate(p)
		for _, what := range draw.Names() {
			for _, o := range []draw.Options{{}, {Compact: true}} {
				d, err := draw.New(what, p, r, o)
				require.NoError(t, err)
				if what == "card" { // it holds what the plan is called
					continue
				}
				assert.Empty(t, d.Noted(), "%s of %s", what, name)
			}
		}
	}
}
