package shell

import (
	"fmt"

	"ramplan/press"
)

func (say Words) PlanNumberFlag() string {
	return "`NUMBER` of a plan in the archive, in place of files"
}

func (say Words) RevisionFlag() string {
	return "`LETTER` of its issued revision; without one the draft is drawn"
}

func (say Words) NoPlanOfNumber(number string) string {
	return fmt.Sprintf("no plan on the shelf has the number %q", number)
}

func (say Words) SeveralOfNumber(n int, number string) string {
	return fmt.Sprintf("%d plans on the shelf have the number %q; give each its own", n, number)
}

func (say Words) DraftUnsound(from press.Problem) string {
	return fmt.Sprintf("the draft is no sound plan yet: %s", from)
}

func (say Words) NoRevisionOfNumber(number string, letter string) string {
	return fmt.Sprintf("no plan with the number %q has a revision %s", number, letter)
}

func (say Words) SeveralRevisionsOfNumber(n int, number string, letter string) string {
	return fmt.Sprintf("%d plans with the number %q have a revision %s", n, number, letter)
}
