package screen

import (
	"ramplan/press/words"
)

func (say Words) SayBothLamps() string {
	return "Say of both lamps whether they are on or off."
}

func (say Words) ReadingNotUnderstood() string {
	return "This cannot be read as a position in mm, so the answer is from the lamps alone."
}

func (say Words) FirstLookShown(on words.Pair) string {
	return "First look, in the probe: " + on.String()
}

func (say Words) FromLampsAlone() string {
	return "From the lamps alone; the reading was not understood."
}

func (say Words) InDoubt() string { return "In doubt: set apart" }

func (say Words) ByLampsAlone(verdict string) string {
	return "By the lamps alone it would be: " + verdict + "."
}

// WhichLook stands where no look is chosen: what is right at the one stops a station at the
// other.
func (say Words) WhichLook() string { return "Choose" }

func (say Words) SayWhichLook() string {
	return "Say at which look the lamps stood so: in the probe before the push, or at the end of the push."
}

func (say Words) SecondLookIs() string { return "Second look: at the end of the push" }

func (say Words) FirstLookIs() string {
	return "First look: in the probe, before the push"
}

func (say Words) OnlyWithoutProbe() string {
	return " This push would come only without the probe, which refuses it at the first look."
}

// LampsInBrief writes two lamps, arrival first; a dash where they are not known.
func (say Words) LampsInBrief(arrival, zone *bool) string {
	if arrival == nil || zone == nil {
		return "–"
	}
	return words.OnOff(*arrival) + " · " + words.OnOff(*zone)
}
