package fit

import "math"

// HubHoop is the hoop stress at the bore of the hub, where it is highest.
//
//	σ = p·(D²+d²)/(D²−d²)
//
// Arguments: p, MPa, pressure in the joint.
// Result: MPa, tension.
// Range: elastic, see [Rings.HubLimit].
// Special cases: none.
// Source: Lamé's thick rings; Roloff/Matek eq. 12.5, as quoted in public texts;
// checked against Ugural & Fenster, Example 8.3.
func (r Rings) HubHoop(p float64) float64 {
	q := r.hubRatio()
	return p * (1 + q) / (1 - q)
}

// HubHoopOutside is the hoop stress at the outside of the hub.
//
//	σ = 2p·d²/(D²−d²)
//
// Arguments: p, MPa, pressure in the joint.
// Result: MPa, tension.
// Range: elastic, see [Rings.HubLimit].
// Special cases: none.
// Source: as for [Rings.HubHoop].
func (r Rings) HubHoopOutside(p float64) float64 {
	q := r.hubRatio()
	return 2 * p * q / (1 - q)
}

// InsertHoop is the hoop stress at the bore of the inner part, where it is
// highest.
//
//	hollow: σ = −2p·d²/(d²−b²);  solid: σ = −p
//
// Arguments: p, MPa, pressure in the joint.
// Result: MPa, compression, so below zero.
// Range: elastic, see [Rings.InsertLimit].
// Special cases: a bore of 0 is a solid part, stressed evenly by half of what
// the smallest hole would raise.
// Source: Lamé's thick rings; Roloff/Matek eq. 12.6, as quoted in public texts;
// checked against Ugural & Fenster, Example 8.3.
func (r Rings) InsertHoop(p float64) float64 {
	if r.InsertBore == 0 {
		return -p
	}
	return -2 * p / (1 - r.insertRatio())
}

// HubMises is the von Mises stress at the bore of the hub.
//
//	σ_v = √(σ_t² − σ_t·σ_r + σ_r²), σ_r = −p, no axial stress
//
// Arguments: p, MPa, pressure in the joint.
// Result: MPa.
// Range: elastic; no other range is published.
// Special cases: none.
// Source: distortion energy hypothesis in plane stress, any text on strength of
// materials.
func (r Rings) HubMises(p float64) float64 {
	return mises(r.HubHoop(p), -p)
}

// InsertMises is the von Mises stress at the bore of the inner part.
//
//	σ_v = √(σ_t² − σ_t·σ_r + σ_r²), σ_r = 0 at a bore and −p in a solid part
//
// Arguments: p, MPa, pressure in the joint.
// Result: MPa.
// Range: elastic; no other range is published.
// Special cases: a bore of 0 is a solid part: σ_v = p.
// Source: as for [Rings.HubMises].
func (r Rings) InsertMises(p float64) float64 {
	if r.InsertBore == 0 {
		return mises(-p, -p)
	}
	return mises(r.InsertHoop(p), 0)
}

// mises is the equivalent stress of two principal stresses, MPa.
func mises(hoop, radial float64) float64 {
	return math.Sqrt(hoop*hoop - hoop*radial + radial*radial)
}
