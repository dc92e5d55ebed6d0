package lesson

import (
	"fmt"

	"ramplan/press/words"
)

func (say Words) NoReactionList() string { return "The plan has no reaction list." }

func (say Words) CheckFirst() string { return "What do you check first?" }

func (say Words) CheckNext() string { return "What do you check next?" }

func (say Words) FirstFoundNothing(asked string) string {
	return "You did what is first on the list and found nothing wrong: " + asked
}

func (say Words) ThisFoundNothing(asked string) string {
	return "You did this and found nothing wrong: " + asked
}

func (say Words) ComesLater(order string) string {
	return "It is on the list, but comes later. " + order
}

func (say Words) FirstWithOtherLamps(pair words.Pair, says string, order string) string {
	return "That comes first with " + pair.String() + ". " + says + " Then it is: " + order
}

func (say Words) NumberInARow(good int) string {
	return fmt.Sprintf("It is number %d in a row with these lamps.", good)
}

func (say Words) NumberInARowAfterGood(x int, good int) string {
	return fmt.Sprintf("It is number %d in a row with these lamps. The %d parts before them were good.", x, good)
}

func (say Words) ToolWasChanged() string {
	return "The tool was changed a moment ago; this is the first part since."
}

func (say Words) NestWasOut() string {
	return "The nest was taken out and put back; this is the first part since."
}

func (say Words) NewLot() string { return "A new lot of parts was opened; this is its first." }

func (say Words) SinceTheShiftBegan(x int, x2 int) string {
	return fmt.Sprintf("The shift began %d minutes ago, and all %d parts since showed these lamps.", x, x2)
}

func (say Words) SoManyGoodBefore(good int) string {
	return fmt.Sprintf("The %d parts before it were good.", good)
}

func (say Words) InThisOrder() string { return "In this order:" }

func (say Words) AllInAnyOrder() string { return "In any order (common practice):" }

func (say Words) FirstOfAll() string { return "First of all:" }

func (say Words) ThenInAnyOrder() string { return " Then, in any order:" }

func (say Words) Numbered(from int, c string) string { return fmt.Sprintf(" %d. %s", from, c) }
