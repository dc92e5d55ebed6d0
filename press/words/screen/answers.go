package screen

import (
	"fmt"
)

func (say Words) NotThere() string { return "Not there" }

func (say Words) ChangedMeanwhile() string { return "Changed meanwhile" }

func (say Words) TooLarge() string { return "Too large" }

func (say Words) NotAccepted() string { return "Not accepted" }

func (say Words) NotPossibleJustNow() string { return "Not possible just now" }

func (say Words) ProgramFault() string { return "A fault in the program or its archive" }

func (say Words) NotDone() string { return "Not done" }

func (say Words) PlanChangedElsewhere() string {
	return "Another window changed the plan meanwhile: nothing was done."
}

func (say Words) OpenPlanAgain() string {
	return "Open the plan again and look at what stands there now."
}

func (say Words) RamChangedElsewhere() string {
	return "Another window changed the ram meanwhile: nothing was done."
}

func (say Words) OpenRamAgain() string {
	return "Open the ram again and look at what stands there now."
}

func (say Words) DamagedOf(capital string) string {
	return capital + " is damaged: it is not what was stored."
}

func (say Words) HistoryShowsWhole() string {
	return "The history of the plan shows which states are whole."
}

func (say Words) CheckLooksThrough() string {
	return "ramplan check looks through the whole archive."
}

func (say Words) IssuedButNotTaken(letter string) string {
	return "Revision " + letter + " is what was issued, but today's rules do not take it: they ask for more than those under which it was issued."
}

func (say Words) PrintedSheetStays() string {
	return "Its sheet that was printed then stays what it is. On the page Revisions a new draft can be started from it, to be mended and issued anew."
}

func (say Words) TypedIsThereTryAgain() string {
	return "Go back: what you typed is still there. Try again when it is mended."
}

func (say Words) CannotKeepSent() string { return "What was sent cannot be kept." }

func (say Words) RequestTooLarge() string { return "The request is larger than 8 MiB." }

func (say Words) MostOfAFile() string { return "A plan or draft file may have 4 MiB at most." }

func (say Words) TypedIsThere() string { return "Go back: what you typed is still there." }

func (say Words) WentWrong() string {
	return "Something went wrong in the program; the entries are still in your browser."
}

func (say Words) SaveEntriesAndRestart() string {
	return "Go back, save the entries as a file and start ramplan again."
}

func (say Words) NewEmptyPlan() string {
	return "This is a new, empty plan. It is saved as you type."
}

func (say Words) SideUnreadable() string { return "The entries of this side could not be read." }

func (say Words) ChangedOnceMore() string {
	return "The plan was changed once more meanwhile: look at both sides again."
}

func (say Words) ChooseAFile() string { return "Choose a file first, then open it." }

func (say Words) NotOpened(cleanName string) string { return cleanName + " was not opened." }

func (say Words) NotOpenedNoPlan(cleanName string) string {
	return cleanName + " was not opened: it is neither a plan nor a sheet with a plan inside."
}

func (say Words) AndMore() string { return "and more" }

func (say Words) ThatFile() string { return "the file" }

func (say Words) FormUnreadable(error string) string {
	return "The form could not be read: " + error + "."
}

func (say Words) SendAgain() string { return "Go back and send it again." }

func (say Words) FormWithoutBoundary() string {
	return "The form could not be read: it names no boundary."
}

func (say Words) RowRemoved(rowName string) string {
	return rowName + " was removed. Undo brings it back."
}

func (say Words) FormAsksUnknown(toValidUTF8 string) string {
	return "The form asks for something that this program does not know: " + toValidUTF8 + "."
}

func (say Words) PressAgain() string { return "Go back and press the button again." }

func (say Words) OpenedWasIssued() string {
	return "This plan was issued before; what you have opened here is a new draft of its own. Work on the issued plan goes on there:"
}

func (say Words) Line(line int, text string, message string) string {
	return fmt.Sprintf("Line %d, %q: %s", line, text, message)
}

func (say Words) NothingToRead() string {
	return "Nothing to read: paste two columns of figures, setting and force."
}

func (say Words) RoundDoesNotFit() string {
	return "This round does not fit the plan any more: the plan was changed meanwhile."
}

func (say Words) BeginNewRound() string {
	return "Begin a new round from the drill's first page."
}

func (say Words) FormNeeded() string {
	return "A form is needed here."
}

func (say Words) TooManyEntries() string {
	return "The form has more entries than any plan."
}

func (say Words) NoSuchRam() string {
	return "There is no such ram on the shelf."
}

func (say Words) RamMayBeOff() string {
	return "It may have been taken off; look at the list of rams."
}

func (say Words) NoSuchPlan() string {
	return "There is no such plan in this archive."
}

func (say Words) PlanMayBeRemoved() string {
	return "It may have been removed with the bin; look on the shelf."
}

func (say Words) ExamNotUnderWay() string {
	return "This exam is not under way any more."
}

func (say Words) HandedInIsARecord() string {
	return "What was handed in or left is a record. A record, and an exam under way, can be removed with its person's records."
}

func (say Words) ChangedSinceOpenedChoose() string {
	return "the plan was changed since this page was opened, and nothing was done: look at it again, then choose"
}

func (say Words) FromAnotherSite() string {
	return "This request came from a page of another site."
}

func (say Words) OpenBenchAndTryThere() string {
	return "Open the bench by its own address and try again there."
}

func (say Words) AskedByAnotherSite() string { return "A page of another site asked for this." }

func (say Words) OpenBench() string { return "Open the bench by its own address." }

func (say Words) NotThisHost() string {
	return "This server does not answer for that host name."
}

func (say Words) UsePrintedAddress() string {
	return "Use the address that ramplan printed when it started."
}

func (say Words) NoSuchPage() string { return "There is no such page." }

func (say Words) MethodNotTaken() string { return "This page cannot be asked for in this way." }

func (say Words) NoHoldBegun() string {
	return "No hold was begun: the plan is not sound yet, has one already, or no step of it moves."
}

func (say Words) SendTheDocument() string {
	return "Send the document itself, with Content-Type application/json."
}
