package press

import "ramplan/press/model"

// What the model reads and computes is named here as the rest of the program says
// it: package model holds its meaning.

// The parts of a plan that the model computes with.
type (
	Ram         = model.Ram
	Curve       = model.Curve
	Station     = model.Station
	Part        = model.Part
	Joint       = model.Joint
	Hub         = model.Hub
	Insert      = model.Insert
	Requirement = model.Requirement
	Motion      = model.Motion
	Window      = model.Window
	Faults      = model.Faults
	OtherFault  = model.OtherFault
	Targets     = model.Targets
	Probing     = model.Probing
	Sequence    = model.Sequence
	Hold        = model.Hold
	Step        = model.Step
)

// An Outcome and its parts.
type (
	Outcome      = model.Outcome
	Severity     = model.Severity
	Finding      = model.Finding
	Height       = model.Height
	Stack        = model.Stack
	Triple       = model.Triple
	JointFigures = model.JointFigures
	Pair         = model.Pair
	Force        = model.Force
	Probe        = model.Probe
	Travel       = model.Travel
	Readings     = model.Readings
	Segment      = model.Segment
	Verdict      = model.Verdict
	PushEnd      = model.PushEnd
	Table        = model.Table
	Risk         = model.Risk
	Cycle        = model.Cycle
	Impact       = model.Impact
	Heating      = model.Heating
	FaultRow     = model.FaultRow
	Samples      = model.Samples
	Rule         = model.Rule
	Phase        = model.Phase
	Course       = model.Course
	Frame        = model.Frame
	Traces       = model.Traces
	Band         = model.Band
	Moment       = model.Moment
	Stage        = model.Stage
	Chances      = model.Chances
	Case         = model.Case
	Picture      = model.Picture
	NestPush     = model.NestPush
	SampleRange  = model.SampleRange
	SampleRanges = model.SampleRanges
	Signals      = model.Signals
	Caught       = model.Caught
	Detection    = model.Detection
	ProbeRow     = model.ProbeRow
	SequenceRun  = model.SequenceRun
	StepRun      = model.StepRun
	RunTrace     = model.RunTrace
	Instant      = model.Instant
	RunSignals   = model.RunSignals
	Changes      = model.Changes
	HoldTrace    = model.HoldTrace
	Lit          = model.Lit
	Origins      = model.Origins
	Target       = model.Target
	TargetChange = model.TargetChange
	FieldValue   = model.FieldValue
	RuleWindow   = model.RuleWindow
	Kept         = model.Kept
	WorstDay     = model.WorstDay
	Shares       = model.Shares
	WorstShares  = model.WorstShares
	DayTerm      = model.DayTerm
	Wear         = model.Wear
)

// Rules by which zone start and push end are proposed.
const (
	ByGuard   = model.ByGuard
	ByTarget  = model.ByTarget
	ByProcess = model.ByProcess
)

// What the setting is proposed for.
const (
	ForForce  = model.ForForce
	ForTarget = model.ForTarget
)

// On which day the targets are to be met.
const (
	OnAverage  = model.OnAverage
	OnWorstDay = model.OnWorstDay
)

// By what a figure of the window was found beside the rules.
const (
	ByHand      = model.ByHand
	ByClearance = model.ByClearance
	ByMargin    = model.ByMargin
)

// Which target binds.
const (
	BindsAccept = model.BindsAccept
	BindsReject = model.BindsReject
	BindBoth    = model.BindBoth
)

// Changes that are no single field.
const (
	ChangeMean        = model.ChangeMean
	ChangeSpread      = model.ChangeSpread
	ChangeRequirement = model.ChangeRequirement
)

// Toward which side the readings of a worst day are off.
const (
	TowardDeeper    = model.TowardDeeper
	TowardShallower = model.TowardShallower
)

// RefusedByProbe is the verdict on what the probe does not let through.
const RefusedByProbe = model.RefusedByProbe

