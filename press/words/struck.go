package words

import "ramplan/press"

// notTried stands where a fault ends in the approach: nobody is sent to try that.
const notTried = "not judged by these signals: the approach strikes it"

// overStrike says how hard the approach strikes what stands in its way, where that
// is over what part and tool may bear; empty where it is not.
func (say Printer) overStrike(r *press.Result) string {
	if r.Impact.Early <= r.Force.Cap {
		return ""
	}
	force, most, _ := say.forces(r.Impact.Early, r.Force.Cap)
	return "at least " + force + aboutRotor(r, " without the rotor") + ", where part and tool may bear " + most
}

// struckHow says in the rows of failures that a fault is met in the approach, and
// what follows from it.
func (say Printer) struckHow(r *press.Result) string {
	s := "Not judged by these signals: the approach strikes it"
	if over := say.overStrike(r); over != "" {
		return s + " with " + over + ". Do not try it; another check is needed."
	}
	return s + ". Another check is needed."
}

// struckTwice tells whether two inserts are met in the approach.
func struckTwice(r *press.Result) bool {
	f := row(r, press.RowTwoInserts)
	return f != nil && f.Verdict == press.EarlyContact
}

// SeatBlow says what the range of the force at the seat is made of, how far a strong ram
// takes it, and where that is over what part and tool may bear.
func (say Printer) SeatBlow(r *press.Result) string {
	most, d, over := r.Force.Cap, 0, ""
	if r.Impact.SeatStrong > most {
		d = apart(r.Impact.SeatStrong, most, 0)
		over = ", over the " + Fixed(most, d) + " that may be borne"
	}
	return "the push alone, to push and blow; with a strong ram to " + say.atLeastBare(r, Fixed(r.Impact.SeatStrong, d)) + over + aboutRotor(r, "; "+noRotor)
}
