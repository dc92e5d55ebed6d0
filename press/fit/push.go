package fit

import "math"

// Push is the way of the inner part into the hub. Depth is counted from the
// first contact.
type Push struct {
	Diameter   float64 // mm, of the joint
	Engagement float64 // mm, full length of the joint
	Pilot      float64 // mm, depth that is travelled before the fit begins
	Drag       float64 // N, force that the push costs besides, all the way
}

// Engaged is the length that already grips at a depth.
//
//	min(max(z − pilot, 0), L)
//
// Arguments: z, mm, depth from the first contact.
// Result: mm.
// Range: any.
// Special cases: none.
// Source: geometry, chamfers left out.
func (g Push) Engaged(z float64) float64 {
	return min(max(z-g.Pilot, 0), g.Engagement)
}

// Force is the force that the push demands at a depth.
//
//	F = μ·p·π·d·engaged(z) + drag
//
// Arguments: friction, –; pressure, MPa; z, mm, depth from the first contact.
// Result: N.
// Range: elastic joints; the usual friction values hold for press-in speeds up
// to about 2 mm/s (common practice, from memory).
// Special cases: the drag alone before the fit begins.
// Source: DIN 7190-1 in the form of Roloff/Matek eq. 12.21, as quoted in public
// texts; linear growth over the engaged length is common practice.
func (g Push) Force(friction, pressure, z float64) float64 {
	return g.Grip(friction, pressure, z) + g.Drag
}

// Grip is the axial force that the joint holds when the inner part has come to
// rest at a depth.
//
//	F = μ·p·π·d·engaged(z)
//
// Arguments: friction, –, for holding; pressure, MPa; z, mm, depth from the
// first contact.
// Result: N.
// Range: elastic joints; common practice is to load them only after about 24 h
// (from memory).
// Special cases: nothing holds before the fit begins; drag does not hold.
// Source: Coulomb friction over the joint; Roloff/Matek eq. 12.8, as quoted in
// public texts.
func (g Push) Grip(friction, pressure, z float64) float64 {
	return friction * pressure * math.Pi * g.Diameter * g.Engaged(z)
}
