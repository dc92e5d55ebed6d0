package model

import "slices"

// A Rule is what stands fixed for every finding of a code, whatever the plan.
type Rule struct {
	Code     string
	Severity Severity
	Milder   Severity // the other one that it can have; empty for most
	Never    bool     // a plan with it is never issued, whoever signs: it breaks, jams or deceives
	Gravity  int      // of a blocker: the place among the causes in a headline, 1 the gravest
	Paths    []string // the fields to which it can lead; [] stands for a row
}

// Fields by which the readings that are accepted are moved, and from which the
// uncertainty of a reading comes.
var (
	zoneFields     = []string{"window.zone_start", "window.zone_end", "window.push_stroke", "window.approach_end", "window.setting", "requirement.height_low"}
	doubtFields    = []string{"requirement.height_high", "ram.repeatability", "station.nest_drift", "station.stiffness", "station.reference_uncertainty", "parts[]"}
	earlyFields    = []string{"window.approach_end", "motion.clearance"}
	stepFields     = []string{"sequence.steps[]"}
	handOverFields = []string{"sequence.steps[].hand_over"}
	lampFields     = []string{"sequence.steps[].zone", "sequence.steps[]", "sequence.station_zone", "probe.zone_live", "motion.slow_speed"}

	partFields = []string{"parts", "parts[]"}
)

func either(of ...[]string) []string { return slices.Concat(of...) }

