package proving

// ShiftOutcome is how a shift check went that was judged as limit samples: it fails where one
// push gave other lamps, or another reading, than the plan predicts; it passes where every push
// gave the predicted ones; else nothing can be said yet. How many pushes of each role there are
// does not matter here: a shift check shows each once.
func ShiftOutcome(r *SamplesResult) Answer {
	if r == nil || len(r.Rows) == 0 {
		return Open
	}
	out := Pass
	for i := range r.Rows {
		switch PushOutcome(&r.Rows[i]) {
		case Fail:
			return Fail
		case Open:
			out = Open
		}
	}
	return out
}

// PushOutcome is how one of its pushes went: a sample that proves nothing either way does not
// stand against the station.
func PushOutcome(r *SampleRow) Answer {
	switch {
	case r.Lamps == Fail || r.Reading != nil && *r.Reading == Fail:
		return Fail
	case r.Lamps == Pass:
		return Pass
	}
	return Open
}
