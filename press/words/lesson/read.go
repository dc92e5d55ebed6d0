package lesson

import (
	"ramplan/press/words"
)

func (say Words) AFaultOfTheStation() string {
	return "A fault of the station: no part shows these lamps"
}

func (say Words) TheLampsDoNotTell() string {
	return "The lamps do not tell: they stand for parts that must be treated differently"
}

func (say Words) TooTall() string { return "Too tall" }

func (say Words) TooShort() string { return "Too short" }

func (say Words) NoInsertInTheNest() string { return "No insert in the nest" }

func (say Words) GoodAsFarAsThese() string { return "Good, as far as these lamps can tell" }

func (say Words) AGoodPart() string { return "a good part" }

func (say Words) APartThatStandsToo() string { return "a part that stands too tall" }

func (say Words) APartThatStandsTooShort() string { return "a part that stands too short" }

func (say Words) AMissingInsert() string { return "a missing insert" }

func (say Words) APartWasPressedThe(on words.Pair) string {
	return "A part was pressed. The lamps that count are: " + on.String() + ". What is it?"
}

func (say Words) InThisPlanThatIs(says string, orWords string, late string) string {
	return says + " In this plan that is " + orWords + "." + late
}

func (say Words) TheLampsDoNotTellWhich() string {
	return " The lamps do not tell which: set the part apart and measure it."
}

func (say Words) ReadFaultWhy(says string, upper string) string {
	return says + " " + upper + " shows these lamps: they are no proof of a fault of the station."
}

func (say Words) OrThePartIsSeated() string {
	return " Or the part is seated, and its force was not reported in time: then the ram stands before the push end."
}

func (say Words) InThisPlanShowsNone(partOf string) string {
	return " In this plan " + partOf + " shows none of the four pairs."
}

func (say Words) NoPartLeadsToThese(s string) string { return s + " No part leads to these lamps." }

func (say Words) TheseLampsMean(s string, orWords string) string {
	return s + " These lamps mean " + orWords + "."
}

func (say Words) WhichLampsDoesShow(partOf string) string {
	return "Which lamps does " + partOf + " show?"
}

func (say Words) WhichLampsDoesAPart() string {
	return "Which lamps does a part show whose height lies in the middle of the limits?"
}

func (say Words) SuchAPartShowsA(orPairs string, says string) string {
	return "Such a part shows " + orPairs + ". " + says + " A good part near a limit may be refused: it is set apart and measured."
}

func (say Words) ItIsThanTheThat(side string, limit float64) string {
	return "It is " + side + " than the " + say.At(limit) + " that the drawing allows."
}

func (say Words) ThatIsShows(says string, orWords string, partOf string, orPairs string) string {
	return says + " That is " + orWords + "; " + partOf + " shows " + orPairs + "."
}

func (say Words) NoPartLeadsToTheseLamps() string { return "No part leads to these lamps." }

func (say Words) ThatIsGoodAsFar() string {
	return "That is good, as far as these lamps can tell, and it is passed on."
}

func (say Words) ThatIsAndTheyStand(orWords string) string {
	return "That is " + orWords + ", and they stand for no other part."
}

func (say Words) ThatIsAllOfThese(orWords string) string {
	return "That is " + orWords + ". All of these are treated the same way."
}

func (say Words) FaultOfStation() string { return "a fault of the station" }

func (say Words) Or() string { return ", or " }
