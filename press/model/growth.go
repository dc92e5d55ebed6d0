package model

// SteelExpansion is a common expansion of plain steel, 1/K (from memory).
const SteelExpansion = 11.5e-6

// Growth is by how much a length grows when it warms up.
//
//	Δl = α·l·ΔT
//
// Arguments: length, mm; change, K; expansion, 1/K.
// Result: mm.
// Range: free expansion, an expansion that does not change with the temperature.
// Source: definition of the coefficient of linear thermal expansion.
func Growth(length, change, expansion float64) float64 { return expansion * length * change }
