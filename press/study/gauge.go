package study

import "math"

// A GaugeRule is one of the usual definitions of the indices of a gauge study of type 1.
type GaugeRule struct {
	Name    string
	P       float64 // share of the tolerance
	Spreads float64 // over so many standard deviations
}

// GaugeRules are the usual definitions; [ChosenGaugeRule] is the stricter of the usual pair.
var GaugeRules = []GaugeRule{
	{"0.2T/4s", 0.2, 4}, // ISO 22514-7 style
	{"0.2T/6s", 0.2, 6},
	{"0.2T/5.15s", 0.2, 5.15},
	{"0.15T/6s", 0.15, 6},
	{"0.1T/6s", 0.1, 6},
}

// ChosenGaugeRule is the one that the program judges by.
var ChosenGaugeRule = GaugeRules[1]

// Indices are the indices of a gauge study of type 1 by this rule.
//
//	Cg = pT/(qs), Cgk = (pT/2 − |bias|)/(qs/2)
//
// Arguments: tolerance, –, T in any unit; s, –, standard deviation of the readings, and
// bias, –, both in that unit.
// Result: Cg and Cgk, –.
// Range: any.
// Special cases: s = 0: both nil.
// Source: rules differ from works to works; ISO 22514-7:2021 for 0.2T/4s, the others common
// practice, no source.
func (r GaugeRule) Indices(tolerance, s, bias float64) (cg, cgk *float64) {
	if !(s > 0) {
		return nil, nil
	}
	a := r.P * tolerance / (r.Spreads * s)
	b := (r.P*tolerance/2 - math.Abs(bias)) / (r.Spreads * s / 2)
	return &a, &b
}

// MeasuringSystem is what a measuring system is known by, all in one unit.
type MeasuringSystem struct {
	Calibration float64 // ± uncertainty of the master, two standard deviations
	Resolution  float64
	SD          float64 // of the readings
	Bias        float64
}

// Uncertainty is the standard uncertainty of a measuring system.
//
//	u_MS = √((U_cal/2)² + max(resolution/√12, s)² + bias²/3)
//
// Arguments: the fields of the system.
// Result: u_MS, –, in the unit of the fields.
// Range: any.
// Special cases: of resolution and repeatability only the larger counts.
// Source: ISO 22514-7:2021, from memory.
func (m MeasuringSystem) Uncertainty() float64 {
	return math.Sqrt(square(m.Calibration/2) + square(math.Max(m.Resolution/math.Sqrt(12), m.SD)) + square(m.Bias)/3)
}

// Performance is the capability ratio of a measuring system and its index.
//
//	Q_MS = 400u_MS/T %, C_MS = 0.3T/(6u_MS)
//
// Arguments: tolerance, –, T in the unit of the fields.
// Result: Q_MS, %, and C_MS, –.
// Range: T over 0.
// Special cases: u_MS = 0: C_MS is nil; T not over 0: both are nil.
// Source: ISO 22514-7:2021, from memory.
func (m MeasuringSystem) Performance(tolerance float64) (q, c *float64) {
	if !(tolerance > 0) {
		return nil, nil
	}
	u := m.Uncertainty()
	a := 400 * u / tolerance
	if u > 0 {
		b := 0.3 * tolerance / (6 * u)
		c = &b
	}
	return &a, c
}
