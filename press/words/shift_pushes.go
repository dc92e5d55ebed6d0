package words

import "ramplan/press"

// How a shift check calls what it presses, beside the limit samples of the plan.
const (
	NoInsert    = "missing"
	EmptyNest   = "empty"
	Master      = "Master"
	LooseSample = "Loose sample"
)

// A ShiftPush is one push of the shift check, as a page asks for it that is filled in.
type ShiftPush struct {
	Sample string   // as it is kept
	Bounds string   // between which heights it is made; empty for what has none
	Height *float64 // mm, about which it has; nil for what has none
	Reads  bool     // the paper asks for its reading
	First  bool     // it is pushed with the probe in use, and the first look is all that comes of it
	Lamps  *Pair    // that the first look must show to refuse it; nil: not to be told, or no first look
	Where  string   // in words, what the ram does at the first look
}

// ShiftPushes are the pushes of the shift check, those of the page that is printed and in its
// order. There are none where the signals are not known.
func (say Printer) ShiftPushes(r *press.Result) []ShiftPush {
	var out []ShiftPush
	for _, x := range say.shiftPushes(r.Plan, r) {
		out = append(out, x.asked)
	}
	return out
}
