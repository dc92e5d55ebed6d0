package shell

import (
	"fmt"
)

func (say Words) ExtractOutFlag() string {
	return "`FILE` to write the plan to; - is standard output"
}

func (say Words) WhichPlanFlag() string {
	return "`NUMBER` of the plan, counted from 1, in a file that holds several"
}

func (say Words) PlanCountedFromOne(which int) string {
	return fmt.Sprintf("plans inside a file are counted from 1, found -plan %d", which)
}

func (say Words) ExtractNeedsASheet() string {
	return "extract takes one SVG, PNG or PDF, after the flags; try: ramplan extract sheet.pdf"
}

func (say Words) NoSuchPlanInside(name string, which int, n int) string {
	return fmt.Sprintf("%s: there is no plan %d inside; there are %d", name, which, n)
}

func (say Words) SeveralPlansInside(name string, n int) string {
	return fmt.Sprintf("%s: %d plans are inside; name one by -plan NUMBER:", name, n)
}

func (say Words) FileCutOff(name string) string {
	return fmt.Sprintf("%s: the end of the file is missing; the plan inside is whole, the pages are not: draw it again", name)
}
