package label

import (
	"ramplan/press"
	"ramplan/press/words"
)

func (say Words) WithThePart() string { return "with the part" }

func (say Words) WithoutAnInsert() string { return "without an insert" }

func (say Words) ReadWithArrival() string { return "read, with arrival" }

func (say Words) ReadWithOrWithoutArrival() string { return "read, with or without arrival" }

func (say Words) ReadWithout() string { return "read, without" }

func (say Words) CycleText(join string, total float64) string {
	return "Position of the ram against time. " + words.UpperFirst(join) + ": together " + say.Seconds(total) + "."
}

func (say Words) TimeWithoutAnInsert(missingWatched float64, r *press.Result) string {
	return "Without an insert: " + say.Seconds(missingWatched) + ", " + say.MissingCycle(r) + "."
}

func (say Words) WatchText(watchTime float64, r *press.Result) string {
	return "When nothing has arrived after " + say.After(watchTime) + ", nothing will" + say.ByMotion(r) + "."
}

func (say Words) NeverOn() string { return "never on" }
