// Package verdict tells what the two signals say of a part: along the push
// stroke, and as the table of the four signal pairs.
//
// Positions are ram positions in mm, growing toward the work. Comparisons have
// 1e-9 mm slack: binary noise makes no verdict.
package verdict

import "math"

// Slack is what comparisons of positions forgive, mm.
const Slack = 1e-9

// Signals are the three positions that make the signals.
type Signals struct {
	Start     float64 // A, mm: where the push at limited force begins
	End       float64 // E, mm: where it ends when nothing stops the ram
	ZoneStart float64 // Z1, mm
	ZoneEnd   float64 // Z2, mm
}

// InZone tells whether the zone signal is on at a position.
func (s Signals) InZone(x float64) bool {
	return x >= s.ZoneStart-Slack && x <= s.ZoneEnd+Slack
}

// Early tells whether a part that stops the ram at r is met before the push
// begins.
func (s Signals) Early(r float64) bool { return r < s.Start-Slack }

// Arrives tells whether the ram is stopped at r before it runs out of stroke.
func (s Signals) Arrives(r float64) bool { return r <= s.End+Slack }

// At gives the two signals for a part that would stop the ram at r ≥ A if the
// stroke were endless.
func (s Signals) At(r float64) (arrival, zone bool) {
	if s.Arrives(r) {
		return true, s.InZone(r)
	}
	return false, s.InZone(s.End)
}

// Overlap gives the readings that give both signals, [max(A, Z1), min(E, Z2)];
// ok is false when there are none.
func (s Signals) Overlap() (low, high float64, ok bool) {
	low, high = math.Max(s.Start, s.ZoneStart), math.Min(s.End, s.ZoneEnd)
	if low > high+Slack {
		return 0, 0, false
	}
	return low, math.Max(low, high), true
}
