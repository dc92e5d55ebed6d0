package press

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// How a finding is met with: whether it is refused for good, asks for a reason and a second
// name (see press/issue), or asks for nothing.
const (
	refused = "refused for good"
	signed  = "blocker"
	caution = "caution"
	note    = "note"
)

// leads is one way to each finding by one change of the example, how it is met with, and
// the field that it leads to: the one that was changed, or the one that stands behind it.
// By hand, from the model's table of findings and from what was changed.
var leads = []struct {
	code, met, path string
	entries         []string
}{
	{NoSetting, signed, "ram.force_tolerance", []string{"ram.force_tolerance", "40"}}, // weak and strong miss their ends
	{NoSetting, signed, "ram.setting_max", []string{"requirement.min_seating_force", "4000"}},
	{NoSetting, signed, "station.max_force", []string{"station.max_force", "150", "requirement.min_seating_force", "0", "joint.fit", "H7/h6"}}, // the least is too much
	{SettingNotFeasible, signed, "window.setting", []string{"window.setting", "20"}},
	{NoAcceptance, signed, "station.reference_uncertainty", []string{"station.reference_uncertainty", "0.2"}},
	{NoAcceptance, signed, "ram.repeatability", []string{"ram.repeatability", "0.3"}},
	{NoAcceptance, signed, "station.nest_drift", []string{"station.nest_drift", "0.3"}},
	{NeverGood, signed, "window.push_stroke", []string{"window.zone_start", "115.08", "window.push_stroke", "5"}},
	{NominalRejected, signed, "requirement.height_low", []string{"parts[0].nominal", "22.1"}}, // nothing was set by hand
	{NominalRejected, signed, "window.setting", []string{"window.setting", "20"}},             // it stalls
	{BeyondStroke, refused, "station.home", []string{"station.home", "112"}},
	{BeyondStroke, refused, "station.nest", []string{"ram.stroke", "115"}},
	{BeyondStroke, refused, "window.zone_end", []string{"window.zone_end", "150.5"}},
	{EarlyContactBlocked, refused, "motion.clearance", []string{"motion.clearance", "0.01"}},
	{EarlyContactBlocked, refused, "window.approach_end", []string{"window.approach_end", "108.5"}},
	{SpeedOverRam, refused, "motion.approach_speed", []string{"motion.approach_speed", "300"}},
	{SpeedOverRam, refused, "motion.retract_speed", []string{"motion.retract_speed", "300"}},
	{SpeedOverRam, refused, "motion.accel", []string{"motion.accel", "9000"}},
	{SpeedOverRam, refused, "motion.decel", []string{"motion.decel", "9000"}},
	{NothingStopsIt, refused, "joint.stop", []string{"joint.stop", "none"}},
	{MissingLooksGood, refused, "station.presence_check", []string{"parts[1].insert", "false"}}, // without the rest the ram stops as on a good part
	{FaultLooksGood, refused, "window.zone_start", []string{"window.zone_start", "114.9"}},      // a chip of 0.1 mm is let in
	{OverYield, refused, "joint.hub.yield", []string{"joint.hub.yield", "20"}},
	{OverYield, refused, "joint.insert.yield", []string{"joint.insert.yield", "20"}},
	{HoldingShort, signed, "joint.holding_required", []string{"joint.holding_required", "9000"}},
	{TravelNegative, signed, "parts[1]", []string{"parts[1].contact", "-2"}},
	{TouchWithTravel, signed, "joint.kind", nil}, // of a joint that is touched, see below
	{EngagementTooLong, signed, "joint.engagement", []string{"joint.engagement", "9"}},
	{OverlapWider, signed, "window.zone_start", []string{"window.zone_start", "114", "parts[0].plus", "0.3", "parts[0].minus", "0.3"}},
	{OverlapWider, caution, "window.zone_start", []string{"window.zone_start", "115.04"}}, // few heights reach there
	{EarlyContactWorstCase, caution, "window.approach_end", []string{"window.approach_end", "108.46", "targets.early_contact_ppm", "1000000"}},
	{EarlyContactWorstCase, caution, "motion.clearance", []string{"motion.clearance", "0.01", "targets.early_contact_ppm", "1000000"}},
	{SettingOffStep, caution, "window.setting", []string{"window.setting", "66.5"}},
	{GripMayVanish, caution, "joint.fit", []string{"joint.fit", "H7/k6"}},
	{PartlyEngaged, caution, "joint.engagement", []string{"joint.pilot", "1.2"}},
	{AmbiguousTable, caution, "window.zone_start", []string{"window.zone_start", "115.04"}},
	{AmbiguousTable, caution, "station.presence_check", []string{"parts[1].insert", "false"}},
	{InsertNotMarked, caution, "parts[0].insert", []string{"parts[1].insert", "false", "parts[2].insert", "false"}},
	{OverlapNarrow, caution, "station.stiffness", []string{"station.stiffness", "5000"}},
	{OverlapNarrow, caution, "ram.repeatability", []string{"window.guard_factor", "2"}},
	{ConformingShareLow, caution, "parts[0]", []string{"parts[0].minus", "0.5", "parts[0].plus", "0.5"}},
	{ConformingShareLow, caution, "requirement.height_low", []string{"parts[0].nominal", "22.1"}}, // centred they would do
	{FalseAccept, caution, "window.guard_factor", []string{"parts[0].minus", "0.5", "parts[0].plus", "0.5"}},
	{FalseAccept, caution, "window.zone_start", []string{"window.zone_start", "114", "parts[0].plus", "0.3", "parts[0].minus", "0.3"}},
	{FalseReject, caution, "window.guard_factor", []string{"window.guard_factor", "2"}},
	{FalseReject, caution, "window.push_stroke", []string{"window.zone_start", "115.12", "window.push_stroke", "7.69"}},
	{NoAcceptance, signed, "station.position_step", []string{"window.rule", "target", "station.position_step", "0.5"}},
	{NoAcceptance, signed, "window.approach_end", []string{"window.rule", "target", "window.approach_end", "116"}},
	{FalseReject, caution, "window.rule", []string{"window.rule", "target", "targets.false_reject_ppm", "0.01", "targets.false_accept_ppm", "0.01"}},
	{FalseReject, caution, "window.process_sd", []string{"window.rule", "process", "window.process_sd", "1"}},
	{TargetMissed, caution, "targets.false_reject_ppm", []string{"window.rule", "target", "targets.false_reject_ppm", "0.01", "targets.false_accept_ppm", "0.01", "station.reference_uncertainty", "0.1"}},
	{TargetMissed, caution, "targets.false_accept_ppm", []string{"window.rule", "target", "parts[0].minus", "0.5", "parts[0].plus", "0.5", "station.reference_uncertainty", "0.5", "targets.false_accept_ppm", "0.01", "targets.false_reject_ppm", "1000000"}},
	{ProcessOutside, caution, "requirement.height_low", []string{"window.rule", "process", "parts[0].nominal", "22.3"}},
	{HeatingOver, caution, "motion.hold_time", []string{"ram.setting_continuous", "5"}},
	{HeatingOver, caution, "motion.handling_time", []string{"ram.setting_continuous", "5", "motion.hold_time", "0"}},
	{ZoneTooShort, caution, "window.zone_end", []string{"window.push_stroke", "8.3", "window.zone_end", "115.083"}},
	{ImpactContact, caution, "motion.slow_speed", []string{"motion.slow_speed", "150"}},
	{ImpactSeat, caution, "motion.slow_speed", []string{"motion.slow_speed", "60"}},
	{ImpactSeat, caution, "station.max_force", []string{"station.max_force", "900"}}, // the push alone is more
	{ImpactSeat, caution, "window.setting", []string{"station.max_force", "900", "window.setting", "66"}},
	{PositionOffStep, caution, "window.approach_end", []string{"window.approach_end", "107.4001"}},
	{PositionOffStep, caution, "window.push_stroke", []string{"window.push_stroke", "7.7301"}},
	{PositionOffStep, caution, "window.zone_start", []string{"window.zone_start", "115.0801"}},
	{PositionOffStep, caution, "window.zone_end", []string{"window.zone_end", "116.0001"}},
	{TravelMayVanish, caution, "parts[2]", []string{"parts[2].minus", "9", "parts[2].plus", "9"}},
	{DeflectionUntaught, caution, "station.nest_force", nil},
	{NoForceAsked, caution, "requirement.min_seating_force", []string{"requirement.min_seating_force", "0", "joint.fit", "H7/h6"}},
	{PresenceByOtherCheck, note, "station.presence_check", []string{"parts[1].insert", "false", "station.presence_check", "light barrier"}},
	{ImpactEarly, note, "motion.approach_speed", nil},
	{ClampedHot, note, "ram.setting_continuous", nil}, // 66 % is more than 45 %
	{TakenAsPerfect, note, "motion.settle_time", nil}, // the only one that the example does not give
	{TakenAsPerfect, note, "station.nest_drift", []string{"station.nest_drift", ""}},
	{TakenAsPerfect, note, "station.reference_uncertainty", []string{"station.reference_uncertainty", ""}},
	{TakenAsPerfect, note, "ram.force_scatter", []string{"ram.force_scatter", ""}},
	{WarmUpThin, note, "station.reference_uncertainty", nil},
	{FreeTravel, note, "joint.pilot", []string{"joint.pilot", "1.2"}},
	{LooseFitUnseen, note, "joint.kind", nil},
	{BeyondStroke, refused, "sequence.steps[1]", ran(pressStep, "move to -5")},
	{SpeedOverRam, refused, "sequence.steps[1].speed", ran(pressStep, "move to 0 speed 500")},
	{SpeedOverRam, refused, "sequence.steps[1].accel", ran(pressStep, "move to 0 accel 9000")},
	{SpeedOverRam, refused, "sequence.steps[1].decel", ran(pressStep, "move to 0 decel 9000")},
	{ProbeNoFit, signed, "joint.kind", []string{"probe.use", "true"}}, // of a joint that is touched, see below
	{ProbeNotPossible, signed, "probe.setting", []string{"probe.use", "true", "parts[2].minus", "3", "parts[2].plus", "3"}},
	{ProbeNotPossible, signed, "probe.setting", []string{"probe.use", "true", "station.reference_uncertainty", "0.2"}}, // no window
	{ProbeCannotTell, refused, "probe.setting", []string{"probe.use", "true", "probe.setting", "66"}},
	{ProbeCannotTell, refused, "probe.setting", []string{"probe.use", "true", "probe.setting", "10", "joint.drag", "300"}},
	{ProbeCannotTell, refused, "probe.end", []string{"probe.use", "true", "probe.setting", "11", "probe.end", "107"}},
	{ProbeCannotTell, refused, "probe.end", []string{"probe.use", "true", "probe.setting", "11", "probe.end", "115.05"}},
	{ProbeRefusesNominal, signed, "probe.setting", []string{"probe.use", "true", "probe.setting", "60"}},
	{ProbeRefusesNominal, signed, "probe.setting", []string{"probe.use", "true", "probe.setting", "11", "probe.end", "109"}},
	{PartMetInMove, refused, "sequence.steps[0]", ran("move to 110", pressStep, goHome)},
	{HandOverImpossible, signed, "sequence.steps[0].hand_over", ran("move to 50 hand_over true", "wait time 1", pressStep, goHome)},
	{ProbeRefusesSound, caution, "probe.setting", []string{"probe.use", "true", "probe.setting", "20"}},
	{ProbeOverrun, caution, "motion.slow_speed", []string{"probe.use", "true", "motion.slow_speed", "60"}},
	{SettingOffStep, caution, "probe.setting", []string{"probe.use", "true", "probe.setting", "10.5"}},
	{PositionOffStep, caution, "probe.end", []string{"probe.use", "true", "probe.end", "114.005"}},
	{PositionOffStep, caution, "sequence.station_zone", append(ran(pressStep, goHome), "sequence.station_zone[0]", "0", "sequence.station_zone[1]", "5.001")},
	{PositionOffStep, caution, "sequence.steps[1].to", ran(pressStep, "move to 0.005")},
	{PositionOffStep, caution, "sequence.steps[1].by", ran(pressStep, "shift by -0.005", goHome)},
	{PositionOffStep, caution, "sequence.steps[1].zone", ran(pressStep, "move to 0 zone[0] 1 zone[1] 2.005")},
	{HandOverSlowed, caution, "sequence.steps[0].hand_over", ran("move to 50 hand_over true", "move to 51", pressStep, goHome)},
	{RelativeAfterPress, caution, "sequence.steps[1].by", ran(pressStep, "shift by -20", goHome)},
	{SequenceNotClosed, caution, "sequence.steps[1]", ran(pressStep, "move to 5")},
	{NotRetracted, caution, "sequence.steps[0]", ran(pressStep)},
	{LampSecondMeaning, caution, "sequence.steps[0].zone", ran("move to 60 zone[0] 40 zone[1] 50", pressStep, goHome)},
	{LampSecondMeaning, caution, "sequence.station_zone", append(ran("move to 60", pressStep, goHome), "sequence.station_zone[0]", "50", "sequence.station_zone[1]", "120")}, // it stays on into the push
	{LampSecondMeaning, caution, "probe.zone_live", append(ran("probe", pressStep, goHome), "probe.use", "true", "probe.setting", "60", "probe.zone_live", "true", "probe.end", "115.2")},
	{ZonePassedFast, caution, "sequence.steps[0].zone", ran("move to 60 zone[0] 40 zone[1] 40.5", pressStep, goHome)},
	{ZonesAlike, caution, "sequence.station_zone", append(ran(pressStep, goHome), "sequence.station_zone[0]", "115.08", "sequence.station_zone[1]", "115.36")},
	{HoldInPress, caution, "sequence.hold.step", append(ran(pressStep, goHome), "sequence.hold.step", "0", "sequence.hold.at", "110", "sequence.hold.time", "1")},
	{HoldNotMet, caution, "sequence.hold.at", append(ran(pressStep, goHome), "sequence.hold.step", "1", "sequence.hold.at", "150", "sequence.hold.time", "1")},
	{LooseFitProbed, note, "probe.setting", []string{"probe.use", "true"}},
	{PresenceByProbe, note, "probe.use", []string{"probe.use", "true", "parts[1].insert", "false"}},
	{SecondStart, note, "probe.use", []string{"probe.use", "true"}},
	{SmoothingLarge, note, "joint.smoothing_most", []string{"joint.hub.roughness_rz", "40", "joint.smoothing_most", "0.6"}},
	{SmoothingLarge, note, "joint.fit", []string{"joint.fit", "H7/h6"}}, // there is nothing to take anything from
	{PressInSpeed, note, "motion.slow_speed", nil},                      // 8 mm/s is more than 2 mm/s
}

