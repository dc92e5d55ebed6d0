package model

// The figures of the findings, in the units of the package: one type for each thing that is
// said. A code that needs none has nil; NoAcceptance has one of two.

// A NoSettingFigures tells what the nearest setting gives of what is needed and borne.
type NoSettingFigures struct{ Need, Cap, Setting, Low, High float64 } // N, but the setting in %

// A NotFeasibleFigures tells what a setting by hand gives, and what it should have kept to.
type NotFeasibleFigures struct {
	Setting      float64 // %
	Force, Limit float64 // N
	Weak         bool    // the force is below the limit, else above
}

// A NoAcceptanceFigures tells what is left of the drawing when both guard bands are taken off.
type NoAcceptanceFigures struct {
	Width, Guard, Uncertainty float64 // mm
	Ratio                     float64 // of the uncertainty to half the width
	Of                        float64 // share of the largest part of the uncertainty, 0 to 1
}

// A NoPlaceFigures tells of readings in which a rule of targets finds no two positions.
type NoPlaceFigures struct {
	From, To, Step float64  // mm
	ApproachEnd    *float64 // mm, where it is what leaves no room
}

// A StretchFigures is a stretch of readings. mm.
type StretchFigures struct{ From, To float64 }

// A NominalFigures tells where the nominal part comes to rest. mm.
type NominalFigures struct {
	Reading, From, To             float64  // From, To: the accepted readings
	Height, HeightLow, HeightHigh float64  // of the nominal part, and what the drawing asks for
	PPM                           *float64 // good parts that are refused, where that is what is said
}

// A BeyondFigures tells of a position that the ram cannot reach. mm.
type BeyondFigures struct {
	Position, Limit float64
	What            Beyond
}

// Beyond is what lies where the ram cannot be.
type Beyond int

// What can lie there.
const (
	BeyondPushEnd Beyond = iota
	BeyondHome
	BeyondZoneEnd
	BeyondStep
)

// A PPMFigures is a share of parts and its target. ppm.
type PPMFigures struct{ PPM, Limit float64 }

// A LimitFigures is a value over its limit, in the unit of the entry.
type LimitFigures struct{ Value, Limit float64 }

// A ReadingFigures is where something stops the ram. mm.
type ReadingFigures struct{ Reading float64 }

// A TravelFigures is the press-in travel. mm.
type TravelFigures struct{ Travel float64 }

// An EngagementFigures is an engaged length and what it is held against. mm.
type EngagementFigures struct{ Engagement, Has float64 }

// A YieldFigures is a part's load in terms of its elastic limit.
type YieldFigures struct{ Utilisation float64 }

// A HoldingFigures is what the loosest joint holds, and what is required. N.
type HoldingFigures struct{ Holding, Limit float64 }

// A WiderFigures tells of accepted readings that reach outside the drawing. mm.
type WiderFigures struct {
	From, To, Low, High float64
	Tight               *float64 // % over the push that a fit may demand and pass; nil where none does
}

// A FaultFigures tells of a row of the catalogue that gives both signals. mm.
type FaultFigures struct {
	Row                          int
	Reading, Low, High, From, To float64
}

// An EarlyFigures tells of a worst case in which the approach meets a part.
type EarlyFigures struct {
	ApproachEnd, Earliest, Doubt float64 // mm
	PPM                          float64
}

// An OffStepFigures is a value that cannot be set, in the unit of the entry.
type OffStepFigures struct{ Value, Step float64 }

// A GripFigures is what is left of the interference of the loosest fit. µm.
type GripFigures struct{ Effective float64 }

// An AmbiguousFigures tells of a table that cannot be trusted. mm; nil is not off, or does
// not stop.
type AmbiguousFigures struct {
	PushEnd, ZoneStart, ZoneEnd          float64
	PushEndOff, ZoneStartOff, ZoneEndOff bool
	Low, High                            float64 // of the readings that are good for certain
	Stops                                *float64
	StopsInZone, BareNest                bool
}

// A NarrowFigures tells of accepted readings that are narrow. mm.
type NarrowFigures struct {
	Width, Limit float64
	Of           float64 // share of the largest part of the uncertainty, 0 to 1
}

// A ShareFigures is a share of parts and its target, 0 to 1.
type ShareFigures struct{ Share, Limit float64 }

// A MissedFigures tells of targets that no window meets.
type MissedFigures struct {
	Measure        float64 // the larger share in terms of its target
	Accept, Reject float64 // the targets, ppm
	ByHand         bool    // the window was set by hand
	WorstDay       bool    // the targets are those of a worst day
}

