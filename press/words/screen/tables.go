package screen

import "ramplan/press/words"

func (say Words) PreparedBy() string {
	return "Prepared by"
}

func (say Words) PreparedByHelp() string {
	return "Who made the plan."
}

func (say Words) CheckedBy() string {
	return "Checked by"
}

func (say Words) CheckedByHelp() string {
	return "Who went through its figures."
}

func (say Words) ApprovedBy() string {
	return "Approved by"
}

func (say Words) ApprovedByHelp() string {
	return "Who lets it be used."
}

func (say Words) Reason() string {
	return "Reason for the change"
}

func (say Words) ReasonHelp() string {
	return "What is new, and why."
}

func (say Words) DespiteBlockers() string {
	return "Why it is issued with blockers"
}

func (say Words) DespiteBlockersHelp() string {
	return "Printed on the sheet."
}

func (say Words) SecondName() string {
	return "Second name"
}

func (say Words) SecondNameHelp() string {
	return "Who else stands for that; not who approved it."
}

func (say Words) DrillConcerned() string {
	return "The change concerns it: everybody is due again."
}

func (say Words) DrillNotConcerned() string {
	return "The change does not concern it: who passed on the revision before stays trained."
}

func (say Words) NameOnTheShelf() string {
	return "Name on the shelf"
}

func (say Words) NameOnTheShelfHelp() string {
	return "Each ram has a name of its own."
}

func (say Words) Source() string {
	return "Source"
}

func (say Words) SourceHelp() string {
	return "Whose figures they are: a load cell of your own, a data sheet."
}

func (say Words) MeasuredOn() string {
	return "Measured on"
}

func (say Words) MeasuredOnHelp() string {
	return "A date such as 2026-03-02; empty when nothing was measured."
}

func (say Words) HowMeasured() string {
	return "How measured"
}

func (say Words) HowMeasuredHelp() string {
	return "With what, how often, at which speed and temperature."
}

func (say Words) Notes() string {
	return "Notes"
}

func (say Words) NotesHelp() string {
	return "What the next one should know of it."
}

func (say Words) LevelLamps() string {
	return "What the technician's exam asks: what the lamps mean, what is to be done, and hands."
}

func (say Words) LevelPredict() string {
	return "And the part: what will the lamps show?"
}

func (say Words) LevelFaults() string {
	return "And faults, what the lamps cannot find, and what to check first."
}

func (say Words) LevelAll() string {
	return "Everything that the two exams ask: also parts by their height alone, and zones to be set."
}

func (say Words) ReadingTheLamps() string {
	return "Reading the lamps"
}

func (say Words) WhatToDo() string {
	return "What to do"
}

func (say Words) PredictingTheLamps() string {
	return "Predicting the lamps"
}

func (say Words) WhatToCheckFirst() string {
	return "What to check first"
}

func (say Words) Unfound() string {
	return "What the lamps do not find"
}

func (say Words) SettingAZone() string {
	return "Setting a zone"
}

func (say Words) Unsafe() string {
	return "What no lamp makes safe"
}

func (say Words) NoZone() string {
	return "This cannot be read as the two ends of a zone: type two positions in mm, such as 115.08."
}

func (say Words) OldAnswer() string {
	return "This answer comes from a page of another version of the program and cannot be told any more: please choose again."
}

func (say Words) HoldLost() string {
	return "The hold case was in this step: choose another step for it, or take its figures away."
}

func (say Words) HandheldSource() string {
	return "For practice: whoever can read the source of this file can read the answers, so an exam that counts is taken at the bench."
}

func (say Words) Curve() string {
	return "Curve"
}

func (say Words) Deviations() string {
	return "Deviations, in place of a fit code"
}

func (say Words) Friction() string {
	return "Friction"
}

func (say Words) Hub() string {
	return "Hub"
}

func (say Words) Insert() string {
	return "Insert"
}

func (say Words) ServiceTemperature() string {
	return "Service temperature, change from room temperature"
}

func (say Words) Unticked() string {
	return "not ticked"
}

func (say Words) KnownAfter() string {
	return "Known after"
}

func (say Words) DecisionStrip() string {
	return "Decision strip"
}

func (say Words) ForceWindow() string {
	return "Force window"
}

func (say Words) PressInForce() string {
	return "Press-in force"
}

func (say Words) Cycle() string {
	return "Cycle"
}

func (say Words) Run() string {
	return "Run"
}

func (say Words) Probe() string {
	return "Probe"
}

// Shift labels the drawing of the risks of a mean that is off.
func (say Words) Shift() string { return "Risks of a mean that is off" }

// Spread labels that of the risks of parts that vary more.
func (say Words) Spread() string { return "Risks of wider parts" }

// Wear labels that of the risks of a worn nest.
func (say Words) Wear() string { return "Risks of a worn nest" }

func (say Words) PlainCycle() string {
	return "Plain cycle"
}

func (say Words) PictureOnTheWay() string {
	return "Picture on the way"
}

func (say Words) StackShakenOn() string {
	return "Stack shaken on"
}

func (say Words) TwoSpeeds() string {
	return "Two speeds"
}

func (say Words) ToThePicture() string {
	return "to the picture"
}

// OverThePart says where a template placed what is done over the part.
func (say Words) OverThePart(mm float64, at string) string {
	return "What is done over the part is placed " + words.Unit(words.Exact(mm), "mm") + " before the first contact of the nominal part, at " + words.Unit(at, "mm") +
		". It stays there when the parts change: enter the place of your station."
}

// OverThePartOpen says that the planner is to place it.
func (say Words) OverThePartOpen() string {
	return "Where it is done over the part is left open: enter the positions of your station."
}

// StartFrom stands before the buttons under the steps: of templates, or where there are
// steps of what they lack of the probe.
func (say Words) StartFrom(filled bool) string {
	if filled {
		return "Steps and probe do not go together"
	}
	return "Start from"
}

// ProbeStepIn and ProbeStepOut are buttons under the steps.
func (say Words) ProbeStepIn() string { return "Put the probe before the press" }

// ProbeStepOut is the other one.
func (say Words) ProbeStepOut() string { return "Take the probe's step out" }

func (say Words) ClearOfThePart() string {
	return "clear of the part"
}

func (say Words) ShakeTheStackOn() string {
	return "shake the stack on"
}

func (say Words) OffThePartGently() string {
	return "off the part, gently"
}

// HandheldHonest says what the file is, and what not.
func (say Words) HandheldHonest() []string {
	return []string{
		"Everything is inside this file: it needs no network, and it asks and tells nobody anything. What is answered is judged here and forgotten when the page is closed.",
		"It shows one state of one plan. Before it is used at the station, compare its revision and digest with the sheet there.",
	}
}

// CodeNotes say what a record code is worth.
func (say Words) CodeNotes() []string {
	return []string{
		"Type this code in on the plan’s records page, at the computer that serves the bench: it becomes a record marked as typed in from a code, not watched by the server.",
		"The check figure in the code protects against typing mistakes only. It proves neither who answered nor that the answers were not looked up.",
	}
}
