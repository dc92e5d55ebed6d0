package words

// targetMissed speaks of targets that no window meets.
func targetMissed(t *told) string {
	accept, reject := t.say.TargetPPM(t.f("accept")), t.say.TargetPPM(t.f("reject"))
	s := "No window within the drawing keeps both targets, false accept " + accept + " and false reject " + reject + day(t) +
		": the one proposed comes closest, with a share " + t.say.times(t.f("measure")) + " its target"
	if t.f("by_hand") == 1 {
		s = "The window that was set by hand misses its targets, false accept " + accept + " and false reject " + reject + day(t) +
			", with a share " + t.say.times(t.f("measure")) + " its target"
	}
	if mends := t.mends(); mends != "" {
		return s + "; " + mends + "."
	}
	return s + ": make the reading surer, narrow the parts, or allow more."
}

// day tells for which day the targets were asked.
func day(t *told) string {
	if t.f("worst_day") == 1 {
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
func noPlace(t *told) string {
	from, to := t.pos.both(t.f("from"), t.f("to"))
	if a, late := t.Figures["approach_end"]; late {
		return "No window can be proposed: the readings that the drawing allows, " + from + " to " + to + ", leave no two position steps after the approach end at " + t.pos.At(a) + ": end the approach earlier."
	}
	return "No window can be proposed: fewer than two multiples of the position step of " + Unit(Exact(t.f("step")), "mm") + " lie within the readings that the drawing allows, " + from + " to " + to + ": set a finer step, or widen the requirement."
}

// processOutside speaks of a process that lies beside the drawing.
func processOutside(t *told) string {
	low, high := t.pos.both(t.f("low"), t.f("high"))
	return "What the process makes, readings of " + t.at("reading") + " ±" + t.length("reach") + ", lies beside what the drawing allows, " + low + " to " + high +
		": the window is that of the guard band; bring the mean of the parts to the middle of the requirement."
}
