package screen

import (
	"strconv"
)

func (say Words) ANameOrNumberIs(maxWho int) string {
	return "A name or number is needed, of " + strconv.Itoa(maxWho) + " characters at most."
}

func (say Words) AnExamUnderThisName() string {
	return "An exam under this name is not handed in yet: open it above. It can be given up at its foot."
}

func (say Words) ThisPlanHasNothingThat() string {
	return "This plan has nothing that this exam could ask."
}

func (say Words) NotHandedInYetQuestion(number string) string {
	return "Not handed in yet: question " + number + " has an answer that cannot be read. The time runs on."
}
