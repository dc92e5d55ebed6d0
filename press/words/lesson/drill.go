package lesson

import (
	"ramplan/press"
)

func (say Words) HandsOut(r *press.Result, high float64) string {
	return "Never put a hand into the work space. The approach is not force-limited: it strikes with at least " + say.EarlyBlow(r) +
		". The push gives up to " + say.Force(high) + " when the ram stands still. Return, homing and jogging crush as well"
}

func (say Words) LampsAreNoSafety() string {
	return "The lamps are no safety function. They judge parts, and nothing else."
}

func (say Words) WorksGoFirst() string {
	return "At the station, follow the instructions of your own works where they say something else than this drill."
}

func (say Words) PracticeOnly(r *press.Result) string {
	return "This plan is not ready: " + say.NotReady(r) + ". Practise with it to learn, and press no parts by it."
}

func (say Words) TwoLooksAtOnePart() string {
	return "In this plan a probe comes before the push, and the lamps are looked at twice. Where a question names no look, it is about the second one, at the end of the push."
}

func (say Words) SeveralAnswersRight() string {
	return "In this plan some lamps mean more than one thing. Then more than one answer is right."
}
