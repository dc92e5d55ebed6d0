package words

import "ramplan/press"

// phases name the phases of a cycle and say what goes on in them.
var phases = map[press.Phase]Term{
	press.PhaseApproach: {"Approach", "The ram comes down fast. Its force is not limited."},
	press.PhaseSlow:     {"Slow push", "The ram goes on slowly, with limited force, and has met nothing yet."},
	press.PhasePress:    {"Pressing", "The tool is on the part and presses it in."},
	press.PhaseSettle:   {"Settling", "The ram has come to rest; its force still rises to what was set, and arrival comes on only then."},
	press.PhaseConfirm:  {"At rest", "The ram has come to rest; the signals must stay as they are for a moment."},
	press.PhaseRead:     {"Read", "Now the two lamps are read, once, and latched: the controller holds them until the next start."},
	press.PhaseRetract:  {"Retract", "The ram goes home. What the signals show on the way says nothing: the held lamps count."},
	press.PhaseHome:     {"Home", "The cycle is over."},
	press.PhaseStruck:   {"Struck", "The part was met in the fast approach. The push limit is not in force, and nobody knows what the lamps show now. Stop, do not start again, and call the setter: " + AfterAStrike + " Set the part apart, whatever the lamps show."},
}

// AfterAStrike is what comes before the next start when the approach has struck a part.
const AfterAStrike = "tool, nest and ram are checked first."

// Phase names a phase of a cycle and says what goes on in it.
func Phase(p press.Phase) Term {
	if t, ok := phases[p]; ok {
		return t
	}
	return Term{string(p), ""}
}

// What refuses a part that is good by its height.
const (
	RefusedByGuard  = " This part: good by the drawing, refused by the guard band."
	RefusedByRule   = " This part: good by the drawing, refused because the window stays inside it."
	RefusedByWindow = " This part: good by the drawing, refused by the window as it is set, which is narrower than it might be."
)
