package words

import (
	"math"

	"ramplan/press"
)

// Explain writes the sentence of every finding into its Message.
func (say Printer) Explain(r *press.Result) {
	for i := range r.Findings {
		r.Findings[i].Message = say.sentence(r, r.Findings[i])
	}
}

// told is a finding with what its sentence may refer to beside its figures.
type told struct {
	say Printer
	press.Finding
	r   *press.Result
	pos Positions
}

// f gives a figure of the finding; one that is not there is written as absent.
func (t *told) f(name string) float64 {
	if v, ok := t.Figures[name]; ok {
		return v
	}
	return math.NaN()
}

func (t *told) at(name string) string     { return t.pos.At(t.f(name)) }
func (t *told) length(name string) string { return t.pos.Length(t.f(name)) }

// sentences has one maker for each code.
var sentences = map[string]func(*told) string{
	press.NoSetting:             noSetting,
	press.SettingNotFeasible:    settingNotFeasible,
	press.NoAcceptance:          noAcceptance,
	press.NeverGood:             neverGood,
	press.NominalRejected:       nominalRejected,
	press.BeyondStroke:          beyondStroke,
	press.EarlyContactBlocked:   earlyContact,
	press.SpeedOverRam:          speedOverRam,
	press.NothingStopsIt:        nothingStopsIt,
	press.MissingLooksGood:      missingLooksGood,
	press.FaultLooksGood:        faultLooksGood,
	press.OverYield:             overYield,
	press.HoldingShort:          holdingShort,
	press.TravelNegative:        travelNegative,
	press.TouchWithTravel:       touchWithTravel,
	press.EngagementTooLong:     engagementTooLong,
	press.ProbeNoFit:            probeNoFit,
	press.ProbeNotPossible:      probeNotPossible,
	press.ProbeCannotTell:       probeCannotTell,
	press.ProbeRefusesNominal:   probeRefusesNominal,
	press.PartMetInMove:         partMetInMove,
	press.HandOverImpossible:    handOverImpossible,
	press.OverlapWider:          overlapWider,
	press.EarlyContactWorstCase: earlyContactWorstCase,
	press.SettingOffStep:        settingOffStep,
	press.GripMayVanish:         gripMayVanish,
	press.PartlyEngaged:         partlyEngaged,
	press.AmbiguousTable:        ambiguousTable,
	press.InsertNotMarked:       insertNotMarked,
	press.OverlapNarrow:         overlapNarrow,
	press.ConformingShareLow:    conformingShareLow,
	press.FalseAccept:           falseAccept,
	press.FalseReject:           falseReject,
	press.TargetMissed:          targetMissed,
	press.ProcessOutside:        processOutside,
	press.HeatingOver:           heatingOver,
	press.ZoneTooShort:          zoneTooShort,
	press.ImpactContact:         impactContact,
	press.ImpactSeat:            impactSeat,
	press.PositionOffStep:       positionOffStep,
	press.TravelMayVanish:       travelMayVanish,
	press.DeflectionUntaught:    deflectionUntaught,
	press.NoForceAsked:          noForceAsked,
	press.ProbeRefusesSound:     probeRefusesSound,
	press.ProbeOverrun:          probeOverrun,
	press.HandOverSlowed:        handOverSlowed,
	press.RelativeAfterPress:    relativeAfterPress,
	press.SequenceNotClosed:     sequenceNotClosed,
	press.NotRetracted:          notRetracted,
	press.LampSecondMeaning:     lampSecondMeaning,
	press.ZonePassedFast:        zonePassedFast,
	press.ZonesAlike:            zonesAlike,
	press.HoldInPress:           holdInPress,
	press.HoldNotMet:            holdNotMet,
	press.PresenceByOtherCheck:  presenceByOtherCheck,
	press.ImpactEarly:           impactEarly,
	press.ClampedHot:            clampedHot,
	press.TakenAsPerfect:        takenAsPerfect,
	press.WarmUpThin:            warmUpThin,
	press.FreeTravel:            freeTravel,
	press.LooseFitUnseen:        looseFitUnseen,
	press.LooseFitProbed:        looseFitProbed,
	press.PresenceByProbe:       presenceByProbe,
	press.SecondStart:           secondStart,
	press.SmoothingLarge:        smoothingLarge,
	press.PressInSpeed:          pressInSpeed,
}

func (say Printer) sentence(r *press.Result, f press.Finding) string {
	tell, ok := sentences[f.Code]
	if !ok {
		panic("words: no sentence for the finding " + f.Code)
	}
	return tell(&told{say: say, Finding: f, r: r, pos: say.positionsIn(r)})
}

// forces writes two forces with as many decimals as tell them apart, and what
// lies between them.
func (say Printer) forces(a, b float64) (first, second, gap string) {
	d := apart(a, b, 0)
	force := say.Units.Force
	return force.fixed(a, d, "N"), force.fixed(b, d, "N"), force.fixed(math.Abs(a-b), max(d, significant(a-b, 1, 0)), "N")
}

// over writes a figure that is over, or under, its limit so that one can see it.
func over(a, b float64, decimals int, unit string) (string, string) {
	d := apart(a, b, decimals)
	return Unit(Trimmed(a, d), unit), Unit(Trimmed(b, d), unit)
}

// shares writes two probabilities as percentages with as many decimals as tell
// them apart.
func shares(a, b float64) (string, string) {
	d := apart(100*a, 100*b, 2)
	return Unit(Trimmed(100*a, d), "%"), Unit(Trimmed(100*b, d), "%")
}
