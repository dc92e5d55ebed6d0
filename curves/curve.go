package curves

import (
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/interp"
)

// Point is one measured pair of the curve.
type Point struct {
	Setting float64 // %, of rated motor current
	Force   float64 // N
}

// Interpolation says how the curve runs between its points.
type Interpolation string

const (
	// Monotone is a piecewise cubic that rises wherever the points rise.
	Monotone Interpolation = "monotone"
	// Linear is a straight line from point to point.
	Linear Interpolation = "linear"
)

// Curve is push force against setting. Make it with [New].
type Curve struct {
	settings []float64 // %, strictly rising
	forces   []float64 // N, strictly rising, as long as settings
	slopes   []float64 // N per %, at each point; nil for Linear
	forward  interp.Predictor
}

// New makes a curve through the points, which it copies.
//
// It refuses fewer than two points, a setting or force that is not finite, a
// force that is not above zero, and settings or forces that do not rise
// strictly; the error names the point, counted from 1.
//
// Monotone is the piecewise cubic Hermite interpolant with the slopes of
// Fritsch and Butland: inside, the weighted harmonic mean of the neighbouring
// secants with weights h_k + 2h_{k-1} and 2h_k + h_{k-1}; at the ends the
// limited three-point formula; two points give a line.
//
// Source: F. N. Fritsch, J. Butland, A method for constructing local monotone
// piecewise cubic interpolants, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304,
// as built in gonum's interp.FritschButland. No error bound is published for
// measured force curves.
func New(points []Point, how Interpolation) (*Curve, error) {
	if err := check(points); err != nil {
		return nil, err
	}
	return build(points, how)
}

// check refuses what New refuses.
func check(points []Point) error {
	if len(points) < 2 {
		return fmt.Errorf("curves: a curve needs at least 2 points, got %d", len(points))
	}
	for i, p := range points {
		switch {
		case !finite(p.Setting):
			return fmt.Errorf("curves: point %d: setting %v %% is not a finite number", i+1, p.Setting)
		case !finite(p.Force):
			return fmt.Errorf("curves: point %d: force %v N is not a finite number", i+1, p.Force)
		case p.Force <= 0:
			return fmt.Errorf("curves: point %d: force %v N is not above 0", i+1, p.Force)
		}
		if i == 0 {
			continue
		}
		before := points[i-1]
		switch {
		case p.Setting <= before.Setting:
			return fmt.Errorf("curves: point %d: setting %v %% is not above the %v %% of the point before",
				i+1, p.Setting, before.Setting)
		case p.Force <= before.Force:
			return fmt.Errorf("curves: point %d: force %v N is not above the %v N of the point before",
				i+1, p.Force, before.Force)
		}
	}
	return nil
}

// build fits points with strictly rising settings; forces may do as they like.
func build(points []Point, how Interpolation) (*Curve, error) {
	c := &Curve{
		settings: make([]float64, len(points)),
		forces:   make([]float64, len(points)),
	}
	for i, p := range points {
		c.settings[i], c.forces[i] = p.Setting, p.Force
	}
	switch how {
	case Monotone:
		fb := new(interp.FritschButland)
		if err := fb.Fit(c.settings, c.forces); err != nil {
			return nil, fmt.Errorf("curves: cannot fit the points: %w", err)
		}
		c.forward = fb
		c.slopes = make([]float64, len(points))
		for i, x := range c.settings {
			c.slopes[i] = fb.PredictDerivative(x)
		}
	case Linear:
		pl := new(interp.PiecewiseLinear)
		if err := pl.Fit(c.settings, c.forces); err != nil {
			return nil, fmt.Errorf("curves: cannot fit the points: %w", err)
		}
		c.forward = pl
	default:
		return nil, fmt.Errorf("curves: interpolation %q is not %q or %q", how, Monotone, Linear)
	}
	if err := c.resolvable(); err != nil {
		return nil, err
	}
	return c, nil
}

// resolvable refuses points so extreme that the arithmetic between them
// overflows or vanishes.
func (c *Curve) resolvable() error {
	for i := range len(c.settings) - 1 {
		s := c.segment(i)
		if !finite(s.c1) || !finite(s.c2) || !finite(s.c3) || !finite(s.width) || !finite(s.c1/s.width) {
			return fmt.Errorf("curves: point %d: too close to or too far from point %d to interpolate", i+2, i+1)
		}
	}
	for i, d := range c.slopes {
		if !finite(d) {
			return fmt.Errorf("curves: point %d: too close to or too far from its neighbours to interpolate", i+1)
		}
	}
	return nil
}

// Settings returns the lowest and the highest setting of the curve, in %.
func (c *Curve) Settings() (lo, hi float64) {
	return c.settings[0], c.settings[len(c.settings)-1]
}

// Forces returns the lowest and the highest force of the curve, in N.
func (c *Curve) Forces() (lo, hi float64) {
	return c.forces[0], c.forces[len(c.forces)-1]
}

// find returns the index k of the segment with v[k] <= x < v[k+1]; the last
// value belongs to the last segment. x must lie inside v.
func find(v []float64, x float64) int {
	i, found := slices.BinarySearch(v, x)
	if !found {
		i--
	}
	return min(i, len(v)-2)
}

func finite(x float64) bool { return !math.IsNaN(x) && !math.IsInf(x, 0) }
