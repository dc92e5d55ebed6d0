package curves

import "math"

// Slack by which an argument may lie outside the curve and is still taken as
// its end: binary noise, nothing more.
const (
	settingSlack = 1e-9  // %
	forceSlack   = 1e-12 // relative
)

// Force is the push force at a setting, by interpolation between the points.
//
// Arguments: setting, %.
// Result: N.
// Range: the settings of the curve, with 1e-9 % of slack at the ends, where
// the end itself is taken; outside, and for NaN, a [RangeError].
// Special cases: at a point of the curve, its force.
// Source: see [New].
func (c *Curve) Force(setting float64) (float64, error) {
	x, err := c.inside(setting)
	if err != nil {
		return 0, err
	}
	return c.forward.Predict(x), nil
}

// Slope is what one percent of setting is worth: the derivative of the force.
//
// Arguments: setting, %.
// Result: N per %.
// Range: as for [Curve.Force].
// Special cases: a linear curve has at a point the slope of the piece to its
// right, at the last point that to its left.
// Source: see [New].
func (c *Curve) Slope(setting float64) (float64, error) {
	x, err := c.inside(setting)
	if err != nil {
		return 0, err
	}
	s := c.segment(find(c.settings, x))
	return s.slope((x-s.start)/s.width) / s.width, nil
}

// Setting is the setting at which the ram pushes with the given force: the
// inverse of [Curve.Force].
//
// Arguments: force, N.
// Result: %. Force(Setting(F)) is F to 1e-13 relative wherever neighbouring
// binary numbers lie close enough along the settings to allow it.
// Range: the forces of the curve, with 1e-12 of relative slack at the ends,
// where the end itself is taken; outside, and for NaN, a [RangeError].
// Special cases: at the force of a point, its setting exactly.
// Source: Newton's method kept inside a bracket, on the cubic of the segment.
func (c *Curve) Setting(force float64) (float64, error) {
	lo, hi := c.Forces()
	if !(force >= lo-forceSlack*math.Abs(lo) && force <= hi+forceSlack*math.Abs(hi)) {
		return 0, &RangeError{Quantity: "force", Value: force, Low: lo, High: hi, Unit: "N"}
	}
	force = min(max(force, lo), hi)
	k := find(c.forces, force)
	switch force {
	case c.forces[k]:
		return c.settings[k], nil
	case c.forces[k+1]:
		return c.settings[k+1], nil
	}
	s := c.segment(k)
	x := s.start + s.width*s.solve(force)
	return min(max(x, c.settings[k]), c.settings[k+1]), nil
}

// inside clamps a setting to the curve, or refuses it.
func (c *Curve) inside(setting float64) (float64, error) {
	lo, hi := c.Settings()
	if !(setting >= lo-settingSlack && setting <= hi+settingSlack) {
		return 0, &RangeError{Quantity: "setting", Value: setting, Low: lo, High: hi, Unit: "%"}
	}
	return min(max(setting, lo), hi), nil
}
