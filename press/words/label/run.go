package label

import (
	"fmt"

	"ramplan/press/words"
)

func (say Words) WhenItHasToHold() string { return "when it has to hold" }

func (say Words) OwnZone() string { return "own zone" }

func (say Words) StationZone() string { return "station zone" }

func (say Words) RunText() string {
	return "Position of the ram against time, step by step."
}

func (say Words) Pass(pass int) string { return fmt.Sprintf(", pass %d", pass) }

func (say Words) StepText(step string, pass string, begins float64, ends float64, pos words.Positions, to float64) string {
	return words.UpperFirst(step) + pass + ": from " + say.Seconds(begins) + " to " + say.Seconds(ends) + ", ends at " + pos.At(to) + "."
}

func (say Words) OnFrom(from float64, to float64) string {
	return "on from " + say.Seconds(from) + " to " + say.Seconds(to)
}

func (say Words) LookedAtText(t float64) string {
	return "The signals are looked at at " + say.Seconds(t) + "."
}
