// Package fit computes press fits: ISO 286 limits and interference, smoothing,
// the pressure of two thick rings, push-in and holding force, and what the fit
// does to the parts.
//
// Figures run in one direction:
//
//	[Code] or own [Limits] ──► [Interference] ──► [Smoothing] ──► [Rings.Pressure]
//	                                 ▲                               │
//	                         [Thermal.Change]          [Push.Force], [Push.Grip], stresses
//
// Lengths are in mm, deviations and interference in µm on the diameter,
// pressures, stresses and moduli in MPa (N/mm²), forces in N, temperatures in K.
package fit
