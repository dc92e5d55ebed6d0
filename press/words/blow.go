package words

import "ramplan/press"

// noRotor stands behind a blow of a plan that does not give the inertia mass. Its rotor
// may carry many times the momentum of what hangs on the ram.
const noRotor = "without the rotor: give the ram's inertia mass"

// WithoutRotor tells whether the blows of a plan are of what hangs on the ram alone,
// because its inertia mass is not given: then each of them is a lower bound.
func WithoutRotor(r *press.Result) bool { return r.Plan != nil && !r.Plan.Given("ram.inertia_mass") }

// aboutRotor gives a text where the rotor is missing from the blows, and nothing elsewhere.
func aboutRotor(r *press.Result, text string) string {
	if WithoutRotor(r) {
		return text
	}
	return ""
}

// atLeastBare writes a force that holds a blow as the lower bound that it is without the
// rotor.
func (say Printer) atLeastBare(r *press.Result, force string) string {
	return aboutRotor(r, "at least ") + force
}

// BlowFigure writes a blow, or a force with one in it, without its unit.
func (say Printer) BlowFigure(r *press.Result, force float64) string {
	return say.atLeastBare(r, Fixed(force, 0))
}

// BlowNote says beside a figure with a blow in it what is missing from it; empty when
// nothing is.
func BlowNote(r *press.Result) string { return aboutRotor(r, noRotor) }

// BoundNote says what the undamped force at the seat is; without the rotor it bounds nothing.
func (say Printer) BoundNote(r *press.Result) string {
	if WithoutRotor(r) {
		return "no bound " + noRotor
	}
	return "a bound, no forecast"
}

// RotorMissing is a sentence of its own, behind what was said of a blow; empty where the
// inertia mass is given.
func (say Printer) RotorMissing(r *press.Result) string {
	return aboutRotor(r, " The inertia mass is not given, so this is the blow without the rotor, and the true one may be several times as hard: enter it.")
}

// EarlyBlow writes the blow in the approach, which is at least so hard in any case.
func (say Printer) EarlyBlow(r *press.Result) string {
	return say.Force(r.Impact.Early) + aboutRotor(r, " without the rotor")
}

// EarlyNote says what comes on top of the blow in the approach, and where that is over
// what may be borne although the blow alone is not, which no finding speaks of.
func (say Printer) EarlyNote(r *press.Result) string {
	s, i, most := "the motor pushes on behind it", &r.Impact, r.Force.Cap
	if both := i.Early + i.EarlyPush; i.EarlyPush > 0 && i.Early <= most && both > most {
		d := apart(both, most, 0)
		s += ", and no limit holds it: with the " + Fixed(i.EarlyPush, d) + " of its greatest setting " + Fixed(both, d) + " together, over the " + Fixed(most, d) + " that may be borne"
	}
	return s + aboutRotor(r, "; "+noRotor)
}

// slower says how fast the slow push may be so that a force is not passed. That speed is
// rounded down; under 0.1 mm/s none is named.
func (say Printer) slower(within float64) string {
	if v := within; v >= 0.1 {
		return "push no faster than " + say.Speed(down(v))
	}
	return "no speed that a ram keeps is slow enough"
}

// seatStrongSpeed names the speed for a strong ram beside that for the typical one.
func (say Printer) seatStrongSpeed(within float64) string {
	if within < 0.1 {
		return "; a strong ram is over it at any speed"
	}
	return ", and for a strong ram no faster than " + say.Speed(down(within))
}

// hardBlow says of a plan whose blow at first contact or at the seat is over what part and
// tool may bear by how much it is; empty where neither is.
func (say Printer) hardBlow(r *press.Result) string {
	force, where := r.Impact.SeatExpected, "at the seat"
	if !(force > r.Force.Cap) || r.Impact.Contact <= 0 || r.Force.Typical > r.Force.Cap {
		return "" // the push alone is told as what it is
	}
	if r.Impact.Contact > r.Force.Cap {
		where = "at the seat, and at first contact with " + say.atLeastBare(r, say.Force(r.Impact.Contact))
	}
	return "may strike part and tool with " + say.atLeastBare(r, say.Force(force)) + " " + where + ", where they may bear " + say.Force(r.Force.Cap)
}

// AtRest says beside the push at the setting what it is typically, and by how much less it
// may be where the direction of its curve was not given.
func (say Printer) AtRest(r *press.Result) string {
	s := "at rest; typically " + Fixed(r.Force.Typical, 0)
	if by := r.WeightDoubt(); by > 0 {
		s += "; " + Fixed(by, 0) + " less if the curve was taken pressing down: say how the ram stood"
	}
	return s
}
