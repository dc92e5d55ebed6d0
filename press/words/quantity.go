package words

import "math"

// Force writes a force to 1 N.
func (say Printer) Force(n float64) string { return say.Units.Force.fixed(n, 0, "N") }

// Setting writes a motor-current setting: steps as they are typed, anything else
// to 0.01 %.
func (say Printer) Setting(percent float64) string { return Unit(Trimmed(percent, 2), "%") }

// Seconds writes a time to 0.01 s, short ones to 0.001 s. Every time is rounded up,
// as those are that have to go by: one time never stands in two ways.
func (say Printer) Seconds(s float64) string { return Unit(say.SecondsBare(s), "s") }

// SecondsBare is the same without its unit.
func (say Printer) SecondsBare(s float64) string {
	if short := roundedUp(s, 1000); math.Abs(short) < 0.1 {
		return Trimmed(short, 3)
	}
	return say.AfterBare(s)
}

// Speed writes a speed as it was typed.
func (say Printer) Speed(v float64) string { return say.Units.Velocity.trimmed(v, 3, "mm/s") }

// SpeedBare is the same without its unit.
func (say Printer) SpeedBare(v float64) string {
	v, decimals, _ := say.Units.Velocity.in(v, 3, "mm/s")
	return Trimmed(v, decimals)
}

// Microns writes µm to 0.1.
func (say Printer) Microns(x float64) string { return say.Units.Finest.fixed(x, 1, "µm") }

// leastPPM is the bound of the computed probabilities, in ppm.
const leastPPM = 0.01

// PPM writes a computed share of parts in ppm with two significant digits; what
// is too small to be told from nothing is written as a bound.
func (say Printer) PPM(x float64) string {
	if x < leastPPM {
		return "<" + thin + Unit(Fixed(leastPPM, 2), "ppm")
	}
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return Unit(none, "ppm")
	}
	if x >= manyPPM {
		return say.Share(x / 1e6)
	}
	return Unit(ppmDigits(x, 2), "ppm")
}

// manyPPM is from where on a share is easier to grasp as a percentage: 1 %.
const manyPPM = 1e4

func ppmDigits(x float64, digits int) string {
	power := math.Pow10(int(math.Floor(math.Log10(x))) + 1 - digits)
	if power >= 1 {
		return Fixed(math.Round(x/power)*power, 0)
	}
	return Fixed(x, significant(math.Round(x/power)*power, digits, 0))
}

// TargetPPM writes a share in ppm as it was typed.
func (say Printer) TargetPPM(x float64) string { return Unit(Trimmed(x, 6), "ppm") }

// ppmOver writes a share in ppm that is more than a limit, with as many digits
// as it takes to see that.
func (say Printer) ppmOver(x, limit float64) string {
	if x < leastPPM {
		return say.PPM(x)
	}
	if x >= manyPPM && x > 1.05*limit { // in percent, and in the unit of the limit
		return say.PPM(x) + " (" + Unit(ppmDigits(x, 2), "ppm") + ")"
	}
	for digits := 2; digits < 9; digits++ {
		if s := Unit(ppmDigits(x, digits), "ppm"); s != say.TargetPPM(limit) {
			return s
		}
	}
	return say.PPM(x)
}

// Share writes a probability as a percentage. It never rounds up to certainty
// nor down to impossibility: the digits grow until the remainder shows, and stop
// at a bound.
func (say Printer) Share(p float64) string {
	switch {
	case math.IsNaN(p):
		return Unit(none, "%")
	case p >= 1:
		return Unit("100", "%")
	case p <= 0:
		return Unit("0", "%")
	case p > 1-1e-6:
		return ">" + thin + Unit("99.9999", "%")
	case p < 1e-6:
		return "<" + thin + Unit("0.0001", "%")
	}
	// Cut, not rounded: a promise of 99.93 % must not be made for 99.926 %.
	rest := math.Min(p, 1-p) * 100
	decimals := significant(rest, 1, 1)
	scale := math.Pow10(decimals)
	return Unit(Trimmed(math.Floor(p*100*scale+1e-6)/scale, decimals), "%")
}

// SeenShare writes a share that was seen, or that is predicted for parts as they come: in ppm,
// and from 1 % on as a percentage to two digits of it or of what is missing to all. Unlike
// [Printer.Share] it promises nothing, so it is rounded.
func (say Printer) SeenShare(p float64) string {
	switch {
	case p <= 0:
		return "0"
	case p >= 1:
		return Unit("100", "%")
	case p < manyPPM/1e6:
		return say.PPM(1e6 * p)
	}
	rest := 100 * math.Min(p, 1-p)
	return Unit(Trimmed(100*p, min(significant(rest, 2, 1), 6)), "%")
}

// TargetShare writes a share as it was typed, as a percentage.
func (say Printer) TargetShare(p float64) string { return Unit(Trimmed(100*p, 6), "%") }

// Ratio writes a plain factor with two decimals.
func (say Printer) Ratio(x float64) string { return Fixed(x, 2) }

// ForceFine writes a force to 0.1 N: what is measured with a cell, or typed from it.
func (say Printer) ForceFine(n float64) string { return say.Units.Force.fixed(n, 1, "N") }

// Stiffness writes a stiffness to 1 N/mm, and its ± where one is given.
func (say Printer) Stiffness(k float64, within ...float64) string {
	force, _, n := say.Units.Force.in(1, 0, "N")
	length, _, mm := say.Units.Length.in(1, 0, "mm")
	s := Fixed(k*force/length, 0)
	for _, u := range within {
		s += " ± " + Fixed(u*force/length, 0)
	}
	return Unit(s, n+"/"+mm)
}
