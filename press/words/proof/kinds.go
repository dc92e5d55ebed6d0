package proof

import (
	"fmt"
	"time"

	"ramplan/press"
	"ramplan/press/proving"
)

// KindName names a kind of study, as a heading.
func (say Words) KindName(kind string) string {
	switch kind {
	case proving.LoadCell:
		return "Load cell"
	case proving.Stiffness:
		return "Stiffness"
	case proving.Master:
		return "Master"
	case proving.Restart:
		return "Restart"
	case proving.Trial:
		return "Trial"
	case proving.Samples:
		return "Limit samples"
	case proving.Event:
		return "Event"
	}
	return kind
}

// KindAsks is the question that a kind of study answers.
func (say Words) KindAsks(kind string) string {
	switch kind {
	case proving.LoadCell:
		return "Is the force at the tool what the curve says?"
	case proving.Stiffness:
		return "How far does the station give way, and where does the nest stand?"
	case proving.Master:
		return "Does the station read one master the same each time, and right?"
	case proving.Restart:
		return "What does a new start move?"
	case proving.Trial:
		return "Do parts as they come give the lamps and readings that the plan predicts?"
	case proving.Samples:
		return "Do limit samples and the empty nest give the predicted lamps?"
	}
	return ""
}

// HowToTake says how a study of a kind is taken, so that it can pass, at the setting of the
// plan that it is held against; nil where there is none.
func (say Words) HowToTake(kind string, r *press.Result) string {
	of, own := "", ""
	if r != nil {
		of, own = " of "+say.Setting(r.Force.Setting), " ("+say.Setting(r.Force.Setting)+")"
	}
	switch kind {
	case proving.LoadCell:
		return "Push on a calibrated load cell at the tool: 3 settings or more on both sides of the plan's own" + own + ", 3 pushes or more at each; better 7 settings with 5 pushes each."
	case proving.Stiffness:
		return "Push on a hard block of known height at 2 settings or more, 6 pushes or more in all: from well under the plan's force to at most a little over it."
	case proving.Master:
		return "Push 25 times or more on one master of known height, at the plan's setting" + of + "."
	case proving.Restart:
		return "Home the ram anew 5 times or more, and push twice or more on one master after each, at the plan's setting" + of + "."
	case proving.Trial:
		return "Press 30 parts or more as they come, in their order, with both lamps and the reading; measure their heights where you can."
	case proving.Samples:
		return "Push each limit sample, a good one and the empty nest 3 times, at the plan's setting" + of + "."
	}
	return ""
}

// EventName names what happened.
func (say Words) EventName(event string) string {
	switch event {
	case proving.RamExchanged:
		return "The ram was exchanged"
	case proving.ControllerExchanged:
		return "The controller was exchanged"
	case proving.NestExchanged:
		return "The nest was exchanged"
	case proving.ToolExchanged:
		return "The tool was exchanged"
	case proving.Moved:
		return "The station was moved"
	case proving.Crash:
		return "A crash"
	case proving.SetpointsChanged:
		return "Setpoints were changed"
	}
	return event
}

// EventEffect says what an event withdraws.
func (say Words) EventEffect(event string) string {
	switch event {
	case proving.RamExchanged, proving.ControllerExchanged, proving.Crash:
		return "Withdraws every study taken before."
	case proving.NestExchanged, proving.ToolExchanged, proving.Moved:
		return "Withdraws every study taken before but those with a load cell."
	case proving.SetpointsChanged:
		return "Withdraws trials and limit samples taken before."
	}
	return ""
}

// StateWord is the state of a kind of study, or a verdict, in a word or two.
func (say Words) StateWord(state string) string {
	switch state {
	case string(proving.Pass):
		return "passed"
	case string(proving.Fail):
		return "refuted"
	case string(proving.Open):
		return "open"
	case proving.StateMissing:
		return "missing"
	case proving.StateOtherPlan:
		return "other plan"
	case proving.StateOtherRam:
		return "other ram"
	case proving.StateWithdrawn:
		return "withdrawn"
	case proving.StateExpired:
		return "expired"
	}
	return state
}

// CheckWord is the outcome of a check in a word.
func (say Words) CheckWord(a proving.Answer) string {
	switch a {
	case proving.Pass:
		return "pass"
	case proving.Fail:
		return "fail"
	}
	return "open"
}

// NextOf says what to do about a kind of study in a state; taken is the day of the study that
// counts, where there is one, and r of the plan that studies are held against.
func (say Words) NextOf(kind, state, taken, letter string, r *press.Result) string {
	against := "the draft"
	if letter != "" {
		against = "revision " + letter
	}
	switch state {
	case string(proving.Pass):
		if until := yearAfter(taken); until != "" {
			return fmt.Sprintf("Nothing: taken on %s, it counts until %s.", dayOf(taken), until)
		}
		return "Nothing."
	case string(proving.Fail):
		return "Open it and see which check refutes the plan: mend the station or adopt what it offers, then push again."
	case string(proving.Open):
		return "Open it and see which check is open, mend that and push again."
	case proving.StateExpired:
		return fmt.Sprintf("Taken on %s, more than a year ago: push again.", dayOf(taken))
	case proving.StateWithdrawn:
		return "Something happened to the station since: push again, and give the time of day with the date if it is the same day."
	case proving.StateOtherPlan:
		if kind == proving.Samples {
			return "They were shown to another plan: show them again to " + against + "."
		}
		return "The parts were pressed by another plan: press again by " + against + "."
	case proving.StateOtherRam:
		return "It was taken with another ram: push again with the ram of " + against + "."
	}
	return say.HowToTake(kind, r)
}

// dayOf is the day of a text that begins with one.
func dayOf(taken string) string {
	if len(taken) >= len(time.DateOnly) {
		return taken[:len(time.DateOnly)]
	}
	return taken
}

// yearAfter is the last day for which a study counts; empty for no day.
func yearAfter(taken string) string {
	day, err := time.Parse(time.DateOnly, dayOf(taken))
	if err != nil {
		return ""
	}
	return day.AddDate(0, 0, 365).Format(time.DateOnly)
}

// NotBegun is the state of a study that is not needed and not there.
func (say Words) NotBegun() string { return "not begun" }

// PushCautions are said where pushes are taken; those of the kinds that push on something that
// is put into the nest also say that it has to be held. Common practice, no source.
func (say Words) PushCautions(kinds ...string) []string {
	out := []string{"Hands out of the work space: the ram pushes up to the greatest force of the setting that is entered, and crushes at every setting."}
	for _, kind := range kinds {
		switch kind {
		case proving.LoadCell, proving.Stiffness, proving.Master, proving.Restart:
			return append(out, "A load cell, a block or a master is centred and held so that it cannot kick out.")
		}
	}
	return out
}

// SetUpPage leads to the printed page by which a station is set up.
func (say Words) SetUpPage() string { return "Set-up and proving, to print" }
