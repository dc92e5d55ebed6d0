package screen

func (say Words) ThisRoundDoesNotFit() string {
	return "This round does not fit the plan any more: the plan was changed meanwhile."
}

func (say Words) BeginANewRoundFrom() string {
	return "Begin a new round from the drill's first page."
}

func (say Words) AFormIsNeededHere() string {
	return "A form is needed here."
}

func (say Words) TheFormHasMoreEntries() string {
	return "The form has more entries than any plan."
}

func (say Words) ThereIsNoSuchRam() string {
	return "There is no such ram on the shelf."
}

func (say Words) ItMayHaveBeenTaken() string {
	return "It may have been taken off; look at the list of rams."
}

func (say Words) ThereIsNoSuchPlan() string {
	return "There is no such plan in this archive."
}

func (say Words) ItMayHaveBeenRemovedWith() string {
	return "It may have been removed with the bin; look on the shelf."
}

func (say Words) ThisExamIsNotUnder() string {
	return "This exam is not under way any more."
}

func (say Words) WhatWasHandedInOr() string {
	return "What was handed in or left is a record. A record, and an exam under way, can be removed with its person's records."
}

func (say Words) ThePlanWasChangedSinceThisPage() string {
	return "the plan was changed since this page was opened, and nothing was done: look at it again, then choose"
}
