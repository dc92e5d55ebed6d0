package label

import (
	"ramplan/press/words"
)

func (say Words) ProbeText(setting float64, pos words.Positions, approach float64, end float64) string {
	return "The probe pushes at " + say.Setting(setting) + " from " + pos.At(approach) + " and ends at " + pos.At(end) + "."
}

func (say Words) NominalStallsProbe(pos words.Positions, nominal float64) string {
	return "The nominal part stalls it at " + pos.At(nominal) + "."
}

func (say Words) NominalPassesProbe() string { return "The nominal part does not stall it." }

func (say Words) LoosestStallsProbe(pos words.Positions, loosest float64) string {
	return "The loosest sound part stalls it at " + pos.At(loosest) + "."
}

func (say Words) LoosestPassesProbe() string { return "The loosest sound part does not stall it." }

func (say Words) ZoneBeginsAt(pos words.Positions, zone float64) string {
	return "The zone begins at " + pos.At(zone) + "."
}

func (say Words) ProbeRule() string {
	return "Arrival before the end: go on. No arrival: refused, loose or missing."
}

func (say Words) SurelyRefusedUnder(below float64) string {
	return "Under an effective interference of " + say.CaughtBelow(below) + " a part is refused surely."
}

func (say Words) SurelyPassesOver(above float64) string {
	return "Over " + say.PassedAbove(above) + " it passes surely."
}

func (say Words) InterferenceAxis() string { return "effective interference, µm" }

func (say Words) RefusalChanceAxis() string { return "chance that the probe refuses, %" }

func (say Words) ApproachEnd() string { return "approach end" }

func (say Words) NominalStalls() string { return "nominal stalls" }

func (say Words) LoosestSoundPart() string { return "loosest sound part" }

func (say Words) LoosestBefore(pos words.Positions, at float64) string {
	return "← loosest sound part " + pos.Bare(at)
}

func (say Words) ProbeEnd() string { return "probe end" }

func (say Words) RefusedBelow() string { return "refused below" }

func (say Words) PassesAbove() string { return "passed above" }

func (say Words) RefusedAlone() string { return "refused" }

func (say Words) ProbeReadingAxis() string { return "ram reading in the probe, mm" }

func (say Words) FitsRange() string { return "the fit's range" }
