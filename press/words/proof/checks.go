package proof

import "ramplan/press/proving"

// A check is one question that a study answers.
type check struct {
	name string
	asks string
	open string // what to do where it is open
	fail string // what to do where it fails
}

// drifted is what is done about figures that wander.
const drifted = "Find what changes while pushing, then push again."

var checksOf = map[string]map[string]check{
	proving.LoadCell: {
		proving.CheckSize:        {"Enough pushes", "Are there 3 settings, with 3 pushes at each and 10 more pushes than settings?", "Push more often at each setting.", ""},
		proving.CheckRange:       {"Range", "Do the settings lie on both sides of the plan's own, all of them on its curve?", "Push below and above the plan's setting, within its curve.", ""},
		proving.CheckCalibration: {"Calibration", "Was the load cell calibrated when it was used?", "Give the day of its calibration, or use a calibrated cell.", ""},
		proving.CheckBand:        {"Force band", "Will one further push lie in the plan's band at every setting?", "Push more often where it is open.", "Adopt the measured curve, or find out why the ram is stronger or weaker."},
		proving.CheckScatter:     {"Scatter", "Do the forces scatter no more than the plan says?", "Push more often at the same setting.", "Find out why the force scatters, or adopt what was measured."},
		proving.CheckDrift:       {"Drift", "Do the forces stay the same over the study?", drifted, ""},
		proving.CheckForce:       {"Force at the setting", "Does the plan's setting seat every part and overload none, by the measured curve?", "Push more often about the plan's setting.", "Choose another setting: the measured force leaves the plan's window."},
	},
	proving.Stiffness: {
		proving.CheckSize:      {"Enough pushes", "Are there 6 pushes at 2 levels of force, with 4 to spare?", "Push more often, at more levels of force.", ""},
		proving.CheckRange:     {"Range", "Do the forces hold the plan's own, and reach over a third of it?", "Push from well under the plan's force to just over it.", ""},
		proving.CheckLinear:    {"Straight line", "Do all pushes lie on one straight line?", "Push again above the force at which play closes.", ""},
		proving.CheckStiffness: {"Stiffness", "Does the station give way as the plan says?", "Push more often.", "Adopt the measured stiffness."},
		proving.CheckPosition:  {"Place of the nest", "Does the nest stand under the plan's force where the plan has it?", "Push more often.", "Correct the nest, and find out why it moved."},
		proving.CheckSharp:     {"Sharp enough", "Is the place of the nest known as well as the plan needs it?", "Push more often, or measure block and force better.", ""},
		proving.CheckDrift:     {"Drift", "Do the readings stay the same over the study?", drifted, ""},
	},
	proving.Master: {
		proving.CheckSize:   {"Enough pushes", "Are there 25 pushes?", "Push up to 25 times or more.", ""},
		proving.CheckRange:  {"Setting", "Does the plan's curve hold the setting of the study?", "Push at the plan's own setting.", ""},
		proving.CheckBias:   {"Place", "Does the master read where the plan predicts it?", "Push more often.", "Correct the nest, and find out why it moved."},
		proving.CheckSpread: {"Scatter", "Do the readings scatter no more than the plan says?", "Push more often.", "Find out why the readings scatter, or adopt what the station keeps."},
		proving.CheckDrift:  {"Drift", "Do the readings stay the same over the study?", drifted, ""},
	},
	proving.Restart: {
		proving.CheckSize:   {"Enough starts", "Are there 5 starts with 2 pushes each?", "Start more often, and push twice or more after each.", ""},
		proving.CheckRange:  {"Setting", "Does the plan's curve hold the setting of the study?", "Push at the plan's own setting.", ""},
		proving.CheckSpread: {"Scatter of starts", "Does a new start move the readings no more than the plan says?", "Start more often.", "Find out what a new start moves, or adopt what the station keeps."},
		proving.CheckDrift:  {"Drift", "Do the starts stay the same over the study?", drifted, ""},
	},
	proving.Trial: {
		proving.CheckSize:        {"Enough parts", "Are there 30 parts, 25 of them with arrival?", "Press more parts.", ""},
		proving.CheckLamps:       {"Lamps", "Do the lamps go with the readings?", "The plan has no window yet.", "Stop. Look whether zone, push end and reading rule are set as planned."},
		proving.CheckRejects:     {"Rejects", "Are no more parts refused than the plan predicts?", "The plan predicts no share of refused parts yet.", "Correct the nest if it is off; else look at the parts."},
		proving.CheckShift:       {"Place", "Do the readings lie where the plan predicts them?", "Press more parts.", "Correct the nest; measure parts to tell it from them."},
		proving.CheckSpread:      {"Scatter", "Do the readings scatter no more than the plan says?", "Press more parts.", "Measure parts: they, or the station, differ more than the plan says."},
		proving.CheckDrift:       {"Drift", "Do the readings stay the same over the trial, in the order pushed?", drifted, ""},
		proving.CheckFalseAccept: {"Wrong parts accepted", "Are no more wrong heights accepted than the plan predicts?", "Measure more parts, or more finely.", "Stop. Set no part free until it is known why."},
	},
	proving.Samples: {
		proving.CheckLamps:    {"Lamps", "Does each sample give the predicted lamps?", "Push samples that a right station judges alike each time.", "Stop. Set no part free until it is known why."},
		proving.CheckReadings: {"Readings", "Does each sample read where the plan predicts it?", "Write the readings down.", "Measure the samples again; then correct the nest."},
		proving.CheckLong:     {"Too tall", "Were too tall samples pushed 3 times?", "Push a too tall sample until there are 3.", ""},
		proving.CheckShort:    {"Too short", "Were too short samples pushed 3 times?", "Push a too short sample until there are 3.", ""},
		proving.CheckGood:     {"Good", "Were good samples pushed 3 times?", "Push a good sample until there are 3.", ""},
		proving.CheckEmpty:    {"Nothing in it", "Was it pushed without an insert, or on the bare nest, 3 times?", "Push the empty nest until there are 3.", ""},
	},
}

// CheckName names a check of a kind of study.
func (say Words) CheckName(kind, name string) string { return checkOf(kind, name).name }

// CheckAsks is the question that it answers.
func (say Words) CheckAsks(kind, name string) string { return checkOf(kind, name).asks }

// CheckAdvice is what to do about a check that did not pass.
func (say Words) CheckAdvice(kind string, c proving.Check) string {
	switch c.Outcome {
	case proving.Fail:
		return checkOf(kind, c.Name).fail
	case proving.Open:
		return checkOf(kind, c.Name).open
	}
	return ""
}

func checkOf(kind, name string) check {
	c, ok := checksOf[kind][name]
	if !ok {
		panic("proof: no words for the check " + name + " of " + kind)
	}
	return c
}
