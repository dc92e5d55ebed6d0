package screen

func (say Words) TheDraftIsNoSoundPlanYetIt() string {
	return "The draft is no sound plan yet: it cannot go on paper."
}

func (say Words) ThereIsNoSuchRevision() string { return "There is no such revision of this plan." }

func (say Words) ThereIsNoSuchSize() string { return "There is no such size of paper." }

func (say Words) ThereIsNoSuchSeparator(join string) string {
	return "There is no such separator; there are " + join + "."
}
