package study

import (
	"math"

	"gonum.org/v1/gonum/floats"
	"gonum.org/v1/gonum/mat"
)

// A Fit is a sum of columns fitted to values by least squares.
type Fit struct {
	Coef       []float64 // one a column
	DF         float64   // values less columns
	ResidualSD float64   // of a value of mean weight; 0 without degrees of freedom, and for a perfect fit
	Residuals  []float64 // value less fitted

	inverse [][]float64 // (XᵀWX)⁻¹, weights of mean 1
}

// LeastSquares fits values by a sum of columns.
//
//	min Σ W_i(y_i − Σ b_j x_ij)²
//
// by Householder's QR on columns scaled to length 1, weights scaled to mean 1, and one
// refinement; residuals are summed in twice the digits.
//
// Arguments: columns, the columns x, each as long as y; y, the values; w, their weights,
// over 0, or nil where all are equal.
// Result: coefficients, residuals and their standard deviation, –, in units that follow
// from those of y and x; the standard deviation is that of a value of mean weight.
// Range: columns that do not depend on each other, at least as many values as columns.
// Special cases: nil where there are too few values or a column follows from the others;
// residuals that are rounding noise of y (under 16 units of its last binary digit) are a
// perfect fit, standard deviation 0.
// Source: Å. Björck, Numerical Methods for Least Squares Problems (1996), 2.4 and 2.9, from
// memory; checked by NIST StRD, linear regression.
func LeastSquares(columns [][]float64, y, w []float64) *Fit {
	n, m := len(y), len(columns)
	if m == 0 || n < m {
		return nil
	}
	root := make([]float64, n)
	mean := 1.0
	if w != nil {
		mean = Mean(w)
	}
	for i := range root {
		root[i] = 1
		if w != nil {
			root[i] = math.Sqrt(w[i] / mean)
		}
	}
	x := mat.NewDense(n, m, nil)
	length := make([]float64, m)
	for j, c := range columns {
		scaled := make([]float64, n)
		floats.MulTo(scaled, c, root)
		length[j] = floats.Norm(scaled, 2)
		if !(length[j] > 0) {
			return nil
		}
		floats.Scale(1/length[j], scaled)
		x.SetCol(j, scaled)
	}
	var qr mat.QR
	qr.Factorize(x)
	var r mat.Dense
	qr.RTo(&r)
	for j := range m {
		if !(math.Abs(r.At(j, j)) > 1e-13) {
			return nil
		}
	}
	f := &Fit{Coef: make([]float64, m), DF: float64(n - m), Residuals: make([]float64, n)}
	copy(f.Residuals, y)
	for range 2 {
		right := mat.NewVecDense(n, nil)
		for i := range f.Residuals {
			right.SetVec(i, f.Residuals[i]*root[i])
		}
		var step mat.VecDense
		if err := qr.SolveVecTo(&step, false, right); err != nil {
			if _, close := err.(mat.Condition); !close {
				return nil
			}
		}
		for j := range m {
			f.Coef[j] += step.AtVec(j) / length[j]
		}
		for i := range y {
			f.Residuals[i] = residual(y[i], columns, f.Coef, i)
		}
	}
	f.inverse = inverseOf(&r, length)
	f.ResidualSD = f.spread(y, root)
	return f
}

// spread is the standard deviation of a value of mean weight.
func (f *Fit) spread(y, root []float64) float64 {
	if f.DF == 0 {
		return 0
	}
	squares, greatest := 0.0, 0.0
	for i := range y {
		squares += square(f.Residuals[i] * root[i])
		greatest = math.Max(greatest, math.Abs(y[i])*root[i])
	}
	s := math.Sqrt(squares / f.DF)
	if s <= 16*0x1p-52*greatest {
		return 0
	}
	return s
}

// residual is y less the fitted value, summed in twice the digits.
func residual(y float64, columns [][]float64, coef []float64, i int) float64 {
	sum, low := y, 0.0
	for j, c := range columns {
		product := -coef[j] * c[i]
		low += math.FMA(-coef[j], c[i], -product)
		next := sum + product
		back := next - sum
		low += (sum - (next - back)) + (product - back)
		sum = next
	}
	return sum + low
}

// inverseOf is (XᵀWX)⁻¹ from the triangle of the scaled columns.
func inverseOf(r *mat.Dense, length []float64) [][]float64 {
	m := len(length)
	inverse := make([][]float64, m) // of the triangle, by columns solved from below
	for j := range inverse {
		inverse[j] = make([]float64, m)
		for i := j; i >= 0; i-- {
			sum := 0.0
			if i == j {
				sum = 1
			}
			for k := i + 1; k <= j; k++ {
				sum -= r.At(i, k) * inverse[j][k]
			}
			inverse[j][i] = sum / r.At(i, i)
		}
	}
	c := make([][]float64, m)
	for a := range c {
		c[a] = make([]float64, m)
		for b := range c {
			for j := range inverse {
				c[a][b] += inverse[j][a] * inverse[j][b]
			}
			c[a][b] /= length[a] * length[b]
		}
	}
	return c
}

// CoefSD is the standard deviation of a coefficient.
//
//	s√((XᵀWX)⁻¹_jj)
//
// Arguments: j, –, which column, from 0.
// Result: the standard deviation, –, in the unit of the coefficient.
// Range: degrees of freedom over 0.
// Special cases: nil without degrees of freedom.
// Source: as [LeastSquares].
func (f *Fit) CoefSD(j int) *float64 {
	if f.DF == 0 {
		return nil
	}
	s := f.ResidualSD * math.Sqrt(f.inverse[j][j])
	return &s
}

// ValueSD is the standard deviation of the fitted value where the columns have given values.
//
//	s√(xᵀ(XᵀWX)⁻¹x)
//
// Arguments: at, the values of the columns.
// Result: the standard deviation, –, in the unit of y.
// Range: degrees of freedom over 0.
// Special cases: nil without degrees of freedom.
// Source: JCGM 100:2008, H.3 (straight line), from memory.
func (f *Fit) ValueSD(at []float64) *float64 {
	if f.DF == 0 {
		return nil
	}
	sum := 0.0
	for a := range at {
		for b := range at {
			sum += at[a] * f.inverse[a][b] * at[b]
		}
	}
	s := f.ResidualSD * math.Sqrt(math.Max(0, sum))
	return &s
}

// CoefT is Student's test of a coefficient against 0.
//
//	t = b/s_b; two-sided p with the degrees of freedom of the fit
//
// Arguments: j, –, which column, from 0.
// Result: t and p, –.
// Range: degrees of freedom over 0.
// Special cases: nil where the coefficient has no standard deviation over 0.
// Source: NIST/SEMATECH e-Handbook of Statistical Methods, 4.4.4.
func (f *Fit) CoefT(j int) (t, p *float64) {
	s := f.CoefSD(j)
	if s == nil || !(*s > 0) {
		return nil, nil
	}
	a := f.Coef[j] / *s
	b := TwoSidedP(a, f.DF)
	return &a, &b
}
