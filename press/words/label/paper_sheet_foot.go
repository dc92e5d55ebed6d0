package label

import (
	"fmt"
)

func (say Words) StandsForTextLeftOut(most int) string {
	return fmt.Sprintf("… stands for text left out: see page %d.", most)
}

func (say Words) StandsForTextLeftOutThe() string {
	return "… stands for text left out: the plan has it."
}

func (say Words) RamplanAPlanningAidProve() string {
	return "ramplan · a planning aid: prove it on the station"
}

func (say Words) NotIssued(draftMark string) string { return draftMark + ", not issued" }
