package screen

import (
	"ramplan/press"
)

func (say Words) NotReadyLoud(r *press.Result) string { return "NOT READY: " + say.NotReady(r) }

func (say Words) OlderThanTheEntries() string { return "older than the entries" }

func (say Words) TheControllerCallsIt() string { return "The controller calls it" }

func (say Words) ToBeEntered() string { return "To be entered" }

func (say Words) InItsUnit() string { return "In its unit" }
