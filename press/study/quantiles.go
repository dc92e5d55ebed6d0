package study

import (
	"gonum.org/v1/gonum/mathext"
	"gonum.org/v1/gonum/stat/distuv"
)

// TQuantile is a quantile of Student's t.
//
//	F(t; ν) = q
//
// Arguments: q, –, between 0 and 1; df, –, ν > 0.
// Result: t, –.
// Range: any ν; the library's incomplete beta function keeps nine digits.
// Special cases: q = ½: 0.
// Source: M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions (1964), 26.7,
// from memory.
func TQuantile(q, df float64) float64 {
	return distuv.StudentsT{Sigma: 1, Nu: df}.Quantile(q)
}

// TwoSidedP is how often Student's t is at least so far from 0.
//
//	p = P(|t_ν| ≥ |t|) = I_x(ν/2, ½), x = ν/(ν + t²)
//
// Arguments: t, –; df, –, ν > 0.
// Result: p, –.
// Range: any.
// Special cases: t infinite: 0.
// Source: Abramowitz & Stegun, 26.7.1 and 26.5.27, from memory.
func TwoSidedP(t, df float64) float64 {
	return mathext.RegIncBeta(df/2, 0.5, df/(df+t*t))
}

// FUpperP is how often Fisher's F is at least so large.
//
//	p = P(F_ν₁,ν₂ ≥ f) = I_x(ν₂/2, ν₁/2), x = ν₂/(ν₂ + ν₁f)
//
// Arguments: f, –, not negative; df1, –; df2, –, degrees of freedom above and below.
// Result: p, –; small ones keep their digits.
// Range: any.
// Special cases: f = 0: 1; f infinite: 0.
// Source: Abramowitz & Stegun, 26.6.2, from memory.
func FUpperP(f, df1, df2 float64) float64 {
	return mathext.RegIncBeta(df2/2, df1/2, df2/(df2+df1*f))
}

// ChiSquaredQuantile is a quantile of χ².
//
//	F(χ²; ν) = q
//
// Arguments: q, –, between 0 and 1; df, –, ν > 0.
// Result: χ², –.
// Range: any.
// Special cases: q = 0: 0.
// Source: Abramowitz & Stegun, 26.4, from memory.
func ChiSquaredQuantile(q, df float64) float64 {
	return distuv.ChiSquared{K: df}.Quantile(q)
}

// NormalQuantile is a quantile of the standard normal distribution.
//
//	Φ(z) = q
//
// Arguments: q, –, between 0 and 1.
// Result: z, –.
// Range: any.
// Special cases: q = ½: 0.
// Source: Abramowitz & Stegun, 26.2, from memory.
func NormalQuantile(q float64) float64 { return mathext.NormalQuantile(q) }
