package screen

import (
	"ramplan/press/words"
)

func (say Words) LeftEmpty(standIn string) string { return " Left empty: " + standIn + "." }

func (say Words) LessThanOther(shown string, label string) string {
	return "less than the " + shown + " of “" + label + "” is needed"
}

func (say Words) IfNormal() string { return "if normal" }

func (say Words) UsedWithNormalOnly() string { return "used with normal only" }

func (say Words) Choose() string { return "choose …" }

func (say Words) NotGiven(path string, d string) string {
	return words.ChoiceOf(path, d) + " (not given)"
}

func (say Words) NoEntry() string { return "not given" }
