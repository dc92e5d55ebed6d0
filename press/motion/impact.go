package motion

import "math"

// ImpactForce is the force peak when a moving mass is stopped by a spring.
//
//	F = v·√(k·m), in SI units
//
// Arguments: speed, mm/s; stiffness, N/mm; mass, kg.
// Result: N.
// Range: undamped, massless, linear spring; who says so: the energy method. No
// error is published.
// Special cases: 0 when any of the three is 0.
// Source: energy method, horizontal impact, for example R. C. Hibbeler,
// Mechanics of Materials, chapter 14.
func ImpactForce(speed, stiffness, mass float64) float64 {
	metresPerSecond := speed / 1000
	newtonsPerMetre := stiffness * 1000
	return metresPerSecond * math.Sqrt(newtonsPerMetre*mass)
}

// Seat is a ram that meets the seat while it pushes.
type Seat struct {
	Force     float64 // N, of the ram
	Demand    float64 // N, that the joint still takes at the seat
	Speed     float64 // mm/s, at the seat
	Stiffness float64 // N/mm, of everything that gives way
	Mass      float64 // kg, that moves, rotor included
}

// Expected is the upper end of the force to expect at the seat; the force itself
// is the lower end.
//
//	F + v·√(k·m), in SI units
//
// Arguments: those of [Seat], with the typical force; the demand plays no part.
// Result: N.
// Range: the motor holds the set force and the moving mass adds up to this much,
// depending on how fast the speed loop gives way; no range is published.
// Special cases: without speed or mass the force.
// Source: derived here from [ImpactForce]; no published source.
func (s Seat) Expected() float64 {
	return s.Force + ImpactForce(s.Speed, s.Stiffness, s.Mass)
}

// Bound is a force at the seat that is never exceeded.
//
//	F + √((F − F_d)² + k·m·v²), in SI units
//
// Arguments: those of [Seat], with the high force and the low demand.
// Result: N.
// Range: undamped, constant force and demand, linear spring; who says so: the
// energy method. No error is published.
// Special cases: without demand and speed twice the force, the suddenly applied
// load; with F = m·g, no demand and v² = 2·g·h the falling weight.
// Source: energy method; with F = m·g R. C. Hibbeler, Mechanics of Materials,
// chapter 14.
func (s Seat) Bound() float64 {
	return s.Force + math.Hypot(s.Force-s.Demand, ImpactForce(s.Speed, s.Stiffness, s.Mass))
}