// An OutsideFigures tells of a process that lies beside the drawing. mm.
type OutsideFigures struct{ Reading, Reach, Low, High float64 }

// A TimeFigures is a time and its least. s.
type TimeFigures struct{ Time, Limit float64 }

// A BlowFigures tells of a blow at first contact.
type BlowFigures struct {
	Force, Limit float64 // N
	Within       float64 // mm/s up to which the blow may be borne; not above 0: none
}

// A SeatBlowFigures tells of a blow at the seat.
type SeatBlowFigures struct {
	BlowFigures
	Strong       float64 // N with a strong ram
	WithinStrong float64 // mm/s, likewise
}

// An EarlyBlowFigures tells of a blow in the approach.
type EarlyBlowFigures struct {
	BlowFigures
	Speed, Slow float64 // mm/s of the approach and of the push
}

// A VanishFigures is the press-in travel, and by how much it may fall short. mm.
type VanishFigures struct{ Travel, Worst float64 }

// A DeflectionFigures tells of a bend that was not taught.
type DeflectionFigures struct {
	Deflection, Uncertainty float64 // mm
	Force                   float64 // N
}

// A WarmUpFigures is a reference uncertainty and the growth of a warm-up. mm.
type WarmUpFigures struct{ Given, Growth float64 }

// A PilotFigures is how far the insert travels before the fit takes hold. mm.
type PilotFigures struct{ Pilot float64 }

// An UnseenFigures tells whether a probe could see a loose fit.
type UnseenFigures struct{ Highest *float64 } // % up to which it can; nil: it cannot

// A SmoothingFigures is what smoothing takes of an interference. µm.
type SmoothingFigures struct{ Smoothing, Mean float64 }

// A CannotTellFigures tells why a probe cannot tell a loose part from a sound one.
type CannotTellFigures struct {
	Why                             Doubt
	Setting, Press                  float64 // % of the probe and of the push
	Low                             float64 // N of a weak ram at the probe's setting
	End, ApproachEnd, Limit, Latest float64 // mm
}

// Doubt is why a probe cannot tell.
type Doubt int

// Why it cannot.
const (
	ProbeTooStrong   Doubt = iota // not below the setting of the push
	ProbeTooWeak                  // not even a part without grip is moved on
	ProbeEndsEarly                // before the approach does
	ProbeEndsTooLate              // a part without grip may be let go on, and look good
)

// A RefusesNominalFigures tells of a probe that refuses the nominal part.
type RefusesNominalFigures struct {
	Setting float64  // %
	End     float64  // mm
	Reading *float64 // mm where the part stalls; nil: it does not
}

// A MetFigures tells of a move that may meet a part. mm.
type MetFigures struct{ Position, Part, Doubt float64 }

// A ProbedFigures tells how surely a probe refuses, and what the least grip that it lets go on holds.
type ProbedFigures struct {
	Chance  float64  // 0 to 1
	Holding *float64 // N; nil where it catches no fit
}

// A PresenceFigures tells of a probe that is all that refuses a missing insert.
type PresenceFigures struct {
	Reading float64 // mm
	Refused float64 // how surely, 0 to 1
}

// An OverrunFigures tells of a mass that carries a part past its stall.
type OverrunFigures struct {
	Over, Room, Clear float64 // mm
	Speed             float64 // mm/s
}

// A SlowedFigures is the speed of a hand-over and the one that was set. mm/s.
type SlowedFigures struct{ Speed, Set float64 }

// A SpreadFigures is by how much a place differs from part to part. mm.
type SpreadFigures struct{ Spread float64 }

// An OffFigures is how far a cycle ends from home. mm.
type OffFigures struct{ Off float64 }

// An EndFigures is where a run may leave the ram. mm.
type EndFigures struct{ End, ApproachEnd float64 }

// A SecondLampFigures tells where a signal comes on that nobody means.
type SecondLampFigures struct {
	Step  int
	From  float64 // s
	Times int
}

// A PassedFigures tells of a signal that is on too shortly in a step. s.
type PassedFigures struct {
	Step        int
	Time, Limit float64
}

// An AlikeFigures tells of two zones that no reading tells apart. mm.
type AlikeFigures struct{ Apart, Uncertainty float64 }

// A HoldFigures tells of a hold that is not shown as asked.
type HoldFigures struct {
	Step int
	At   float64 // mm
}
