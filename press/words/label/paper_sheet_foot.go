package label

import (
	"fmt"
)

func (say Words) LeftOutSeePage(most int) string {
	return fmt.Sprintf("… stands for text left out: see page %d.", most)
}

func (say Words) LeftOutSeePlan() string {
	return "… stands for text left out: the plan has it."
}

func (say Words) PaperCaution() string {
	return "ramplan · a planning aid: prove it on the station"
}

func (say Words) NotIssued(draftMark string) string { return draftMark + ", not issued" }

// PushStrokeHead opens what is said of the push stroke after a probe.
func (say Words) PushStrokeHead() string { return "Push stroke:" }
