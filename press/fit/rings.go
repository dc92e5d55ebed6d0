package fit

import "math"

// Rings are the two thick rings of a press fit: a hub around an inner part,
// which is solid when its bore is 0.
//
// All its methods assume elastic, isotropic rings of even length, in plane
// stress, without edge effects, and neither friction nor rotation.
type Rings struct {
	Diameter   float64 // mm, of the joint
	HubOutside float64 // mm, outer diameter of the hub, above Diameter
	InsertBore float64 // mm, bore of the inner part, below Diameter; 0 when solid

	HubModulus, InsertModulus float64 // MPa, Young's moduli
	HubPoisson, InsertPoisson float64 // –, Poisson's ratios
}

const micrometres = 1000 // in 1 mm

// hubRatio is Q_A = d/D, insertRatio Q_I = b/d; both are returned squared.
func (r Rings) hubRatio() float64    { q := r.Diameter / r.HubOutside; return q * q }
func (r Rings) insertRatio() float64 { q := r.InsertBore / r.Diameter; return q * q }

// Pressure is the pressure in the joint.
//
//	p = (i/1000) / { d·[ ((D²+d²)/(D²−d²) + ν_hub)/E_hub + ((d²+b²)/(d²−b²) − ν_in)/E_in ] }
//
// Arguments: effective, µm on the diameter, the interference after smoothing.
// Result: MPa.
// Range: elastic, up to the lower of [Rings.HubLimit] and [Rings.InsertLimit];
// who says so: DIN 7190-1.
// Special cases: no pressure at or below zero interference.
// Source: Lamé's thick rings; Roloff/Matek eq. 12.10 to 12.13, as quoted in
// public texts; checked against Ugural & Fenster, Advanced Strength and Applied
// Elasticity, Example 8.3.
func (r Rings) Pressure(effective float64) float64 {
	if effective <= 0 {
		return 0
	}
	qa, qi := r.hubRatio(), r.insertRatio()
	hub := ((1+qa)/(1-qa) + r.HubPoisson) / r.HubModulus
	insert := ((1+qi)/(1-qi) - r.InsertPoisson) / r.InsertModulus
	return effective / micrometres / (r.Diameter * (hub + insert))
}

// BoreClosure is how much the bore of the inner part shrinks.
//
//	1000·b·2p·d²/(d²−b²)/E_in
//
// Arguments: p, MPa, pressure in the joint.
// Result: µm on the diameter.
// Range: elastic, see [Rings.InsertLimit].
// Special cases: 0 for a solid inner part.
// Source: Lamé's thick rings, hoop strain at the bore, where the radial stress
// is 0.
func (r Rings) BoreClosure(p float64) float64 {
	return micrometres * r.InsertBore * 2 * p / (1 - r.insertRatio()) / r.InsertModulus
}

// HubGrowth is how much the outside of the hub grows.
//
//	1000·D·2p·d²/(D²−d²)/E_hub
//
// Arguments: p, MPa, pressure in the joint.
// Result: µm on the diameter.
// Range: elastic, see [Rings.HubLimit].
// Special cases: none.
// Source: Lamé's thick rings, hoop strain at the outside, where the radial
// stress is 0.
func (r Rings) HubGrowth(p float64) float64 {
	return micrometres * r.HubOutside * r.HubHoopOutside(p) / r.HubModulus
}

// HubLimit is the joint pressure at which the hub stops being elastic.
//
//	p = (1 − Q_A²)/√3 · R_e, Q_A = d/D
//
// Arguments: yield, MPa, yield stress R_e of the hub.
// Result: MPa.
// Range: ductile hubs; a brittle one breaks earlier (no range is published
// here).
// Special cases: none.
// Source: DIN 7190-1 in the form of Roloff/Matek eq. 12.16, as quoted in public
// texts (neither was at hand).
func (r Rings) HubLimit(yield float64) float64 {
	return (1 - r.hubRatio()) / math.Sqrt(3) * yield
}

// InsertLimit is the joint pressure at which the inner part stops being
// elastic.
//
//	hollow: p = (1 − Q_I²)/√3 · R_e, Q_I = b/d;  solid: p = 2/√3 · R_e
//
// Arguments: yield, MPa, yield stress R_e of the inner part.
// Result: MPa.
// Range: ductile inner parts (no range is published here).
// Special cases: a bore of 0 is a solid part, which bears twice what one with
// the smallest hole does. Public texts disagree about the solid part; half the
// figure is also found.
// Source: as for [Rings.HubLimit].
func (r Rings) InsertLimit(yield float64) float64 {
	if r.InsertBore == 0 {
		return 2 / math.Sqrt(3) * yield
	}
	return (1 - r.insertRatio()) / math.Sqrt(3) * yield
}
