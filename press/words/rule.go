package words

import (
	"math"

	"ramplan/press"
)

// ReadingRule says when the two signals of a plan may be read, because a signal
// that is stuck looks like any other.
func ReadingRule(p *press.Plan, r *press.Result) string {
	return "See both signals off earlier in the cycle; read them once, at arrival plus the confirm time of " + Seconds(p.Motion.ConfirmTime) +
		" or after the watch time" + atLeast(r) + ", and latch them before the ram retracts, until the next start. " +
		"Push an empty nest first: a move that only ends must give no arrival."
}

// atLeast says how long the watch time is; empty without a push end.
func atLeast(r *press.Result) string {
	if r.Cycle.WatchTime == nil {
		return ""
	}
	return " (wait at least " + After(*r.Cycle.WatchTime) + " from home" + aside(r, "; ", MotionAlone, "") + ")"
}

// After writes a time that has to have gone by: to 0.01 s, rounded up.
func After(s float64) string { return Unit(AfterBare(s), "s") }

// AfterBare is the same without its unit.
func AfterBare(s float64) string { return Fixed(whenOver(s), 2) }

// whenOver rounds a time up to what is typed in.
func whenOver(s float64) float64 { return roundedUp(s, 100) }

// roundedUp rounds up to parts of a whole, and leaves what is one but for the last
// digits.
func roundedUp(x, parts float64) float64 { return math.Ceil(x*parts-1e-6) / parts }
