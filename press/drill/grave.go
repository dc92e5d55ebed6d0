package drill

import (
	"slices"

	"ramplan/press/words"
	"ramplan/press/words/lesson"
)

// What is grave, by the short names of this package.
const (
	gravePass   = lesson.GravePass
	graveUnseen = lesson.GraveUnseen
	graveAgain  = lesson.GraveAgain
	graveStack  = lesson.GraveStack
	graveGoOn   = lesson.GraveGoOn
	graveRow    = lesson.GraveRow
	graveChange = lesson.GraveChange
	graveHand   = lesson.GraveHand
	graveGuard  = lesson.GraveGuard
	graveOther  = lesson.GraveOther
	graveRefuse = lesson.GraveRefuse
	graveAsGood = lesson.GraveAsGood
)

// graveOf lists what is grave in the exam of a role, in the order of its rule.
func graveOf(role Role) []lesson.Grave {
	all := []lesson.Grave{gravePass, graveUnseen, graveRefuse, graveAsGood, graveAgain, graveStack, graveGoOn, graveRow, graveChange, graveHand, graveGuard, graveOther}
	if role == Setter {
		all = slices.DeleteFunc(all, func(s lesson.Grave) bool {
			return slices.Contains([]lesson.Grave{graveUnseen, graveRefuse, graveAsGood, graveStack}, s)
		})
	}
	return all
}

// GraveIntro stands before what fails an exam alone.
func GraveIntro(say words.Printer) string {
	return lesson.Anywhere(say).GraveIntro()
}

// GraveRule says before an exam what fails it alone, a line each, after [GraveIntro].
func GraveRule(say words.Printer, role Role) []string {
	var out []string
	for _, g := range graveOf(role) {
		out = append(out, lesson.Anywhere(say).Grave(g))
	}
	return out
}
