package screen

func (say Words) RevisionWasIssued(just string) string { return "Revision " + just + " was issued." }

func (say Words) TheDraftIsNoSound(counted string) string {
	return "The draft is no sound plan yet (" + counted + " to mend): there is nothing to issue."
}

func (say Words) TheDraftIsRevisionTo(letter string) string {
	return "The draft is revision " + letter + ", to the letter: there is nothing new to issue."
}

func (say Words) ThisVeryPlanIsIssued(letter string) string {
	return "This very plan is issued already, as revision " + letter + "; nothing was issued a second time."
}

func (say Words) TheDraftHasBlockersWith() string {
	return "The draft has blockers with which no plan is issued, whoever signs:"
}

func (say Words) PreparedCheckedAndApprovedBy() string {
	return "Prepared, checked and approved by one name."
}

func (say Words) FirstIssue() string { return "First issue" }

func (say Words) RevisionCannotBeReadSo(last string) string {
	return "Revision " + last + " cannot be read, so nobody knows what changed: the change concerns it."
}

func (say Words) DoesTheChangeConcernThe() string { return "Does the change concern the drill?" }

func (say Words) SayWhich() string { return "Say which" }

func (say Words) YesEverybodyIsDueAgain() string { return "Yes: everybody is due again" }

func (say Words) NoWhoPassedOnRevision(last string) string {
	return "No: who passed on revision " + last + " stays trained"
}

func (say Words) ThisRevisionIsPaperThat(letter string, day string) string {
	return "This revision is " + say.SupersededBy(letter, day) + ". Paper that was printed of it is out of date."
}

func (say Words) ItsSheet() string { return "Its sheet" }

func (say Words) ItsDrill() string { return "Its drill" }

func (say Words) CompareWithTheDraft() string { return "Compare with the draft" }

func (say Words) AllRevisions() string { return "All revisions" }
