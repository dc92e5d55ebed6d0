// Package sequence runs a cycle that is a list of steps of one ram: where each step
// begins and ends, when, which signals come on, and what becomes of it without the
// part, after a hold, and in the next cycle.
//
// It knows numbers only. Positions are in mm along the stroke, growing toward the work;
// times in s from the start of the cycle, speeds in mm/s, accelerations in mm/s².
// Comparisons of positions have 1e-9 mm slack.
package sequence

// Slack is what comparisons of positions forgive, mm.
const Slack = 1e-9

// Kind is what a step does.
type Kind string

// The kinds of steps.
const (
	Move  Kind = "move"  // to a place
	Shift Kind = "shift" // by a way
	Wait  Kind = "wait"
	Probe Kind = "probe" // a first push at a low setting
	Press Kind = "press"
)

// A Step is one row of the list. A step that has a count is done so often.
type Step struct {
	Kind     Kind
	To       float64     // mm, of a move
	By       float64     // mm, of a shift
	Times    int         // of a shift; 0 counts as 1
	Pause    float64     // s, of a shift, after each pass
	Speed    float64     // mm/s, of a move or shift
	Accel    float64     // mm/s²
	Decel    float64     // mm/s²
	HandOver bool        // the next step begins at this one's end without rest
	Cancel   bool        // the hold input ends the step
	Zone     *[2]float64 // mm, of the step's own signal
	Time     float64     // s, of a wait
}

// moves tells whether the step is a move or a shift.
func (s Step) moves() bool { return s.Kind == Move || s.Kind == Shift }

// pushes tells whether the step is a probe or a press.
func (s Step) pushes() bool { return s.Kind == Probe || s.Kind == Press }

// A Station is where and how the ram pushes.
type Station struct {
	Home       float64 // mm, where the cycle starts, at rest
	FromTarget bool    // a shift counts from the last target, not from where the ram is

	ApproachSpeed, Accel, Decel float64 // of the way to the push
	A                           float64 // mm, where the push begins at the earliest
	SlowSpeed                   float64 // mm/s, of both pushes

	E       float64     // mm, where the press ends at the latest
	Settle  float64     // s, of both pushes
	Confirm float64     // s
	Hold    float64     // s
	Zone    *[2]float64 // mm, of the press

	ProbeEnd     float64 // mm
	ProbeConfirm float64 // s
	ProbeZone    bool    // the press's zone is alive in the probe

	StationZone *[2]float64 // mm
}

// Rest is where a push comes to rest, and what it finds there.
type Rest struct {
	Position float64 // mm
	Arrives  bool    // it meets something: arrival comes on
	Waits    bool    // it settles and, the press, holds
}

// A Part is what lies in the nest: how both pushes end.
type Part struct {
	Probe, Press Rest
	Refused      bool // the probe refuses it: the press does not take place
}
