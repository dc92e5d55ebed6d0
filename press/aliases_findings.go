package press

import "ramplan/press/model"

// What findings say, one type of figures each.
type (
	NoSettingFigures      = model.NoSettingFigures
	NotFeasibleFigures    = model.NotFeasibleFigures
	NoAcceptanceFigures   = model.NoAcceptanceFigures
	NoPlaceFigures        = model.NoPlaceFigures
	StretchFigures        = model.StretchFigures
	NominalFigures        = model.NominalFigures
	BeyondFigures         = model.BeyondFigures
	PPMFigures            = model.PPMFigures
	LimitFigures          = model.LimitFigures
	ReadingFigures        = model.ReadingFigures
	TravelFigures         = model.TravelFigures
	EngagementFigures     = model.EngagementFigures
	YieldFigures          = model.YieldFigures
	HoldingFigures        = model.HoldingFigures
	WiderFigures          = model.WiderFigures
	FaultFigures          = model.FaultFigures
	EarlyFigures          = model.EarlyFigures
	OffStepFigures        = model.OffStepFigures
	GripFigures           = model.GripFigures
	AmbiguousFigures      = model.AmbiguousFigures
	NarrowFigures         = model.NarrowFigures
	ShareFigures          = model.ShareFigures
	MissedFigures         = model.MissedFigures
	OutsideFigures        = model.OutsideFigures
	TimeFigures           = model.TimeFigures
	BlowFigures           = model.BlowFigures
	SeatBlowFigures       = model.SeatBlowFigures
	EarlyBlowFigures      = model.EarlyBlowFigures
	VanishFigures         = model.VanishFigures
	DeflectionFigures     = model.DeflectionFigures
	WarmUpFigures         = model.WarmUpFigures
	PilotFigures          = model.PilotFigures
	UnseenFigures         = model.UnseenFigures
	SmoothingFigures      = model.SmoothingFigures
	CannotTellFigures     = model.CannotTellFigures
	RefusesNominalFigures = model.RefusesNominalFigures
	MetFigures            = model.MetFigures
	ProbedFigures         = model.ProbedFigures
	PresenceFigures       = model.PresenceFigures
	OverrunFigures        = model.OverrunFigures
	SlowedFigures         = model.SlowedFigures
	SpreadFigures         = model.SpreadFigures
	OffFigures            = model.OffFigures
	EndFigures            = model.EndFigures
	SecondLampFigures     = model.SecondLampFigures
	PassedFigures         = model.PassedFigures
	AlikeFigures          = model.AlikeFigures
	HoldFigures           = model.HoldFigures
)

// What lies where the ram cannot be.
const (
	BeyondPushEnd = model.BeyondPushEnd
	BeyondHome    = model.BeyondHome
	BeyondZoneEnd = model.BeyondZoneEnd
	BeyondStep    = model.BeyondStep
)

// Why a probe cannot tell a loose part.
const (
	ProbeTooStrong   = model.ProbeTooStrong
	ProbeTooWeak     = model.ProbeTooWeak
	ProbeEndsEarly   = model.ProbeEndsEarly
	ProbeEndsTooLate = model.ProbeEndsTooLate
)
