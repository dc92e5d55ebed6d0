package screen

func (say Words) RevisionWasIssued(just string) string { return "Revision " + just + " was issued." }

func (say Words) NothingSoundToIssue(counted string) string {
	return "The draft is no sound plan yet (" + counted + " to mend): there is nothing to issue."
}

func (say Words) NothingNewToIssue(letter string) string {
	return "The draft is revision " + letter + ", to the letter: there is nothing new to issue."
}

func (say Words) IssuedAlready(letter string) string {
	return "This very plan is issued already, as revision " + letter + "; nothing was issued a second time."
}

func (say Words) NeverIssuedWith() string {
	return "The draft has blockers with which no plan is issued, whoever signs:"
}

func (say Words) OneNameForAll() string {
	return "Prepared, checked and approved by one name."
}

func (say Words) FirstIssue() string { return "First issue" }

func (say Words) LastUnreadable(last string) string {
	return "Revision " + last + " cannot be read, so nobody knows what changed: the change concerns it."
}

func (say Words) ConcernsDrill() string { return "Does the change concern the drill?" }

func (say Words) SayWhich() string { return "Say which" }

func (say Words) EverybodyDue() string { return "Yes: everybody is due again" }

func (say Words) StaysTrained(last string) string {
	return "No: who passed on revision " + last + " stays trained"
}

func (say Words) PaperOutOfDate(letter string, day string) string {
	return "This revision is " + say.SupersededBy(letter, day) + ". Paper that was printed of it is out of date."
}

func (say Words) ItsSheet() string { return "Its sheet" }

func (say Words) ItsDrill() string { return "Its drill" }

func (say Words) CompareWithTheDraft() string { return "Compare with the draft" }

func (say Words) AllRevisions() string { return "All revisions" }
