package lesson

func (say Words) HandAtHoming() string {
	return "The ram looks for its home position, slowly and without a part. May a hand be in the work space?"
}

func (say Words) HandAtHomingNo() string { return "No: a slow ram crushes as well" }

func (say Words) HandAtHomingSlow() string { return "Yes: there is time to pull the hand out" }

func (say Words) HandAtHomingPart() string { return "Without a part there is nothing to press" }

func (say Words) HandAtHomingZone() string { return "While the zone lamp is off" }

func (say Words) HandAtJogging() string {
	return "A setter jogs the ram in small steps. May somebody else hold the part meanwhile?"
}

func (say Words) HandAtJoggingNo() string { return "No: small steps crush as well" }

func (say Words) HandAtJoggingSmall() string { return "Yes: each step is smaller than a finger" }

func (say Words) HandAtJoggingSee() string { return "If the two see each other" }

func (say Words) HandAtJoggingCount() string { return "If the setter counts aloud before each step" }

func (say Words) TwoHandsWhy(byHand string) string {
	return "Two-hand control protects the one person who uses it (ISO 13851), and nobody else. " + byHand
}

func (say Words) TwoHands() string {
	return "You start the cycle with a two-hand control. Does it protect a colleague beside you?"
}

func (say Words) TwoHandsNo() string { return "No: it protects only the person who uses it" }

func (say Words) TwoHandsBoth() string { return "Yes: the ram does not move without both buttons" }

func (say Words) TwoHandsLook() string { return "As long as you look at the colleague" }

func (say Words) TwoHandsStop() string { return "When you let go, the ram stands still at once" }

func (say Words) TwoHandsStopWhy(why string) string {
	return "The ram takes time to stop, and you must see the danger first. " + why
}

func (say Words) TrappedWhy() string {
	return "Know how a trapped person is freed with the power off, and whether the emergency stop holds the ram or lets it go: then there is no time to find out."
}

func (say Words) Trapped() string {
	return "What must everybody at this station know before the first push?"
}

func (say Words) TrappedFree() string {
	return "How a trapped person is freed, and what the ram does at an emergency stop"
}

func (say Words) TrappedFigures() string { return "Setting, push end and zone by heart" }

func (say Words) TrappedFiguresWhy(why string) string { return "These stand in the plan. " + why }

func (say Words) TrappedShare() string { return "How many parts are refused on average" }

func (say Words) TrappedShareWhy(why string) string {
	return "That is good to know, and hurts nobody. " + why
}

func (say Words) TrappedQuick() string { return "How the station is made quicker" }

func (say Words) TrappedQuickWhy(why string) string {
	return "That is not changed at the station. " + why
}

func (say Words) ShieldWhy(high float64) string {
	return "A part may burst or jump out at any push, with up to " + say.Force(high) + " behind it. Shield the work space."
}

func (say Words) Shield() string {
	return "The shield in front of the nest is in the way. May it stay open for one push?"
}

func (say Words) ShieldNo() string { return "No: a part can burst or jump out" }

func (say Words) ShieldHand() string { return "Yes, if no hand is inside" }

func (say Words) ShieldLow() string { return "With the lowest setting" }

func (say Words) ShieldSide() string { return "If you stand beside it" }

func (say Words) BridgedWhy() string {
	return "A bridged guard protects nobody, and no lamp takes its place. Guards follow the machinery rules in force and a qualified person."
}

func (say Words) Bridged() string {
	return "Somebody has bridged a guard switch, so that loading is quicker. What do you do?"
}

func (say Words) BridgedReport() string {
	return "Do not start. Report it, and have it put right first"
}

func (say Words) BridgedCareful() string { return "Work on, with more care" }

func (say Words) BridgedEnd() string { return "Report it after the shift, and work on until then" }

func (say Words) BridgedBoth() string { return "As long as the lamps are right, work on" }

func (say Words) UnderTheRamWhy() string {
	return "A vertical ram may sink or drop without power or brake: prop it before working under it."
}

func (say Words) UnderTheRam() string {
	return "A vertical ram stands high, and the power is off. May you work under it?"
}

func (say Words) UnderTheRamProp() string { return "Only when it is propped" }

func (say Words) UnderTheRamPower() string { return "Yes: without power it cannot move" }

func (say Words) UnderTheRamStop() string { return "If the emergency stop is pressed" }

func (say Words) UnderTheRamShort() string { return "For a moment" }