// Steps of a sequence, each as its kind and then key and text in turn.
const (
	pressStep = "press"
	goHome    = "move to 0"
)

func ran(steps ...string) []string {
	var out []string
	for i, step := range steps {
		words := strings.Fields(step)
		out = append(out, stepPath(i, "kind"), words[0])
		for k := 1; k < len(words); k += 2 {
			out = append(out, stepPath(i, words[k]), words[k+1])
		}
	}
	return out
}

// Every code is met by a change of the example, as grave as it is, refused for good or not,
// and leads to the field behind it.
func TestEveryFindingLeadsToItsField(t *testing.T) {
	met := map[string]bool{}
	for _, c := range leads {
		p := example(t)
		if c.code == TouchWithTravel || c.code == ProbeNoFit {
			d := p.Draft()
			d.dropJoint()
			d.Set("joint.kind", "touch")
			for i := 0; i < len(c.entries); i += 2 {
				d.Set(c.entries[i], c.entries[i+1])
			}
			var faults Problems
			p, faults = d.Check()
			require.Empty(t, faults)
		} else {
			p = with(t, p, c.entries...)
		}
		var got []string
		for _, f := range Evaluate(p).Findings {
			if f.Code != c.code {
				continue
			}
			how := string(f.Severity)
			if f.Never() {
				how = refused
			}
			got = append(got, how+", "+f.Path)
		}
		assert.Contains(t, got, c.met+", "+c.path, "%s by %v", c.code, c.entries)
		met[c.code] = true
	}
	for _, r := range Rules {
		assert.True(t, met[r.Code], "%s is met by nothing", r.Code)
	}
}
