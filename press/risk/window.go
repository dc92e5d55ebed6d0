// Package risk computes what a window of readings lets pass: the operating
// characteristic, the risks of all parts (JCGM 106:2012, clause 9) and the
// heights of limit samples.
//
// Lengths are in mm; a probability is a number from 0 to 1.
package risk

import (
	"ramplan/press/stack"
	"ramplan/press/verdict"
)

// Window is the interval of readings in which a part is accepted, and the error
// with which a part is read.
type Window struct {
	Low, High float64    // mm, closed interval of readings
	Error     *stack.Sum // mm, about zero
	Empty     bool       // nothing is accepted
}

// Accept gives the probability that a part is accepted whose reading without
// error would be r: the operating characteristic.
//
//	P(low ≤ r + e ≤ high)
//
// Argument: r, mm.
// Range: any; no published limit. Exact to 1e-10.
// Special cases: without error, 1 inside the closed window (1e-9 mm slack).
// Source: JCGM 106:2012, 7.2, with the error's own distribution.
func (w Window) Accept(r float64) float64 {
	if w.Empty {
		return 0
	}
	if w.Error.Point() {
		if r >= w.Low-slack && r <= w.High+slack {
			return 1
		}
		return 0
	}
	// The error is symmetric about zero: both tails are taken where they are small.
	return max(0, w.Error.CDF(w.High-r)-w.Error.CDF(w.Low-r))
}

// slack is what comparisons of positions forgive, mm.
const slack = verdict.Slack
