package draw

import "math"

// perMM is the px of one mm.
const perMM = pxPerInch / 25.4

// capitals is the height of a capital of the face, in type sizes.
const capitals = 1409.0 / 2048

// lettered gives the type size, px, whose capitals are this many mm high: the
// heights of lettering are those of its capitals (ISO 3098-1).
func lettered(mm float64) float64 { return mm * perMM / capitals }

// fit gives the scale at which something wide goes into a width, never over most.
func fit(wide, into, most float64) float64 { return math.Min(most, into/wide) }
