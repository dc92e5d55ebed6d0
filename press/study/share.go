package study

import "gonum.org/v1/gonum/mathext"

// ShareLimits gives the limits between which a share lies with 95 % confidence after k of
// n were counted (Clopper and Pearson).
//
//	low = Beta⁻¹(0.025; k, n − k + 1), high = Beta⁻¹(0.975; k + 1, n − k)
//
// Arguments: k, –, the count, from 0 to n; n, –, of how many.
// Result: two shares from 0 to 1, –.
// Range: any.
// Special cases: k = 0: low is 0; k = n: high is 1; n = 0: 0 to 1.
// Source: C. J. Clopper, E. S. Pearson, Biometrika 26 (1934), 404.
func ShareLimits(k, n int64) (low, high float64) {
	high = 1
	if k > 0 {
		low = mathext.InvRegIncBeta(float64(k), float64(n-k)+1, 0.025)
	}
	if k < n {
		high = mathext.InvRegIncBeta(float64(k)+1, float64(n-k), 0.975)
	}
	return low, high
}

// ShareLower gives the limit above which a share lies with 99 % confidence after k of n
// were counted.
//
//	Beta⁻¹(0.01; k, n − k + 1)
//
// Arguments: k, –, the count, from 0 to n; n, –, of how many.
// Result: a share from 0 to 1, –.
// Range: any.
// Special cases: k = 0: 0.
// Source: as [ShareLimits].
func ShareLower(k, n int64) float64 {
	if k == 0 {
		return 0
	}
	return mathext.InvRegIncBeta(float64(k), float64(n-k)+1, 0.01)
}
