package lesson

import (
	"ramplan/press/words"
)

func (say Words) GoesOn() string {
	return "In the probe, arrival comes on and zone stays off. What does that say?"
}

func (say Words) GoesOnOn() string { return "The press may follow; the part is not judged yet" }

func (say Words) GoesOnTall() string { return "The part is too tall" }

func (say Words) GoesOnTallWhy(why string) string {
	return "These lamps say so at the end of the push, and not in the probe. " + why
}

func (say Words) GoesOnFault() string { return "The arrival signal is broken" }

func (say Words) RefusedFirst() string {
	return "The probe has ended, and both lamps are off. What happens to the part?"
}

func (say Words) RefusedFirstApart() string {
	return "The press does not take place; the part is set apart"
}

func (say Words) RefusedFirstPress() string {
	return "It is pressed by hand mode, because only the probe failed"
}

func (say Words) RefusedFirstAgain() string {
	return "The probe is left out, and the part is pressed once more"
}

func (say Words) RefusedFirstSecond() string { return "Nothing yet: the second look decides" }

func (say Words) RefusedFirstSecondWhy(why string) string {
	return "There is no second look after a refusal. " + why
}

func (say Words) ZoneAtFirst() string {
	return "In the probe, arrival and zone are both on. What does that say?"
}

func (say Words) ZoneAtFirstRefused() string {
	return "Refused: a signal is stuck, or the station is wrongly set"
}

func (say Words) ZoneAtFirstGood() string { return "The part is good and may be passed on" }

func (say Words) ZoneAtFirstGoodWhy(why string) string {
	return "Both on says good at the end of the push, and not in the probe. " + why
}

func (say Words) ZoneAtFirstLoose() string { return "The fit is loose" }

func (say Words) ZoneAtFirstLooseWhy(why string) string {
	return "A loose fit lets the ram run on to the probe end: both lamps are off. " + why
}

func (say Words) ZoneAtFirstShort() string { return "The part is too short" }

func (say Words) HandBetweenWhy(byHand string) string {
	return "After the probe the ram moves on by itself, with the full push. " + byHand
}

func (say Words) HandBetween() string {
	return "The ram stands still in the probe. May a hand go into the work space now?"
}

func (say Words) HandBetweenNo() string { return "No: the ram goes on by itself" }

func (say Words) HandBetweenStill() string { return "Yes, as long as it stands still" }

func (say Words) HandBetweenWeak() string { return "Yes, the probe pushes with little force" }

func (say Words) HandBetweenArrival() string { return "Yes, when arrival is on" }

func (say Words) ProbeFindsNothing(end float64) string {
	return "Nothing stops the ram in the probe before its end at " + say.At(end) + ": arrival stays off."
}

func (say Words) ArrivalStuckInProbe(arrival bool) string {
	return "The arrival signal is stuck " + words.OnOff(arrival) + ", in the probe already."
}

func (say Words) ZoneOnInProbe() string { return "Zone is on in the probe, where it must be off." }

func (say Words) FirstLookRefuses(s string) string {
	return s + " The first look refuses it, and the press does not take place."
}
