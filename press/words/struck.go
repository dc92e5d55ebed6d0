package words

import "ramplan/press"

// notTried stands where a fault ends in the approach: nobody is sent to try that.
const notTried = "not judged by these signals: the approach strikes it"

// overStrike says how hard the approach strikes what stands in its way, where that
// is over what part and tool may bear; empty where it is not.
func overStrike(r *press.Result) string {
	if r.Impact.Early <= r.Force.Cap {
		return ""
	}
	force, most, _ := forces(r.Impact.Early, r.Force.Cap)
	return "at least " + force + ", where part and tool may bear " + most
}

// struckHow says in the rows of failures that a fault is met in the approach, and
// what follows from it.
func struckHow(r *press.Result) string {
	s := "Not judged by these signals: the approach strikes it"
	if over := overStrike(r); over != "" {
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
func SeatBlow(r *press.Result) string {
	most := r.Force.Cap
	if r.Impact.SeatStrong <= most {
		return "the push alone, to push and blow; with a strong ram to " + Fixed(r.Impact.SeatStrong, 0)
	}
	d := apart(r.Impact.SeatStrong, most, 0)
	return "the push alone, to push and blow; with a strong ram to " + Fixed(r.Impact.SeatStrong, d) + ", over the " + Fixed(most, d) + " that may be borne"
}
