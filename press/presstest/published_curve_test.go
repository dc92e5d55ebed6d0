package presstest_test

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"ramplan/curves"
	"ramplan/press/presstest"
)

var (
	nag = presstest.Source{
		ID: "nag-e01be", Status: presstest.Published,
		Cite: "NAG library document e01be, example (data RPN14 of Fritsch and Carlson, SIAM J. Numer. Anal. 17 (1980) 238-246)",
	}
	mathNet = presstest.Source{
		ID: "math.net-pchip", Status: presstest.Published,
		Cite: "Math.NET Numerics, tests of the monotone cubic spline, data (-2, 1), (-1, 2), (0, -1), (1, 0), (2, 1)",
	}
	scipy = presstest.Source{
		ID: "scipy-pchip", Status: presstest.Computed,
		Cite: "SciPy 1.10 PchipInterpolator, data RPN14 and a made-up force curve",
	}
)

// lift raises every point, since a force curve must lie above 0 and the data
// begin at 0; interpolation moves with its data.
const lift = 1

// lifted makes a curve of one set of data.
func lifted(t *testing.T, set string) *curves.Curve {
	var points []curves.Point
	for _, row := range presstest.Read(t, "pchip_data") {
		if row.Text("set") == set {
			points = append(points, curves.Point{Setting: row.Number("x"), Force: row.Number("y") + lift})
		}
	}
	c, err := curves.New(points, curves.Monotone)
	require.NoError(t, err)
	return c
}

// publishedCurves compares interpolated values. The example's first value is
// at its first point and shows nothing but that, so it is left out.
func publishedCurves(t *testing.T, ledger *presstest.Ledger) {
	c := lifted(t, "RPN14_NAG_rounded")
	for _, row := range presstest.Read(t, "pchip_published") {
		if row.Text("set") != "RPN14_NAG_rounded" || row.Number("x") == 7.99 {
			continue
		}
		got, err := c.Force(row.Number("x"))
		require.NoError(t, err)
		ledger.Equal(t, "value at "+row.Text("x"), got-lift,
			presstest.Within(nag, row.Number("published"), row.Number("published_tolerance"), "four printed decimals"))
	}
	publishedPieces(t, ledger)
	for _, set := range []string{"RPN14", "CURVE_CF"} {
		c := lifted(t, set)
		for i, row := range presstest.Read(t, "pchip_eval") {
			if row.Text("set") != set {
				continue
			}
			got, err := c.Force(row.Number("x"))
			require.NoError(t, err)
			slope, err := c.Slope(row.Number("x"))
			require.NoError(t, err)
			what := fmt.Sprintf("%s, row %d, ", set, i)
			ledger.Equal(t, what+"value", got-lift,
				presstest.Within(scipy, row.Number("scipy_value"), 1e-11*max(1, got), "the libraries agree to 5e-12"))
			ledger.Equal(t, what+"slope", slope,
				presstest.Within(scipy, row.Number("scipy_derivative"), 1e-10*max(1, slope), "the libraries agree to 5e-12"))
		}
	}
}

// publishedPieces compares values of data that turn at -1 and at 0, which no
// force curve does. A slope depends on the neighbouring pieces alone, so that
// each rising piece can be had by itself, and the falling one mirrored, when
// the pieces beyond its turning points are as good as flat.
func publishedPieces(t *testing.T, ledger *presstest.Ledger) {
	const flat, lift = 1e-12, 10
	pieces := []struct {
		from, to, sign float64
		points         []curves.Point
	}{
		{-1, 0, -1, []curves.Point{{Setting: -2, Force: -2 - flat}, {Setting: -1, Force: -2}, {Setting: 0, Force: 1}, {Setting: 1, Force: 1 + flat}}},
		{0, 2, 1, []curves.Point{{Setting: -1, Force: -1 - flat}, {Setting: 0, Force: -1}, {Setting: 1, Force: 0}, {Setting: 2, Force: 1}}},
	}
	rows := presstest.Read(t, "pchip_published")
	for _, piece := range pieces {
		for i := range piece.points {
			piece.points[i].Force += lift
		}
		c, err := curves.New(piece.points, curves.Monotone)
		require.NoError(t, err)
		for _, row := range rows {
			x := row.Number("x")
			if row.Text("set") != "NONMONO" || x < piece.from || x > piece.to {
				continue
			}
			got, err := c.Force(x)
			require.NoError(t, err)
			ledger.Equal(t, "value at "+row.Text("x"), piece.sign*(got-lift),
				presstest.Within(mathNet, row.Number("published"), 2e-11, "beyond the turning points the curve rises by 1e-12"))
		}
	}
}
