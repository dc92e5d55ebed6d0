package screen

import (
	"ramplan/press/words"
)

func (say Words) SayOfBothLampsWhether() string {
	return "Say of both lamps whether they are on or off."
}

func (say Words) ThisCannotBeReadAs() string {
	return "This cannot be read as a position in mm, so the answer is from the lamps alone."
}

func (say Words) FirstLookInTheProbe(on words.Pair) string {
	return "First look, in the probe: " + on.String()
}

func (say Words) FromTheLampsAloneThe() string {
	return "From the lamps alone; the reading was not understood."
}

func (say Words) InDoubtSetApart() string { return "In doubt: set apart" }

func (say Words) ByTheLampsAloneIt(verdict string) string {
	return "By the lamps alone it would be: " + verdict + "."
}

func (say Words) SecondLookAtTheEnd() string { return "Second look: at the end of the push" }

func (say Words) FirstLookInTheProbeBefore() string {
	return "First look: in the probe, before the push"
}

func (say Words) ThisPushWouldComeOnly() string {
	return " This push would come only without the probe, which refuses it at the first look."
}
