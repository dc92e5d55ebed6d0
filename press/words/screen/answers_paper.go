package screen

import (
	"ramplan/press/words"
)

func (say Words) WithFaults(called string) string { return called + ", with faults" }

func (say Words) PlanOf(called string, planDigest string) string {
	return called + ", plan " + words.ShortDigest(planDigest)
}

func (say Words) NoSuchState() string { return "There is no such state of this plan." }

func (say Words) DraftHasFaults() string { return " · the draft has faults" }

func (say Words) DraftIsPlan(digest string) string {
	return " · the draft is plan " + words.ShortDigest(digest)
}

func (say Words) PrintedToday(what string) string { return what + " · printed " + say.Today() }

func (say Words) ShelfRamUnchanged() string {
	return "The shelf's ram has not changed since it was copied."
}

func (say Words) RamIsShelfsAgain() string {
	return "The ram's entries are those of the shelf again. Undo brings the old ones back."
}

func (say Words) IfMatchNeeded() string {
	return "Say in If-Match which version this changes: the ETag that GET gave."
}

func (say Words) IfMatchUnknown() string { return "If-Match names no version of this plan." }

func (say Words) ChangedSinceVersion() string {
	return "The plan was changed since that version; nothing was done."
}

func (say Words) NeitherPlanNorDraft() string {
	return "The document is neither a sound plan nor a draft."
}

func (say Words) DraftHasNoResult() string {
	return "The draft is no sound plan yet: it has no result."
}

func (say Words) NoRamInPlan() string { return "nothing is entered of a ram in that plan" }

func (say Words) RamUnreadable() string { return "The ram could not be read." }

func (say Words) RamNotPutBack() string { return "The ram was not put back." }

func (say Words) SayWhetherDrillConcerned() string {
	return "say whether the change concerns the drill"
}

func (say Words) ChangedSinceOpenedIssue() string {
	return "the plan was changed since this page was opened: look at it again, then issue it"
}

func (say Words) DraftNotForPaper() string {
	return "The draft is no sound plan yet: it cannot go on paper."
}

func (say Words) NoSuchRevision() string { return "There is no such revision of this plan." }

func (say Words) NoSuchSize() string { return "There is no such size of paper." }

func (say Words) NoSuchSeparator(join string) string {
	return "There is no such separator; there are " + join + "."
}
