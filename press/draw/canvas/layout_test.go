package canvas

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"gonum.org/v1/plot/vg"
	"pgregory.net/rapid"
)

// The expected places of this file are derived by hand.

func TestTicks(t *testing.T) {
	for _, c := range []struct {
		from, to float64
		n        int
		want     []float64
		decimals int
	}{
		{0, 150, 8, []float64{0, 20, 40, 60, 80, 100, 120, 140}, 0},
		{115.02, 115.36, 8, []float64{115.05, 115.1, 115.15, 115.2, 115.25, 115.3, 115.35}, 2},
		{-1, 1, 4, []float64{-1, -0.5, 0, 0.5, 1}, 1},
		{0, 1, 1, []float64{0, 1}, 0},
		{0, 1, 0, nil, 0},
	} {
		at, decimals := NewScale(c.from, c.to, 0, 100).Ticks(c.n)
		assert.InDeltaSlice(t, c.want, at, 1e-9, "%v to %v", c.from, c.to)
		assert.Equal(t, c.decimals, decimals)
	}
}

// TestScale: any two figures make a scale.
func TestScale(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := rapid.Float64().Draw(t, "a"), rapid.Float64().Draw(t, "b")
		if math.Abs(a) > 1e12 || math.Abs(b) > 1e12 {
			return
		}
		s := NewScale(a, b, 10, 90)
		for _, v := range []float64{a, b, (a + b) / 2, math.Inf(1), math.Inf(-1)} {
			if x := s.At(v); !(x >= 10 && x <= 90) {
				t.Fatalf("%v lies at %v", v, x)
			}
		}
		if at, _ := s.Ticks(8); len(at) > 9 {
			t.Fatalf("%d ticks", len(at))
		}
	})
}

// recorder is a canvas that keeps the points of what is stroked.
type recorder struct {
	vg.Canvas
	points []vg.Point
}

func (r *recorder) Stroke(p vg.Path) {
	for _, c := range p {
		r.points = append(r.points, c.Pos)
	}
}

// TestHatchStaysInside: every line of a hatch lies in its rectangle, on a
// diagonal.
func TestHatchStaysInside(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		side := rapid.Float64Range(-50, 1000)
		box := Rectangle{side.Draw(t, "x0"), side.Draw(t, "y0"), 0, 0}
		box.X1 = box.X0 + rapid.Float64Range(0, 300).Draw(t, "w")
		box.Y1 = box.Y0 + rapid.Float64Range(0, 80).Draw(t, "h")
		for _, h := range []Hatch{RisingHatch, FallingHatch, CrossHatch} {
			c := &recorder{Canvas: newSVG(10, 10)}
			p := NewPen(c, 500)
			p.Hatch(Black, h, box)
			for i := 0; i+1 < len(c.points); i += 2 {
				a, b := c.points[i], c.points[i+1]
				if d := math.Abs(float64(a.X-b.X)) - math.Abs(float64(a.Y-b.Y)); math.Abs(d) > 1e-6 {
					t.Fatalf("not a diagonal: %v %v", a, b)
				}
				for _, q := range []vg.Point{a, b} {
					x, y := float64(q.X), 500-float64(q.Y)
					if x < box.X0-1e-6 || x > box.X1+1e-6 || y < box.Y0-1e-6 || y > box.Y1+1e-6 {
						t.Fatalf("%v %v lies outside %+v", x, y, box)
					}
				}
			}
			if box.X1-box.X0 > 40 && box.Y1-box.Y0 > 40 && len(c.points) < 8 {
				t.Fatalf("hardly a line in %+v", box)
			}
		}
	})
}

// TestTextFits: a text that is clipped or wrapped is no wider than its room.
func TestTextFits(t *testing.T) {
	assert.Equal(t, "short", regular().clip("short", 12, 100))
	assert.Equal(t, "a rather l…", regular().clip("a rather long text", 12, 64))
	assert.Equal(t, []string{"long or good", "or missing"}, bold().wrap("long or good or missing", 14, 90))
	rapid.Check(t, func(t *rapid.T) {
		s := rapid.String().Draw(t, "s")
		room := rapid.Float64Range(20, 200).Draw(t, "room")
		for _, line := range regular().wrap(s, 12, room) {
			if regular().width(line, 12) > room+1e-6 {
				t.Fatalf("%q is wider than %v", line, room)
			}
		}
	})
}

// TestScaleWithoutNumbers: an interval whose ends are no numbers, or have none,
// becomes one that can be drawn; a figure that is none stands at the start.
func TestScaleWithoutNumbers(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	for _, ends := range [][2]float64{{nan, 1}, {0, nan}, {nan, nan}, {-inf, 1}, {0, inf}, {-inf, inf}, {inf, nan}} {
		s := NewScale(ends[0], ends[1], 10, 90)
		assert.Equal(t, Scale{0, 1, 10, 90}, s, "%v", ends)
		ticks, _ := s.Ticks(5)
		assert.NotEmpty(t, ticks, "%v", ends)
	}
	s := NewScale(0, 1, 10, 90)
	assert.Equal(t, 10.0, s.At(nan))
	assert.Equal(t, 90.0, s.At(inf))
	assert.Equal(t, 10.0, s.At(-inf))
	assert.False(t, s.Has(nan))
}
