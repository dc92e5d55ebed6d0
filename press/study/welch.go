package study

import "math"

// Welch is the difference of two means and the limits between which it lies with 95 %
// confidence, the two scattering differently.
//
//	x̄ − ȳ ± t_0.975,ν√(s_x²/n_x + s_y²/n_y),
//	ν = (s_x²/n_x + s_y²/n_y)²/((s_x²/n_x)²/(n_x−1) + (s_y²/n_y)²/(n_y−1))
//
// Arguments: x, y, the values of the two, at least one each.
// Result: the difference and its two limits, –, in the unit of the values.
// Range: normal values.
// Special cases: the limits are nil where one has under two values; where neither varies
// they are the difference itself.
// Source: B. L. Welch, Biometrika 34 (1947), 28; NIST/SEMATECH e-Handbook of Statistical
// Methods, 1.3.5.3.
func Welch(x, y []float64) (difference float64, limits *[2]float64) {
	difference = Mean(x) - Mean(y)
	if len(x) < 2 || len(y) < 2 {
		return difference, nil
	}
	nx, ny := float64(len(x)), float64(len(y))
	vx, vy := square(*SD(x))/nx, square(*SD(y))/ny
	if vx+vy == 0 {
		return difference, &[2]float64{difference, difference}
	}
	// As shares of the whole, so that small variances do not vanish when squared.
	a, b := vx/(vx+vy), vy/(vx+vy)
	df := 1 / (a*a/(nx-1) + b*b/(ny-1))
	half := TQuantile(0.975, df) * math.Sqrt(vx+vy)
	return difference, &[2]float64{difference - half, difference + half}
}
