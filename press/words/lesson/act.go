package lesson

import (
	"fmt"

	"ramplan/press/words"
)

// SeveralInARowWhy says why parts that show the same lamps one after another stop the work.
func (say Words) SeveralInARowWhy(says string) string {
	return says + " Several in a row have one cause, and the next part will have it too. Press nothing until the cause is known."
}

func (say Words) SeveralInARow() string { return "What do you do now?" }

func (say Words) SeveralInARowStop() string {
	return "Stop, hold these parts back, and look for the cause, or call somebody who may."
}

func (say Words) SeveralInARowGoOn() string {
	return "Set this part apart as well, and go on with the next one."
}

func (say Words) TheLampsShow(pair words.Pair) string { return "The lamps show " + pair.String() + "." }

func (say Words) NthInARow(x int) string {
	return fmt.Sprintf("It is number %d in a row with these lamps.", x)
}

func (say Words) AtFaultStop() string {
	return "Stop. Nothing is pressed until the signals have been tested."
}

func (say Words) AtFaultGoOn() string { return "Set the part apart, and go on with the next one." }

func (say Words) AtFaultGood() string {
	return "Go on, if the next part shows the lamps of a good one."
}

// MeaningAndDeed joins what lamps say, which parts that means and what is done with them.
func (say Words) MeaningAndDeed(says string, orWords string, do string) string {
	return says + " That is " + orWords + ". " + do
}

func (say Words) DoAgain() string { return "Press the part once more, to be sure." }

func (say Words) DoBack() string { return "Put it back among the parts that are still to be pressed." }

func (say Words) DoBackWhy(again string) string { return "It would be pressed a second time. " + again }

func (say Words) DoStay() string { return "Leave it in the nest, and put the next insert on it." }

func (say Words) DoStayWhy(says string) string { return "Two inserts would lie in the nest. " + says }

func (say Words) PressedASecondTime() string { return "It would be pressed a second time. " }

func (say Words) DoMark() string { return "Mark it, and pass it on with the others." }

func (say Words) DoMarkWhy(says string) string { return "A mark makes no part good. " + says }

func (say Words) DoAgainPress() string { return "Press the part once more." }

func (say Words) DoGoOn() string { return "Set it apart, and go on with the next part." }

func (say Words) Do(pair words.Pair) string {
	return "The lamps show " + pair.String() + ". What happens to the part?"
}

func (say Words) PartsBeforeGood() string { return "The parts before it were good." }

func (say Words) PressedIsSetApart() string {
	return "What was pressed is set apart, marked. It is not pressed again."
}

func (say Words) SetApartMarked() string { return "Set it apart, marked. It is not pressed again." }
