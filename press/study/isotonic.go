package study

// A Pool is neighbouring points that were made one so that the values rise.
type Pool struct {
	X, Y   float64 // weighted means
	W      float64 // sum of the weights
	Points int     // how many it holds
}

// Isotonic makes values rise strictly from point to point by pooling neighbours that do not.
//
//	pools of least Σ W_i(y_i − Y_pool)² under rising Y; X and Y are weighted means
//
// Arguments: x, where the points stand, rising; y, their values; w, their weights, over 0.
// Result: the pools in the order of x, –, in the units of x and y.
// Range: any.
// Special cases: equal neighbours are pooled too.
// Source: R. E. Barlow, D. J. Bartholomew, J. M. Bremner, H. D. Brunk, Statistical Inference
// under Order Restrictions (1972), 1.2 (pool adjacent violators), from memory.
func Isotonic(x, y, w []float64) []Pool {
	var pools []Pool
	for i := range x {
		pools = append(pools, Pool{x[i], y[i], w[i], 1})
		for len(pools) > 1 {
			a, b := pools[len(pools)-2], pools[len(pools)-1]
			if a.Y < b.Y {
				break
			}
			sum := a.W + b.W
			pools = append(pools[:len(pools)-2], Pool{
				X: (a.W*a.X + b.W*b.X) / sum, Y: (a.W*a.Y + b.W*b.Y) / sum, W: sum, Points: a.Points + b.Points,
			})
		}
	}
	return pools
}
