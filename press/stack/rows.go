// Package stack adds up tolerance rows: means, worst cases, root-sum-squares and
// the exact distribution of a weighted sum of independent rows.
//
// Lengths are in mm throughout.
package stack

import "math"

// Shape is how the lengths of a row are spread between its limits.
type Shape int

// Shapes. Uniform stands where only limits are known (JCGM 100:2008, 4.3.7).
const (
	Uniform Shape = iota
	Triangular
	Normal
)

// A Row is one length with its tolerance.
type Row struct {
	Mean   float64 // mm, the middle of the limits
	Half   float64 // mm, half the width between the limits
	Shape  Shape
	Sigmas float64 // for Normal: standard deviations in the half-width
}

// SD gives the standard deviation of a row.
//
//	uniform T/√3, triangular T/√6, normal T/sigmas
//
// Result: mm.
// Range: T ≥ 0; sigmas > 0.
// Source: JCGM 100:2008, 4.3.7 and 4.3.9; a normal row by its own definition.
func (r Row) SD() float64 {
	switch r.Shape {
	case Triangular:
		return r.Half / math.Sqrt(6)
	case Normal:
		return r.Half / r.Sigmas
	}
	return r.Half / math.Sqrt(3)
}

// A Term is a row with the number of times it counts.
type Term struct {
	Row
	Times float64
}

// Height is a sum of terms: its mean and its spread by three rules.
type Height struct {
	Mean  float64 // mm
	Worst float64 // ± mm, every row at its worst limit
	RSS   float64 // ± mm, root-sum-square of the half-widths
	SD    float64 // mm, standard deviation
}

// Add sums up terms.
//
//	mean Σcμ, worst Σ|c|T, rss √Σ(cT)², sd √Σ(c·sd)²
//
// Result: mm.
// Range: any number of independent rows; no published limit.
// Source: common practice of tolerance stacks, no source; the standard
// deviation by JCGM 100:2008, 5.1.2.
func Add(terms []Term) Height {
	var h Height
	for _, t := range terms {
		h.Mean += t.Times * t.Mean
		h.Worst += math.Abs(t.Times) * t.Half
		h.RSS += square(t.Times * t.Half)
		h.SD += square(t.Times * t.SD())
	}
	h.RSS, h.SD = math.Sqrt(h.RSS), math.Sqrt(h.SD)
	return h
}

func square(x float64) float64 { return x * x }
