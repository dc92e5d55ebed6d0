package screen

func (say Words) NotThere() string { return "Not there" }

func (say Words) ChangedMeanwhile() string { return "Changed meanwhile" }

func (say Words) TooLarge() string { return "Too large" }

func (say Words) NotAccepted() string { return "Not accepted" }

func (say Words) NotPossibleJustNow() string { return "Not possible just now" }

func (say Words) AFaultInTheProgram() string { return "A fault in the program or its archive" }

func (say Words) NotDone() string { return "Not done" }

func (say Words) AnotherWindowChangedThePlan() string {
	return "Another window changed the plan meanwhile: nothing was done."
}

func (say Words) OpenThePlanAgainAnd() string {
	return "Open the plan again and look at what stands there now."
}

func (say Words) AnotherWindowChangedTheRam() string {
	return "Another window changed the ram meanwhile: nothing was done."
}

func (say Words) OpenTheRamAgainAnd() string {
	return "Open the ram again and look at what stands there now."
}

func (say Words) IsDamagedItIsNot(capital string) string {
	return capital + " is damaged: it is not what was stored."
}

func (say Words) TheHistoryOfThePlan() string {
	return "The history of the plan shows which states are whole."
}

func (say Words) RamplanCheckLooksThroughThe() string {
	return "ramplan check looks through the whole archive."
}

func (say Words) RevisionIsWhatWasIssued(letter string) string {
	return "Revision " + letter + " is what was issued, but today's rules do not take it: they ask for more than those under which it was issued."
}

func (say Words) ItsSheetThatWasPrinted() string {
	return "Its sheet that was printed then stays what it is. On the page Revisions a new draft can be started from it, to be mended and issued anew."
}

func (say Words) GoBackWhatYouTyped() string {
	return "Go back: what you typed is still there. Try again when it is mended."
}

func (say Words) WhatWasSentCannotBe() string { return "What was sent cannot be kept." }

func (say Words) TheRequestIsLargerThan() string { return "The request is larger than 8 MiB." }

func (say Words) APlanOrDraftFile() string { return "A plan or draft file may have 4 MiB at most." }

func (say Words) GoBackWhatYouTypedIs() string { return "Go back: what you typed is still there." }

func (say Words) SomethingWentWrongInThe() string {
	return "Something went wrong in the program; the entries are still in your browser."
}

func (say Words) GoBackSaveTheEntries() string {
	return "Go back, save the entries as a file and start ramplan again."
}
