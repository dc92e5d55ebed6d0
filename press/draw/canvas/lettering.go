package canvas

import "math"

// PerMM is the px of one mm.
const PerMM = pxPerInch / 25.4

// capitals is the height of a capital of the face, in type sizes.
const capitals = 1409.0 / 2048

// Lettered gives the type size, px, whose capitals are this many mm high: the
// heights of lettering are those of its capitals (ISO 3098-1).
func Lettered(mm float64) float64 { return mm * PerMM / capitals }

// Fit gives the scale at which something wide goes into a width, never over most.
func Fit(wide, into, most float64) float64 { return math.Min(most, into/wide) }
