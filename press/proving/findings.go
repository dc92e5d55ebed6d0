package proving

import "ramplan/press"

// The codes of findings, in the order in which the kinds of a study are proved.
const (
	OtherRam  = "other-ram"
	OtherPlan = "other-plan"

	Drifting = "drift"
	Outlying = "outliers"

	CurveScaled        = "curve-scaled"
	CurveBent          = "curve-bent"
	ColdAndWarm        = "cold-warm"
	OddlyScattered     = "odd-scatter"
	NotRising          = "not-rising"
	NothingToAdopt     = "nothing-to-adopt"
	OtherSpeed         = "other-speed"
	SplitAsPlanned     = "split-as-planned"
	CellTakenAsPerfect = "cell-taken-as-perfect"

	OutsideCurve   = "outside-curve"
	StartupRange   = "startup-range"
	NotLinear      = "not-linear"
	StiffnessOff   = "stiffness-off"
	NestOff        = "nest-off"
	ForceFromCurve = "force-from-curve"

	SpreadOverPlan        = "spread-over-plan"
	GaugeWeak             = "gauge-weak"
	Biased                = "bias"
	RepeatabilityNotShown = "repeatability-not-shown"

	WarmUp       = "warm-up"
	StartsDiffer = "starts-differ"

	LampsDiffer    = "lamps-differ"
	MoreRejects    = "more-rejects"
	FalseAccepts   = "false-accepts"
	NotNormal      = "not-normal"
	Censored       = "censored"
	CapabilityFew  = "capability-few"
	NestCorrection = "nest-correction"

	ReadingsDiffer  = "readings-differ"
	SampleUndecided = "sample-undecided"
	SampleTooEasy   = "sample-too-easy"
)

// Codes are all codes of findings with their severity and the entry of the plan or of the
// study that each is about.
var Codes = []Code{
	{OtherRam, press.Caution, "ram"},
	{OtherPlan, press.Note, "plan_digest"},
	{Drifting, press.Caution, "rows"},
	{Outlying, press.Caution, "rows"},
	{CurveScaled, press.Caution, "ram.curve.points"},
	{CurveBent, press.Caution, "ram.curve.points"},
	{ColdAndWarm, press.Caution, "ram.force_tolerance"},
	{OddlyScattered, press.Caution, "rows"},
	{NotRising, press.Caution, "rows"},
	{NothingToAdopt, press.Caution, "rows"},
	{OtherSpeed, press.Caution, "motion.slow_speed"},
	{SplitAsPlanned, press.Note, "ram.force_tolerance"},
	{CellTakenAsPerfect, press.Note, "cell_uncertainty"},
	{OutsideCurve, press.Caution, "ram.curve.points"},
	{StartupRange, press.Caution, "rows"},
	{NotLinear, press.Caution, "rows"},
	{StiffnessOff, press.Caution, "station.stiffness"},
	{NestOff, press.Caution, "station.nest"},
	{ForceFromCurve, press.Note, "rows"},
	{SpreadOverPlan, press.Caution, "ram.repeatability"},
	{GaugeWeak, press.Caution, "ram.repeatability"},
	{Biased, press.Note, "station.nest"},
	{RepeatabilityNotShown, press.Note, "ram.repeatability"},
	{WarmUp, press.Caution, "station.reference_uncertainty"},
	{StartsDiffer, press.Note, "station.reference_uncertainty"},
	{LampsDiffer, press.Caution, "rows"},
	{MoreRejects, press.Caution, "rows"},
	{FalseAccepts, press.Caution, "rows"},
	{NotNormal, press.Caution, "parts"},
	{Censored, press.Note, "rows"},
	{CapabilityFew, press.Note, "rows"},
	{NestCorrection, press.Note, "station.nest"},
	{ReadingsDiffer, press.Caution, "station.nest"},
	{SampleUndecided, press.Note, "rows"},
	{SampleTooEasy, press.Note, "rows"},
}

// A Code of a finding.
type Code struct {
	Code     string
	Severity press.Severity
	Path     string
}

var codes = func() map[string]Code {
	m := make(map[string]Code, len(Codes))
	for _, c := range Codes {
		m[c.Code] = c
	}
	return m
}()

// finding makes a finding without its sentence.
func finding(code string) Finding {
	c, ok := codes[code]
	if !ok {
		panic("proving: no such finding: " + code)
	}
	return Finding{Severity: c.Severity, Code: code, Path: c.Path}
}
