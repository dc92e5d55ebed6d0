package screen

import (
	"strconv"
)

func (say Words) InOrderOfNeed() string { return "In the order in which a newcomer needs them." }

func (say Words) TwoSignals() string { return "The two signals" }

func (say Words) TwoSignalsMean() string {
	return "What a controller tells at the end of a push."
}

func (say Words) VerdictWords() string { return "Verdict words" }

func (say Words) VerdictWordsMean() string { return "What a pair of signals says about a part." }

func (say Words) ForJointsOfKind(join string) string { return "For joints of kind " + join + "." }

func (say Words) ForStepsOfKind(join string) string { return "For steps of kind " + join + "." }

func (say Words) TextOfAtMost(maxRunes int) string {
	return "Text of at most " + strconv.Itoa(maxRunes) + " characters"
}

func (say Words) Tick() string { return "A tick" }

func (say Words) AnyNumber() string { return "Any number" }

func (say Words) NotTicked() string { return "Not ticked" }

func (say Words) NoRows() string { return "No rows" }
