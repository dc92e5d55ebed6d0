package screen

import (
	"ramplan/press"
)

func (say Words) NotReadyLoud(r *press.Result) string { return "NOT READY: " + say.NotReady(r) }

func (say Words) OlderThanEntries() string { return "older than the entries" }

func (say Words) ControllerCallsIt() string { return "The controller calls it" }

func (say Words) ToBeEntered() string { return "To be entered" }

func (say Words) InItsUnit() string { return "In its unit" }
