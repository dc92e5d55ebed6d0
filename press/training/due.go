package training

import "slices"

// A Demand is what people must have passed at a station.
type Demand struct {
	Exam   string   // whose
	Elder  bool     // it is asked of who took the one exam of older programs, too
	Counts []string // digests of the states of the plan that count
}

// Due lists who has to take an exam again, of records of one plan that stand newest
// first: who has not passed it on a state that counts since the last time that it was
// passed, and who failed the last one on such a state. Of each there is the record that
// says so. A record that was typed in from a code takes nobody off the list: nobody watched
// it. A pass of the one exam of older programs, which asked everything, is a pass of
// each of those that there are now. An exam that is not finished takes no pass away, and
// hides none that was judged.
func Due(all []Record, d Demand) []Record {
	type person struct{ newest, passed, here *Record }
	people := map[string]*person{}
	var order []*person
	for i := range all {
		t := &all[i]
		if t.Damaged || t.Exam != d.Exam && t.Exam != "" {
			continue
		}
		x := people[PersonKey(t.Who)]
		if x == nil {
			x = &person{}
			people[PersonKey(t.Who)] = x
			order = append(order, x)
		}
		if (x.newest == nil || x.newest.Unfinished && !t.Unfinished) && (t.Exam == d.Exam || d.Elder) {
			x.newest = t
		}
		if t.TypedIn() != "" {
			continue
		}
		if x.passed == nil && t.Passed {
			x.passed = t
		}
		if x.here == nil && !t.Unfinished && slices.Contains(d.Counts, t.Digest) {
			x.here = t
		}
	}
	var out []Record
	for _, x := range order {
		switch {
		case x.newest == nil: // never asked for it
		case x.here != nil && !x.here.Passed:
			out = append(out, *x.here)
		case x.passed == nil:
			out = append(out, *x.newest)
		case !slices.Contains(d.Counts, x.passed.Digest):
			out = append(out, *x.passed)
		}
	}
	return out
}

// PassedOnce tells whether a person has passed an exam of a plan before, on whatever
// state: who has not is trained for the first time, not again.
func PassedOnce(all []Record, who, exam string) bool {
	return slices.ContainsFunc(all, func(t Record) bool {
		return t.Passed && !t.Damaged && t.TypedIn() == "" && (t.Exam == exam || t.Exam == "") && PersonKey(t.Who) == PersonKey(who)
	})
}