// Rules are all codes of findings, in the order in which a result lists them.
var Rules = []Rule{
	{Code: NoSetting, Severity: Blocker, Gravity: 2, Paths: []string{"ram.force_tolerance", "station.max_force", "ram.setting_max"}},
	{Code: SettingNotFeasible, Severity: Blocker, Gravity: 3, Paths: []string{"window.setting"}},
	{Code: NoAcceptance, Severity: Blocker, Gravity: 7, Paths: either(doubtFields, earlyFields, []string{"station.position_step"})},
	{Code: NeverGood, Severity: Blocker, Gravity: 8, Paths: zoneFields},
	{Code: NominalRejected, Severity: Blocker, Gravity: 9, Paths: zoneFields},
	{Code: BeyondStroke, Severity: Blocker, Never: true, Gravity: 16, Paths: []string{"station.home", "station.nest", "window.approach_end", "window.push_stroke", "window.zone_end", "sequence.steps[]"}},
	{Code: EarlyContactBlocked, Severity: Blocker, Never: true, Gravity: 14, Paths: earlyFields},
	{Code: SpeedOverRam, Severity: Blocker, Never: true, Gravity: 17, Paths: []string{"motion.approach_speed", "motion.retract_speed", "motion.accel", "motion.decel", "sequence.steps[].speed", "sequence.steps[].accel", "sequence.steps[].decel"}},
	{Code: NothingStopsIt, Severity: Blocker, Never: true, Gravity: 1, Paths: []string{"joint.stop"}},
	{Code: MissingLooksGood, Severity: Blocker, Never: true, Gravity: 10, Paths: []string{"station.presence_check"}},
	{Code: FaultLooksGood, Severity: Blocker, Never: true, Gravity: 11, Paths: zoneFields},
	{Code: OverYield, Severity: Blocker, Never: true, Gravity: 18, Paths: []string{"joint.hub.yield", "joint.insert.yield"}},
	{Code: HoldingShort, Severity: Blocker, Gravity: 23, Paths: []string{"joint.holding_required"}},
	{Code: TravelNegative, Severity: Blocker, Gravity: 4, Paths: partFields},
	{Code: TouchWithTravel, Severity: Blocker, Gravity: 5, Paths: []string{"joint.kind"}},
	{Code: EngagementTooLong, Severity: Blocker, Gravity: 6, Paths: []string{"joint.engagement"}},
	{Code: ProbeNoFit, Severity: Blocker, Gravity: 19, Paths: []string{"joint.kind"}},
	{Code: ProbeNotPossible, Severity: Blocker, Gravity: 20, Paths: []string{"probe.setting"}},
	{Code: ProbeCannotTell, Severity: Blocker, Never: true, Gravity: 12, Paths: []string{"probe.setting", "probe.end"}},
	{Code: ProbeRefusesNominal, Severity: Blocker, Gravity: 21, Paths: []string{"probe.setting"}},
	{Code: PartMetInMove, Severity: Blocker, Never: true, Gravity: 15, Paths: stepFields},
	{Code: HandOverImpossible, Severity: Blocker, Gravity: 22, Paths: handOverFields},
	{Code: OverlapWider, Severity: Blocker, Milder: Caution, Gravity: 13, Paths: zoneFields},
	{Code: EarlyContactWorstCase, Severity: Caution, Paths: earlyFields},
	{Code: SettingOffStep, Severity: Caution, Paths: []string{"window.setting", "probe.setting"}},
	{Code: GripMayVanish, Severity: Caution, Paths: []string{"joint.fit"}},
	{Code: PartlyEngaged, Severity: Caution, Paths: []string{"joint.engagement"}},
	{Code: AmbiguousTable, Severity: Caution, Paths: either(zoneFields, []string{"station.presence_check"})},
	{Code: InsertNotMarked, Severity: Caution, Paths: []string{"parts[].insert"}},
	{Code: OverlapNarrow, Severity: Caution, Paths: either(zoneFields, doubtFields)},
	{Code: ConformingShareLow, Severity: Caution, Paths: either(partFields, []string{"requirement.height_low"})},
	{Code: FalseAccept, Severity: Caution, Paths: either([]string{guardField, ruleField, processField}, zoneFields)},
	{Code: FalseReject, Severity: Caution, Paths: either([]string{guardField, ruleField, processField}, zoneFields, doubtFields)},
	{Code: TargetMissed, Severity: Caution, Paths: either([]string{"targets.false_accept_ppm", "targets.false_reject_ppm"}, doubtFields)},
	{Code: ProcessOutside, Severity: Caution, Paths: either(partFields, []string{"requirement.height_low"})},
	{Code: HeatingOver, Severity: Caution, Paths: []string{"motion.hold_time", "motion.handling_time"}},
	{Code: ZoneTooShort, Severity: Caution, Paths: []string{"window.zone_end"}},
	{Code: ImpactContact, Severity: Caution, Paths: []string{"motion.slow_speed"}},
	{Code: ImpactSeat, Severity: Caution, Paths: []string{"window.setting", "station.max_force", "motion.slow_speed"}},
	{Code: PositionOffStep, Severity: Caution, Paths: []string{"window.approach_end", "window.push_stroke", "window.zone_start", "window.zone_end",
		"probe.end", "sequence.station_zone", "sequence.steps[].to", "sequence.steps[].by", "sequence.steps[].zone"}},
	{Code: TravelMayVanish, Severity: Caution, Paths: partFields},
	{Code: DeflectionUntaught, Severity: Caution, Paths: []string{"station.nest_force"}},
	{Code: NoForceAsked, Severity: Caution, Paths: []string{"requirement.min_seating_force"}},
	{Code: ProbeRefusesSound, Severity: Caution, Paths: []string{"probe.setting"}},
	{Code: ProbeOverrun, Severity: Caution, Paths: []string{"motion.slow_speed"}},
	{Code: HandOverSlowed, Severity: Caution, Paths: handOverFields},
	{Code: RelativeAfterPress, Severity: Caution, Paths: []string{"sequence.steps[].by"}},
	{Code: SequenceNotClosed, Severity: Caution, Paths: stepFields},
	{Code: NotRetracted, Severity: Caution, Paths: stepFields},
	{Code: LampSecondMeaning, Severity: Caution, Paths: lampFields},
	{Code: ZonePassedFast, Severity: Caution, Paths: lampFields},
	{Code: ZonesAlike, Severity: Caution, Paths: []string{"sequence.station_zone"}},
	{Code: HoldInPress, Severity: Caution, Paths: []string{"sequence.hold.step"}},
	{Code: HoldNotMet, Severity: Caution, Paths: []string{"sequence.hold.at"}},
	{Code: PresenceByOtherCheck, Severity: Note, Paths: []string{"station.presence_check"}},
	{Code: ImpactEarly, Severity: Note, Paths: []string{"motion.approach_speed"}},
	{Code: ClampedHot, Severity: Note, Paths: []string{"ram.setting_continuous"}},
	{Code: TakenAsPerfect, Severity: Note, Paths: Perfect},
	{Code: WarmUpThin, Severity: Note, Paths: []string{"station.reference_uncertainty"}},
	{Code: FreeTravel, Severity: Note, Paths: []string{"joint.pilot"}},
	{Code: LooseFitUnseen, Severity: Note, Paths: []string{"joint.kind"}},
	{Code: LooseFitProbed, Severity: Note, Paths: []string{"probe.setting"}},
	{Code: PresenceByProbe, Severity: Note, Paths: []string{"probe.use"}},
	{Code: SecondStart, Severity: Note, Paths: []string{"probe.use"}},
	{Code: SmoothingLarge, Severity: Note, Paths: []string{"joint.smoothing_most", "joint.fit"}},
	{Code: PressInSpeed, Severity: Note, Paths: []string{"motion.slow_speed"}},
}

// RuleOf gives the rule of a code.
func RuleOf(code string) (Rule, bool) {
	i := slices.IndexFunc(Rules, func(r Rule) bool { return r.Code == code })
	if i < 0 {
		return Rule{}, false
	}
	return Rules[i], true
}

// Never tells whether a plan with this finding is never issued, whoever signs.
func (f Finding) Never() bool {
	r, _ := RuleOf(f.Code)
	return r.Never && f.Severity == Blocker
}
