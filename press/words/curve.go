package words

import "ramplan/press"

// CurveTitle is the message of a ram's curve: what it gives at the setting, or
// from where to where it reaches while no setting is known.
func (say Printer) CurveTitle(t *press.CurveTrace, setting *float64, force float64) string {
	if setting != nil {
		return "At " + say.Setting(*setting) + " the curve gives " + say.Force(force)
	}
	first, last := t.Points[0], t.Points[len(t.Points)-1]
	return "The curve reaches from " + CurvePoint(first) + " to " + CurvePoint(last)
}

// CurvePoint writes one point of a curve as it was typed.
func CurvePoint(p [2]float64) string {
	return Unit(Exact(p[0]), "%") + ", " + Unit(Exact(p[1]), "N")
}

// CurveSetting names the setting on the curve.
func (say Printer) CurveSetting(setting, force float64) string {
	return "setting " + say.Setting(setting) + ": " + say.Force(force)
}
