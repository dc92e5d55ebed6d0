package words

import "ramplan/press"

// targetMissed speaks of targets that no window meets.
func targetMissed(t *told, f press.MissedFigures) string {
	accept, reject := t.say.TargetPPM(f.Accept), t.say.TargetPPM(f.Reject)
	s := "No window within the drawing keeps both targets, false accept " + accept + " and false reject " + reject + day(f) +
		": the one proposed comes closest, with a share " + t.say.times(f.Measure) + " its target"
	if f.ByHand {
		s = "The window that was set by hand misses its targets, false accept " + accept + " and false reject " + reject + day(f) +
			", with a share " + t.say.times(f.Measure) + " its target"
	}
	if mends := t.mends(); mends != "" {
		return s + "; " + mends + "."
	}
	return s + ": make the reading surer, narrow the parts, or allow more."
}

// day tells for which day the targets were asked.
func day(f press.MissedFigures) string {
	if f.WorstDay {
		return " on a worst day"
	}
	return ""
}

// times writes how often a figure goes into another, more than once.
func (say Printer) times(x float64) string {
	if x < 1.005 { // rounding would make it once
		return "just over"
	}
	if x >= 1000 {
		return "over 1000 times"
	}
	return say.Ratio(x) + " times"
}

// noPlace speaks of a window for targets that finds no two positions.
func noPlace(t *told, f press.NoPlaceFigures) string {
	from, to := t.pos.both(f.From, f.To)
	if a := f.ApproachEnd; a != nil {
		return "No window can be proposed: the readings that the drawing allows, " + from + " to " + to + ", leave no two position steps after the approach end at " + t.pos.At(*a) + ": end the approach earlier."
	}
	return "No window can be proposed: fewer than two multiples of the position step of " + Unit(Exact(f.Step), "mm") + " lie within the readings that the drawing allows, " + from + " to " + to + ": set a finer step, or widen the requirement."
}

// processOutside speaks of a process that lies beside the drawing.
func processOutside(t *told, f press.OutsideFigures) string {
	low, high := t.pos.both(f.Low, f.High)
	return "What the process makes, readings of " + t.pos.At(f.Reading) + " ±" + t.pos.Length(f.Reach) + ", lies beside what the drawing allows, " + low + " to " + high +
		": the window is that of the guard band; bring the mean of the parts to the middle of the requirement."
}
