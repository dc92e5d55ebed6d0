package lesson

import (
	"ramplan/press/words"
)

func (say Words) ReadFault() string {
	return "A fault of the station: no part shows these lamps"
}

func (say Words) ReadUntold() string {
	return "The lamps do not tell: they stand for parts that must be treated differently"
}

func (say Words) ReadTall() string { return "Too tall" }

func (say Words) ReadShort() string { return "Too short" }

func (say Words) ReadMissing() string { return "No insert in the nest" }

func (say Words) ReadGood() string { return "Good, as far as these lamps can tell" }

func (say Words) GoodPart() string { return "a good part" }

func (say Words) TallPart() string { return "a part that stands too tall" }

func (say Words) ShortPart() string { return "a part that stands too short" }

func (say Words) MissingInsert() string { return "a missing insert" }

func (say Words) ReadPair(on words.Pair) string {
	return "A part was pressed. The lamps that count are: " + on.String() + ". What is it?"
}

func (say Words) InThisPlan(says string, orWords string, late string) string {
	return says + " In this plan that is " + orWords + "." + late
}

func (say Words) UntoldWhich() string {
	return " The lamps do not tell which: set the part apart and measure it."
}

func (say Words) ReadFaultWhy(says string, upper string) string {
	return says + " " + upper + " shows these lamps: they are no proof of a fault of the station."
}

func (say Words) OrSeatedLate() string {
	return " Or the part is seated, and its force was not reported in time: then the ram stands before the push end."
}

func (say Words) ShowsNoPair(partOf string) string {
	return " In this plan " + partOf + " shows none of the four pairs."
}

func (say Words) NoPartShowsThese(s string) string { return s + " No part leads to these lamps." }

func (say Words) LampsMean(s string, orWords string) string {
	return s + " These lamps mean " + orWords + "."
}

func (say Words) WhichLampsShows(partOf string) string {
	return "Which lamps does " + partOf + " show?"
}

func (say Words) WhichLampsShowsTheMiddle() string {
	return "Which lamps does a part show whose height lies in the middle of the limits?"
}

func (say Words) MiddleShows(orPairs string, says string) string {
	return "Such a part shows " + orPairs + ". " + says + " A good part near a limit may be refused: it is set apart and measured."
}

func (say Words) BeyondTheLimit(side string, limit float64) string {
	return "It is " + side + " than the " + say.At(limit) + " that the drawing allows."
}

func (say Words) MeansOtherThan(says string, orWords string, partOf string, orPairs string) string {
	return says + " That is " + orWords + "; " + partOf + " shows " + orPairs + "."
}

func (say Words) NoPartForLamps() string { return "No part leads to these lamps." }

func (say Words) GoodAndPassedOn() string {
	return "That is good, as far as these lamps can tell, and it is passed on."
}

func (say Words) NoOtherPart(orWords string) string {
	return "That is " + orWords + ", and they stand for no other part."
}

func (say Words) TreatedTheSame(orWords string) string {
	return "That is " + orWords + ". All of these are treated the same way."
}

func (say Words) FaultOfStation() string { return "a fault of the station" }

func (say Words) Or() string { return ", or " }
