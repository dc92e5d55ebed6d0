package screen

func (say Words) ThisPlanWasIssuedBefore() string {
	return "This plan was issued before; what you have opened here is a new draft of its own. Work on the issued plan goes on there:"
}