// Kinds of steps.
const (
	StepMove  = model.StepMove
	StepShift = model.StepShift
	StepWait  = model.StepWait
	StepProbe = model.StepProbe
	StepPress = model.StepPress
)

// What a shift counts from, and what the hold input does to a step.
const (
	FromActual = model.FromActual
	FromTarget = model.FromTarget
	GoOn       = model.GoOn
	Cancel     = model.Cancel
)

// Pressing directions.
const (
	Down  = model.Down
	Up    = model.Up
	Level = model.Level
)

// What the figures of a curve hold.
const (
	MeasuredDrive = model.MeasuredDrive
	MeasuredTool  = model.MeasuredTool
)

// Shapes of a row's distribution.
const (
	Uniform    = model.Uniform
	Triangular = model.Triangular
	Normal     = model.Normal
)

// Kinds of joint.
const (
	Touch        = model.Touch
	Measured     = model.Measured
	Interference = model.Interference
)

// What ends the press-in.
const (
	Shoulder = model.Shoulder
	NoStop   = model.NoStop
)

// What is seen of a row of the fault catalogue.
const (
	LooksSound      = model.LooksSound
	LooksEmpty      = model.LooksEmpty
	LooksDouble     = model.LooksDouble
	LooksSeated     = model.LooksSeated
	LooksOnChip     = model.LooksOnChip
	LooksLoose      = model.LooksLoose
	LooksTight      = model.LooksTight
	LooksOffSeat    = model.LooksOffSeat
	LooksOnWornNest = model.LooksOnWornNest
)

// Severities, gravest first.
const (
	Blocker = model.Blocker
	Caution = model.Caution
	Note    = model.Note
)

// The drawing's words for a part, and the outcome for no insert.
const (
	Long    = model.Long
	Good    = model.Good
	Short   = model.Short
	Missing = model.Missing
)

// EarlyContact and FaultWord are the verdicts beside the words of the table.
const (
	EarlyContact = model.EarlyContact
	FaultWord    = model.FaultWord
)

// Codes of findings, in the order in which a result lists them.
const (
	NoSetting             = model.NoSetting
	SettingNotFeasible    = model.SettingNotFeasible
	NoAcceptance          = model.NoAcceptance
	NeverGood             = model.NeverGood
	NominalRejected       = model.NominalRejected
	BeyondStroke          = model.BeyondStroke
	EarlyContactBlocked   = model.EarlyContactBlocked
	SpeedOverRam          = model.SpeedOverRam
	NothingStopsIt        = model.NothingStopsIt
	MissingLooksGood      = model.MissingLooksGood
	FaultLooksGood        = model.FaultLooksGood
	OverYield             = model.OverYield
	HoldingShort          = model.HoldingShort
	TravelNegative        = model.TravelNegative
	TouchWithTravel       = model.TouchWithTravel
	EngagementTooLong     = model.EngagementTooLong
	ProbeNoFit            = model.ProbeNoFit
	ProbeNotPossible      = model.ProbeNotPossible
	ProbeCannotTell       = model.ProbeCannotTell
	ProbeRefusesNominal   = model.ProbeRefusesNominal
	PartMetInMove         = model.PartMetInMove
	HandOverImpossible    = model.HandOverImpossible
	OverlapWider          = model.OverlapWider
	EarlyContactWorstCase = model.EarlyContactWorstCase
	SettingOffStep        = model.SettingOffStep
	GripMayVanish         = model.GripMayVanish
	PartlyEngaged         = model.PartlyEngaged
	AmbiguousTable        = model.AmbiguousTable
	InsertNotMarked       = model.InsertNotMarked
	OverlapNarrow         = model.OverlapNarrow
	ConformingShareLow    = model.ConformingShareLow
	FalseAccept           = model.FalseAccept
	FalseReject           = model.FalseReject
	TargetMissed          = model.TargetMissed
	ProcessOutside        = model.ProcessOutside
	HeatingOver           = model.HeatingOver
	ZoneTooShort          = model.ZoneTooShort
	ImpactContact         = model.ImpactContact
	ImpactSeat            = model.ImpactSeat
	PositionOffStep       = model.PositionOffStep
	TravelMayVanish       = model.TravelMayVanish
	DeflectionUntaught    = model.DeflectionUntaught
	NoForceAsked          = model.NoForceAsked
	ProbeRefusesSound     = model.ProbeRefusesSound
	ProbeOverrun          = model.ProbeOverrun
	HandOverSlowed        = model.HandOverSlowed
	RelativeAfterPress    = model.RelativeAfterPress
	SequenceNotClosed     = model.SequenceNotClosed
	NotRetracted          = model.NotRetracted
	LampSecondMeaning     = model.LampSecondMeaning
	ZonePassedFast        = model.ZonePassedFast
	ZonesAlike            = model.ZonesAlike
	HoldInPress           = model.HoldInPress
	HoldNotMet            = model.HoldNotMet
	PresenceByOtherCheck  = model.PresenceByOtherCheck
	ImpactEarly           = model.ImpactEarly
	ClampedHot            = model.ClampedHot
	TakenAsPerfect        = model.TakenAsPerfect
	WarmUpThin            = model.WarmUpThin
	FreeTravel            = model.FreeTravel
	LooseFitUnseen        = model.LooseFitUnseen
	LooseFitProbed        = model.LooseFitProbed
	PresenceByProbe       = model.PresenceByProbe
	SecondStart           = model.SecondStart
	SmoothingLarge        = model.SmoothingLarge
	PressInSpeed          = model.PressInSpeed
)

