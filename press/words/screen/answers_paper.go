package screen

import (
	"ramplan/press/words"
)

func (say Words) WithFaults(called string) string { return called + ", with faults" }

func (say Words) PlanOf(called string, planDigest string) string {
	return called + ", plan " + words.ShortDigest(planDigest)
}

func (say Words) ThereIsNoSuchState() string { return "There is no such state of this plan." }

func (say Words) TheDraftHasFaults() string { return " · the draft has faults" }

func (say Words) TheDraftIsPlan(digest string) string {
	return " · the draft is plan " + words.ShortDigest(digest)
}

func (say Words) Printed(what string) string { return what + " · printed " + say.Today() }

func (say Words) TheShelfsRamHasNot() string {
	return "The shelf's ram has not changed since it was copied."
}

func (say Words) TheRamsEntriesAreThose() string {
	return "The ram's entries are those of the shelf again. Undo brings the old ones back."
}

func (say Words) SayInIfMatchWhich() string {
	return "Say in If-Match which version this changes: the ETag that GET gave."
}

func (say Words) IfMatchNamesNoVersion() string { return "If-Match names no version of this plan." }

func (say Words) ThePlanWasChangedSince() string {
	return "The plan was changed since that version; nothing was done."
}

func (say Words) TheDocumentIsNeitherA() string {
	return "The document is neither a sound plan nor a draft."
}

func (say Words) TheDraftIsNoSoundPlanYet() string {
	return "The draft is no sound plan yet: it has no result."
}

func (say Words) NothingIsEnteredOfA() string { return "nothing is entered of a ram in that plan" }

func (say Words) TheRamCouldNotBe() string { return "The ram could not be read." }

func (say Words) TheRamWasNotPut() string { return "The ram was not put back." }

func (say Words) SayWhetherTheChangeConcerns() string {
	return "say whether the change concerns the drill"
}

func (say Words) ThePlanWasChangedSinceThis() string {
	return "the plan was changed since this page was opened: look at it again, then issue it"
}

func (say Words) TheDraftIsNoSoundPlanYetIt() string {
	return "The draft is no sound plan yet: it cannot go on paper."
}

func (say Words) ThereIsNoSuchRevision() string { return "There is no such revision of this plan." }

func (say Words) ThereIsNoSuchSize() string { return "There is no such size of paper." }

func (say Words) ThereIsNoSuchSeparator(join string) string {
	return "There is no such separator; there are " + join + "."
}
