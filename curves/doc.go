// Package curves holds the current-to-force curve of a ram: how hard it pushes
// at a given limit of its motor current.
//
// Settings are in % of rated motor current, forces in N. A curve is made once
// with [New] and never changes; it may be used by many goroutines at once.
// Between its points it interpolates, outside them it answers with a
// [RangeError]: a ram is never trusted beyond what was measured.
//
// [ReadColumns] takes the points out of two columns of pasted text.
package curves
