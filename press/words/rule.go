package words

import (
	"math"

	"ramplan/press"
)

// ReadingRule says when the two signals of a plan may be read, because a signal
// that is stuck looks like any other.
func (say Printer) ReadingRule(p *press.Plan, r *press.Result) string {
	if TwoLooks(r) {
		return "See both signals off earlier in the cycle. First look, in the probe: at arrival plus " + say.Seconds(p.Probe.ConfirmTime) + " or after its watch time (" + say.fromHome(*r.Probe.WatchTime) +
			"). " + GoOnOnly + " Second look, in the push: read both once, at arrival plus the confirm time of " + say.Seconds(p.Motion.ConfirmTime) + " or after the watch time" + say.atLeast(r) +
			", and latch them before the ram retracts, until the next start. Run the cycle with an empty nest before the first part: a move that merely ends must give no arrival, in the probe as in the push."
	}
	return "See both signals off earlier in the cycle; read them once, at arrival plus the confirm time of " + say.Seconds(p.Motion.ConfirmTime) +
		" or after the watch time" + say.atLeast(r) + ", and latch them before the ram retracts, until the next start. " +
		"Push an empty nest first: " + say.emptyPush(r) + "."
}

// emptyPush says what the push of the empty nest must show: no arrival, because its move
// merely ends, unless the nest itself stops the ram before that.
func (say Printer) emptyPush(r *press.Result) string {
	stop, stops := r.NestStops()
	if !stops {
		return "a move that only ends must give no arrival"
	}
	return "the nest itself stops the ram before the push ends, so it must show " + Pair{true, stop.Zone}.String() +
		"; that a move which merely ends gives no arrival is proved at set-up, with a push end short of the nest"
}

// atLeast says how long the watch time is; empty without a push end.
func (say Printer) atLeast(r *press.Result) string {
	if r.Cycle.WatchTime == nil {
		return ""
	}
	return " (" + say.fromHome(*r.Cycle.WatchTime) + aside(r, "; ", MotionAlone, "") + ")"
}

// fromHome says how long is waited from leaving home.
func (say Printer) fromHome(s float64) string { return "wait at least " + say.After(s) + " from home" }

// After writes a time that has to have gone by: to 0.01 s, rounded up.
func (say Printer) After(s float64) string { return Unit(say.AfterBare(s), "s") }

// AfterBare is the same without its unit.
func (say Printer) AfterBare(s float64) string { return Fixed(whenOver(s), 2) }

// whenOver rounds a time up to what is typed in.
func whenOver(s float64) float64 { return roundedUp(s, 100) }

// roundedUp rounds up to parts of a whole, and leaves what is one but for the last
// digits.
func roundedUp(x, parts float64) float64 { return math.Ceil(x*parts-1e-6) / parts }
