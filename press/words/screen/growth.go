package screen

import (
	"ramplan/press/words"
)

func (say Words) NumberNeeded(what string, quoted string) string {
	return what + ": found " + quoted + "; a number, 0 or more, is needed."
}

func (say Words) TemperatureChange() string { return "Temperature change" }

func (say Words) ReferenceSetToGrowth(exact string) string {
	return "Reference uncertainty set to " + words.Unit(exact, "mm") + ", what the warm-up alone does, rounded up. What homing and the setting of the nest add comes on top. Undo brings the old figure back."
}
