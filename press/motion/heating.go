package motion

import "math"

// RMS is the setting that would heat the motor as much if it were held all the
// time.
//
//	c·√(t_loaded/t_total)
//
// Arguments: setting, %; loaded, s, time of a cycle at that setting; total, s,
// time of the whole cycle.
// Result: %, and whether there is one.
// Range: heat by current only, cycles much shorter than the thermal time
// constant of the motor, nothing counted for the rest of the cycle: an
// estimate; no range is published.
// Special cases: a cycle of no length has none.
// Source: root mean square of the current, common practice, no source.
func RMS(setting, loaded, total float64) (float64, bool) {
	if !(total > 0) {
		return 0, false
	}
	return setting * math.Sqrt(loaded/total), true
}
