// Package probe computes what a first push at a low setting tells of a press fit: where
// it must end, which grip it refuses, and how many sound parts it refuses wrongly.
//
// Lengths are in mm, interference in µm on the diameter, forces in N, stiffness and grip
// in N/mm; a probability is a number from 0 to 1.
package probe

import "math"

// Doubts are what may differ between the two readings of one part in one cycle.
type Doubts struct {
	Repeatability float64 // ± mm, two standard deviations
	Scatter       float64 // ± N, of the press's force, two standard deviations
	ProbeScatter  float64 // ± N, of the probe's force
	Stiffness     float64 // N/mm
	StiffnessTau  float64 // ± share of it, two standard deviations
	Between       float64 // mm, δ − δ_p: by how much the press deflects more than the probe
}

// Differ is the standard uncertainty of the difference of the two readings.
//
//	u_d² = 2(repeatability/2)² + (h/2k)² + (h_p/2k)² + ((δ−δ_p)·τ_k/2)²
//
// Arguments: those of [Doubts].
// Result: mm.
// Range: any; the two forces are taken as independent, which is the larger figure.
// Special cases: what is the same in both readings, nest drift, reference and datum
// rows, falls out.
// Source: derived here from JCGM 100:2008, 5.1.2.
func (d Doubts) Differ() float64 {
	return math.Sqrt(2*square(d.Repeatability/2) + square(d.Scatter/2/d.Stiffness) +
		square(d.ProbeScatter/2/d.Stiffness) + square(d.Between*d.StiffnessTau/2))
}

// Latest is the place at which a probe may end at the latest, so that a part without
// grip that passes it stands clear of the zone in the press.
//
//	L_p = Z1 − (δ−δ_p) − guard·2u_d
//
// Arguments: zoneStart, mm, Z1; guard, –, the guard factor; those of [Doubts].
// Result: mm.
// Range: within the guard: with a factor of 1, 2.3 % of the parts that stand just there
// differ by more.
// Special cases: a guard of 0 leaves half of them.
// Source: derived here from how a part without grip rests in both pushes.
func (d Doubts) Latest(zoneStart, guard float64) float64 {
	return zoneStart - d.Between - guard*2*d.Differ()
}

// Overrun is how far the moving mass carries a part on past the place where it would
// stall.
//
//	v·√(m/c), in SI units
//
// Arguments: speed, mm/s, of the push; mass, kg, that moves; slope, N/mm, by which the
// demand rises there.
// Result: mm.
// Range: undamped: a bound; no range is published.
// Special cases: without a rise there is no bound: +Inf, and 0 without a mass.
// Source: energy method, m·v²/2 = c·s²/2.
func Overrun(speed, mass, slope float64) float64 {
	if speed == 0 || mass == 0 {
		return 0
	}
	return speed * math.Sqrt(mass/(slope*1000))
}

func square(x float64) float64 { return x * x }
