package words

import (
	"math"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

// The expected texts of this file are derived from the rules in the doc
// comments, by hand.

// TestFixed covers the sign, the zero without one, groups and rounding.
func TestFixed(t *testing.T) {
	for _, c := range []struct {
		x        float64
		decimals int
		want     string
	}{
		{115.08, 2, "115.08"},
		{-0.4, 2, "−0.40"},
		{-0.004, 2, "0.00"},
		{math.Copysign(0, -1), 2, "0.00"},
		{0.005, 2, "0.01"}, // the binary number lies just above
		{0.015, 2, "0.01"}, // and this one just below
		{9999, 0, "9999"},
		{9999.5, 0, "10\u202f000"},
		{-1234567.891, 1, "−1\u202f234\u202f567.9"},
		{1e9, 2, "1\u202f000\u202f000\u202f000.00"},
		{math.NaN(), 2, "–"},
		{math.Inf(1), 0, "–"},
	} {
		assert.Equal(t, c.want, Fixed(c.x, c.decimals), "%v", c.x)
	}
}

func TestTrimmed(t *testing.T) {
	for _, c := range []struct {
		x    float64
		want string
	}{
		{66, "66"}, {45.5, "45.5"}, {60.4307, "60.43"}, {100, "100"}, {0, "0"}, {-0.001, "0"}, {-12.50, "−12.5"},
	} {
		assert.Equal(t, c.want, Trimmed(c.x, 2), "%v", c.x)
	}
}

// TestQuantities holds the edges of every quantity.
func TestQuantities(t *testing.T) {
	for _, c := range []struct{ want, got string }{
		{"2467\u202fN", Force(2467.4)},
		{"0\u202fN", Force(-0.3)},
		{"66\u202f%", Setting(66)},
		{"60.43\u202f%", Setting(60.430707866532735)},
		{"1.70\u202fs", Seconds(1.6993388)},
		{"0.05\u202fs", Seconds(0.05)},
		{"0.10\u202fs", Seconds(0.1)},
		{"0.009\u202fs", Seconds(0.0081)},
		{"0.10\u202fs", Seconds(0.0996)},
		{"1.74\u202fs", Seconds(1.7311)}, // rounded as what has to go by
		{"1.74\u202fs", After(1.7311)},
		{"1.73\u202fs", Seconds(1.73)},
		{"180\u202fmm/s", say.Speed(180)},
		{"−3.2\u202fµm", Microns(-3.21)},
		{"1600\u202fppm", PPM(1584.493)},
		{"0.010\u202fppm", PPM(0.01)},
		{"<\u202f0.01\u202fppm", PPM(0.00999)},
		{"<\u202f0.01\u202fppm", PPM(0)},
		{"0.10\u202fppm", PPM(0.0999)},
		{"9.9\u202fppm", PPM(9.94)},
		{"10\u202fppm", PPM(9.96)},
		{"100\u202f%", PPM(1e6)},
		{"0.5\u202fppm", say.TargetPPM(0.5)},
		{"2010\u202fppm", say.ppmOver(2010, 2000)},
		{"2000.3\u202fppm", say.ppmOver(2000.3, 2000)},
		{"99.9\u202f%", say.TargetShare(0.999)},
		{"99.73\u202f%", say.TargetShare(0.9973)},
	} {
		assert.Equal(t, c.want, c.got)
	}
}

// TestShare holds that no share is rounded up to certainty.
func TestShare(t *testing.T) {
	for _, c := range []struct {
		p    float64
		want string
	}{
		{1, "100\u202f%"}, {0, "0\u202f%"}, {0.5, "50\u202f%"}, {0.999, "99.9\u202f%"},
		{0.9989, "99.8\u202f%"}, {0.99926, "99.92\u202f%"}, {0.9999289187805522, "99.992\u202f%"},
		{1 - 1e-9, ">\u202f99.9999\u202f%"}, {1e-9, "<\u202f0.0001\u202f%"}, {7.1e-5, "0.007\u202f%"}, {0.4174, "41.7\u202f%"},
	} {
		assert.Equal(t, c.want, Share(c.p), "%v", c.p)
	}
	rapid.Check(t, func(t *rapid.T) {
		p := rapid.Float64Range(0, 1).Draw(t, "p")
		if s := Share(p); p < 1 && s == "100\u202f%" || p > 0 && s == "0\u202f%" {
			t.Fatalf("%v is written as %s", p, s)
		}
	})
}

// TestExactReadsBack: the loss-free form gives the same number back.
func TestExactReadsBack(t *testing.T) {
	for _, c := range []struct {
		x    float64
		want string
	}{{115.08, "115.08"}, {0, "0"}, {1e-7, "1e-7"}, {1e9, "1000000000"}, {0.30000000000000004, "0.30000000000000004"}} {
		assert.Equal(t, c.want, Exact(c.x))
	}
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64().Draw(t, "x")
		got, err := strconv.ParseFloat(Exact(x), 64)
		if err != nil || got != x {
			t.Fatalf("%v is written as %s and reads %v, %v", x, Exact(x), got, err)
		}
	})
}

// TestApart: two figures that differ never look the same in a sentence.
func TestApart(t *testing.T) {
	for _, c := range []struct {
		a, b       float64
		one, other string
	}{
		{150, 151, "150.00\u202fmm", "151.00\u202fmm"},
		{150, 150.0004, "150.0000\u202fmm", "150.0004\u202fmm"},
		{150, 150, "150.00\u202fmm", "150.00\u202fmm"},
	} {
		one, other := Positions{decimals: 2}.both(c.a, c.b)
		assert.Equal(t, []string{c.one, c.other}, []string{one, other})
	}
	low, need, gap := say.forces(2088.9, 2089.2)
	assert.Equal(t, []string{"2088.9\u202fN", "2089.2\u202fN", "0.3\u202fN"}, []string{low, need, gap})
}

// TestPositions covers lengths that the decimals of a position would hide, and
// figures that are rounded to the safe side.
func TestPositions(t *testing.T) {
	f := Positions{decimals: 2}
	assert.Equal(t, "115.14\u202fmm", f.At(115.13708592592593))
	assert.Equal(t, "0.028\u202fmm", f.Length(0.027804543798115883))
	assert.Equal(t, "0.05\u202fmm", f.Length(0.05))
	assert.Equal(t, "0.0005\u202fmm", f.Length(0.0005))
	assert.Equal(t, "7.73\u202fmm", f.Length(7.73))
	assert.Equal(t, "0.01\u202fmm", f.Above(0.0097))
	assert.Equal(t, "0.11\u202fmm", f.Above(0.11))
	assert.Equal(t, "0.05\u202fmm", f.Below(0.0571))
	assert.Equal(t, "0.11\u202fmm", f.Below(0.11))
}
