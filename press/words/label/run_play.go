package label

import (
	"ramplan/press"
	"ramplan/press/words"
)

func (say Words) NominalWay() string { return "The nominal part" }

func (say Words) HoldWay() string { return "With the hold case" }

// RunMoment says in which step the ram is at a moment of its way and what its signals show;
// station is nil where the station has no zone of its own.
func (say Words) RunMoment(p *press.Plan, step int, arrival, own bool, station *bool) string {
	says := words.UpperFirst(words.Step(p, step)) + ". Arrival " + words.OnOff(arrival) + ", own zone " + words.OnOff(own)
	if station != nil {
		says += ", station zone " + words.OnOff(*station)
	}
	return says + "."
}
