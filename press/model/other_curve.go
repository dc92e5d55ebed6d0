package model

import "ramplan/curves"

// Weight is what the weight of the moving parts adds to the figures of the curve, N: 0 where
// they hold it or the ram lies level, less than 0 where it presses up.
func (r *Outcome) Weight() float64 { return r.inside().force.weight }

// ForceThrough is the typical push at the tool at a setting, N, should the curve of the ram
// go through other points, %, N, and run between them as the entered one does. An error tells
// that no curve goes through them, or that the setting lies outside.
func (r *Outcome) ForceThrough(points [][2]float64, setting float64) (float64, error) {
	w := r.inside()
	list := make([]curves.Point, len(points))
	for i, p := range points {
		list[i] = curves.Point{Setting: p[0], Force: p[1]}
	}
	c, err := curves.New(list, curves.Interpolation(w.p.Ram.Curve.Interpolation))
	if err != nil {
		return 0, err
	}
	f, err := c.Force(setting)
	return f + w.force.weight, err
}
