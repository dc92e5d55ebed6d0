package screen

import (
	"ramplan/press/words"
)

func (say Words) PushForce() string { return "Push force" }

func (say Words) JointHead() string { return "What the joint takes and holds" }

func (say Words) ProbeHead() string { return "The probe" }

func (say Words) RunHead() string { return "Where each step ends" }

func (say Words) OneCycle() string { return "One cycle" }

func (say Words) TravelAndWindow() string { return "Travel and window" }

func (say Words) SharesByTheClosedForm() string { return "Shares by heights and readings alone" }

func (say Words) WithStallsLooseFitsAnd() string {
	return "With stalls, loose fits and each part's own force: what passes and what is refused"
}

func (say Words) NeededAtTheSeat() string { return "Needed at the seat" }

func (say Words) AllowedAtMost() string { return "Allowed at most" }

func (say Words) AtThisSetting() string { return "At this setting" }

func (say Words) SettingsInside() string { return "Settings inside" }

func (say Words) StepsInside() string { return "Steps inside" }

func (say Words) OneStepIsWorth() string { return "One step is worth" }

func (say Words) OfThisSetting() string { return "at this setting" }

func (say Words) MetAtFirstContact() string { return "Met at first contact" }

func (say Words) MetAtTheSeat() string { return "Met at the seat" }

func (say Words) AtTheSeatUndamped() string { return "At the seat, undamped" }

func (say Words) MetInTheApproach() string { return "Met in the approach" }

func (say Words) AtLeast(early float64) string { return "at least " + words.Fixed(early, 0) }

func (say Words) FirstContact() string { return "First contact" }

func (say Words) SlowTravelToContact() string { return "Slow travel to contact" }

func (say Words) PressInTravel() string { return "Press-in travel" }

func (say Words) ReadingsOfGoodParts() string { return "Readings of good parts" }

func (say Words) GuardBand() string { return "Guard band" }

func (say Words) AcceptedReadings() string { return "Accepted readings" }

func (say Words) UncertaintyOfAReading() string { return "Uncertainty of a reading" }

func (say Words) TwoStandardDeviations() string { return "two standard deviations" }

func (say Words) CycleNominalPart() string { return "Cycle, nominal part" }

func (say Words) CyclePartMissing() string { return "Cycle, part missing" }

func (say Words) WatchTimeOfTheProbe() string { return "Watch time of the probe, at least" }

func (say Words) PeakSpeed() string { return "Peak speed" }

func (say Words) HeatsLike() string { return "Heats like" }

func (say Words) HeldWithoutEnd() string { return "held without end" }

func (say Words) WatchTimeAtLeast() string { return "Watch time, at least" }

func (say Words) PartsWithinTheDrawing() string { return "Parts within the drawing" }

func (say Words) WrongHeightsAccepted() string { return "Wrong heights accepted" }

func (say Words) GoodPartsRefused() string { return "Good parts refused" }

func (say Words) NotKnown() string { return "not known" }

func (say Words) DemandAtTheSeat() string { return "Demand at the seat" }

func (say Words) AfterSmoothing() string { return "After smoothing" }

func (say Words) HoldingForce() string { return "Holding force" }

func (say Words) VonMisesUpTo(fixed string, where string) string {
	return "von Mises up to " + words.Unit(fixed, "MPa") + " " + where
}

func (say Words) HubUsed() string { return "Hub used" }

func (say Words) AtItsBore() string { return "at its bore" }

func (say Words) InsertUsed() string { return "Insert used" }

func (say Words) BoreClosesBy() string { return "Bore closes by" }

func (say Words) AllThroughIt() string { return "all through it" }

func (say Words) HubGrowsBy() string { return "Hub grows by" }
