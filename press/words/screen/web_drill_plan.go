package screen

func (say Words) TheDraftIsNoSoundPlan() string {
	return "The draft is no sound plan yet: there is nothing to practise on."
}
