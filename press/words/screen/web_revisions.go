package screen

func (say Words) SayWhetherTheChangeConcerns() string {
	return "say whether the change concerns the drill"
}

func (say Words) ThePlanWasChangedSinceThis() string {
	return "the plan was changed since this page was opened: look at it again, then issue it"
}