// Names of the rows of the fault catalogue, in their order. The user's own rows
// stand between RowGap and RowSettingLow under their own names.
const (
	RowNominal         = model.RowNominal
	RowTallest         = model.RowTallest
	RowShortest        = model.RowShortest
	RowLong            = model.RowLong
	RowShort           = model.RowShort
	RowMissing         = model.RowMissing
	RowTwoInserts      = model.RowTwoInserts
	RowAlreadyPressed  = model.RowAlreadyPressed
	RowTight           = model.RowTight
	RowLoose           = model.RowLoose
	RowChip            = model.RowChip
	RowGap             = model.RowGap
	RowSettingLow      = model.RowSettingLow
	RowSettingHigh     = model.RowSettingHigh
	RowNestWorn        = model.RowNestWorn
	RowArrivalStuckOn  = model.RowArrivalStuckOn
	RowArrivalStuckOff = model.RowArrivalStuckOff
	RowZoneStuckOn     = model.RowZoneStuckOn
	RowZoneStuckOff    = model.RowZoneStuckOff
)

// The phases of a cycle, in their order. A cycle that meets its part in the
// approach ends with Struck.
const (
	PhaseApproach = model.PhaseApproach
	PhaseSlow     = model.PhaseSlow
	PhasePress    = model.PhasePress
	PhaseSettle   = model.PhaseSettle
	PhaseConfirm  = model.PhaseConfirm
	PhaseRead     = model.PhaseRead
	PhaseRetract  = model.PhaseRetract
	PhaseHome     = model.PhaseHome
	PhaseStruck   = model.PhaseStruck
)

// Rules are all codes of findings, in the order in which a result lists them.
var Rules = model.Rules

// Cases are the rows of the fault catalogue, in their order.
var Cases = model.Cases

// RuleOf gives the rule of a code.
func RuleOf(code string) (Rule, bool) { return model.RuleOf(code) }

// SteelExpansion is a common expansion of plain steel, 1/K.
const SteelExpansion = model.SteelExpansion

// Growth is by how much a length grows when it warms up, mm.
func Growth(length, change, expansion float64) float64 {
	return model.Growth(length, change, expansion)
}
