package screen

func (say Words) TheEntriesOfThisSide() string { return "The entries of this side could not be read." }

func (say Words) ThePlanWasChangedOnce() string {
	return "The plan was changed once more meanwhile: look at both sides again."
}
