// Package draw makes the drawings of a plan, one file each. A drawing is first data, taken
// from a plan and its result, then shapes on a [canvas.Pen]; nothing is computed here that
// the result holds.
package draw
