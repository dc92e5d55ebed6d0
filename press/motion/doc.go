// Package motion computes how a ram moves: moves with a trapezoidal or
// triangular speed profile, what an impact costs, and how much of the
// motor's current a cycle takes.
//
// Lengths are in mm, times in s, speeds in mm/s, accelerations in mm/s²,
// stiffness in N/mm, masses in kg, forces in N, settings in %.
package motion
