package label

import (
	"ramplan/press/words"
)

func (say Words) GuardBands(pos words.Positions, guard float64) string {
	return "guard bands " + pos.Length(guard)
}

func (say Words) SeatedReadings() string { return "seated readings" }

func (say Words) UncertainBy(pos words.Positions, uncertainty float64) string {
	return "uncertain by ±" + pos.Length(uncertainty)
}

func (say Words) TipOfTheRam() string { return "tip of the ram" }

func (say Words) AtRestLabel() string { return "at rest" }

func (say Words) RestsHere() string { return "the ram rests here" }

func (say Words) ZoneAndPushEnd() string { return "zone and push end" }

func (say Words) ArrivalSignal() string { return "arrival signal" }

func (say Words) ZoneSignal() string { return "zone signal" }

func (say Words) OfTwoSignals() string { return "of the two signals" }

// OfSecondLook is what the verdict is of where a probe comes before the push.
func (say Words) OfSecondLook() string { return "of the second look" }

func (say Words) FirstLook() string { return "first look" }

func (say Words) ProbeEndsAt(pos words.Positions, end float64, before bool) string {
	if before {
		return "← probe ends " + pos.Bare(end)
	}
	return "probe ends " + pos.Bare(end)
}

func (say Words) ZoneFrom(pos words.Positions, zoneStart float64) string {
	return "zone from " + pos.Bare(zoneStart)
}

func (say Words) ZoneTo(pos words.Positions, zoneEnd float64) string {
	return "zone to " + pos.Bare(zoneEnd)
}

func (say Words) NotKnown() string { return "not known" }

func (say Words) ZoneStart() string { return "zone start" }

func (say Words) PushEnd() string { return "push end" }

func (say Words) ZoneEnd() string { return "zone end" }
