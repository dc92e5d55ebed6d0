package screen

import (
	"strconv"
)

func (say Words) ProbeSetting() string { return "Probe setting" }

func (say Words) ProbePushes() string { return "Probe pushes" }

func (say Words) ProbeEnd() string { return "Probe end" }

func (say Words) LatestProbeEnd() string { return "Latest probe end" }

func (say Words) NominalPartStallsAt() string { return "Nominal part stalls at" }

func (say Words) LoosestSoundPartStallsAt() string { return "Loosest sound part stalls at" }

func (say Words) RoomLeftToTheProbe() string { return "Room left to the probe end" }

func (say Words) LessTheUncertainty() string { return "less the uncertainty" }

func (say Words) RefusedSurelyBelow() string { return "Refused surely below" }

func (say Words) NoneIs() string { return "none is" }

func (say Words) EffectiveSuchAPartHolds(holding float64) string {
	return "effective; such a part holds " + say.Force(holding)
}

func (say Words) PassedSurelyAbove() string { return "Passed surely above" }

func (say Words) SoundRefusedByProbe() string { return "Sound parts refused by the probe" }

func (say Words) ProbeAdds() string { return "The probe adds" }

func (say Words) Pass(pass int) string { return ", pass " + strconv.Itoa(pass) }
