package study

import (
	"math"

	"gonum.org/v1/gonum/stat/distuv"
)

// SDLimits are the limits between which a standard deviation lies with 95 % confidence.
//
//	s√(ν/χ²_0.975,ν) to s√(ν/χ²_0.025,ν)
//
// Arguments: s, –, the standard deviation of a sample in any unit; df, –, its degrees of
// freedom ν, at least 1.
// Result: lower and upper limit, –, in the unit of s.
// Range: normal values.
// Special cases: s = 0: 0 to 0.
// Source: ISO 2854:1976, table F, from memory; NIST/SEMATECH e-Handbook of Statistical
// Methods, 7.2.3.1.
func SDLimits(s, df float64) [2]float64 {
	return [2]float64{s * math.Sqrt(df/ChiSquaredQuantile(0.975, df)), s * math.Sqrt(df/ChiSquaredQuantile(0.025, df))}
}

// SDUpper is the limit below which a standard deviation lies with 95 % confidence.
//
//	s√(ν/χ²_0.05,ν)
//
// Arguments: s, –, the standard deviation of a sample in any unit; df, –, its degrees of
// freedom ν, at least 1.
// Result: the limit, –, in the unit of s.
// Range: normal values.
// Special cases: s = 0: 0.
// Source: as [SDLimits].
func SDUpper(s, df float64) float64 { return s * math.Sqrt(df/ChiSquaredQuantile(0.05, df)) }

// SDAgainst tells how often a station whose standard deviation is the planned one scatters
// at least so much.
//
//	p = P(χ²_ν > ν s²/σ₀²)
//
// Arguments: s, –, the standard deviation of a sample in any unit; df, –, its degrees of
// freedom ν, at least 1; planned, –, σ₀ in the unit of s.
// Result: p, –.
// Range: normal values.
// Special cases: σ₀ = 0: 1 where s is 0, else 0.
// Source: as [SDLimits].
func SDAgainst(s, df, planned float64) float64 {
	if planned == 0 {
		if s == 0 {
			return 1
		}
		return 0
	}
	x := df * square(s/planned)
	if math.IsInf(x, 1) {
		return 0
	}
	return distuv.ChiSquared{K: df}.Survival(x)
}
