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

// says makes a sentence of figures of one type: those that the model gives the code.
func says[F any](tell func(*told, F) string) func(*told) string {
	return func(t *told) string { return tell(t, t.Figures.(F)) }
}

// sentences has one maker for each code.
var sentences = map[string]func(*told) string{
	press.NoSetting:             says(noSetting),
	press.SettingNotFeasible:    says(settingNotFeasible),
	press.NoAcceptance:          noAcceptance,
	press.NeverGood:             says(neverGood),
	press.NominalRejected:       says(nominalRejected),
	press.BeyondStroke:          says(beyondStroke),
	press.EarlyContactBlocked:   says(earlyContact),
	press.SpeedOverRam:          says(speedOverRam),
	press.NothingStopsIt:        nothingStopsIt,
	press.MissingLooksGood:      says(missingLooksGood),
	press.FaultLooksGood:        says(faultLooksGood),
	press.OverYield:             says(overYield),
	press.HoldingShort:          says(holdingShort),
	press.TravelNegative:        says(travelNegative),
	press.TouchWithTravel:       says(touchWithTravel),
	press.EngagementTooLong:     says(engagementTooLong),
	press.ProbeNoFit:            probeNoFit,
	press.ProbeNotPossible:      probeNotPossible,
	press.ProbeCannotTell:       says(probeCannotTell),
	press.ProbeRefusesNominal:   says(probeRefusesNominal),
	press.PartMetInMove:         says(partMetInMove),
	press.HandOverImpossible:    handOverImpossible,
	press.OverlapWider:          says(overlapWider),
	press.EarlyContactWorstCase: says(earlyContactWorstCase),
	press.SettingOffStep:        says(settingOffStep),
	press.GripMayVanish:         says(gripMayVanish),
	press.PartlyEngaged:         says(partlyEngaged),
	press.AmbiguousTable:        says(ambiguousTable),
	press.InsertNotMarked:       insertNotMarked,
	press.OverlapNarrow:         says(overlapNarrow),
	press.ConformingShareLow:    says(conformingShareLow),
	press.FalseAccept:           says(falseAccept),
	press.FalseReject:           says(falseReject),
	press.TargetMissed:          says(targetMissed),
	press.ProcessOutside:        says(processOutside),
	press.HeatingOver:           says(heatingOver),
	press.ZoneTooShort:          says(zoneTooShort),
	press.ImpactContact:         says(impactContact),
	press.ImpactSeat:            says(impactSeat),
	press.PositionOffStep:       says(positionOffStep),
	press.TravelMayVanish:       says(travelMayVanish),
	press.DeflectionUntaught:    says(deflectionUntaught),
	press.NoForceAsked:          noForceAsked,
	press.ProbeRefusesSound:     says(probeRefusesSound),
	press.ProbeOverrun:          says(probeOverrun),
	press.HandOverSlowed:        says(handOverSlowed),
	press.RelativeAfterPress:    says(relativeAfterPress),
	press.SequenceNotClosed:     says(sequenceNotClosed),
	press.NotRetracted:          says(notRetracted),
	press.LampSecondMeaning:     says(lampSecondMeaning),
	press.ZonePassedFast:        says(zonePassedFast),
	press.ZonesAlike:            says(zonesAlike),
	press.HoldInPress:           says(holdInPress),
	press.HoldNotMet:            says(holdNotMet),
	press.PresenceByOtherCheck:  says(presenceByOtherCheck),
	press.ImpactEarly:           says(impactEarly),
	press.ClampedHot:            says(clampedHot),
	press.TakenAsPerfect:        takenAsPerfect,
	press.WarmUpThin:            says(warmUpThin),
	press.FreeTravel:            says(freeTravel),
	press.LooseFitUnseen:        says(looseFitUnseen),
	press.LooseFitProbed:        says(looseFitProbed),
	press.PresenceByProbe:       says(presenceByProbe),
	press.SecondStart:           secondStart,
	press.SmoothingLarge:        says(smoothingLarge),
	press.PressInSpeed:          says(pressInSpeed),
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
