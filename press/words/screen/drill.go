package screen

import (
	"strconv"

	"ramplan/press/words"
)

func (say Words) NothingToPractise() string {
	return "This plan has no push end or no zone yet, so its two lamps mean nothing that could be practised. Mend the plan first."
}

func (say Words) KindOfTitle(kind string, name string) string {
	return kind + " of " + name + " · ramplan"
}

func (say Words) AtTheStation() string { return "At the station" }

func (say Words) DoNotJudgeByPage() string { return "do not judge parts by this page" }

func (say Words) DoNotJudgeByExam() string { return "do not judge parts by what this exam asks" }

func (say Words) PractiseOnThatOne() string { return "practise on that one" }

func (say Words) NotReadyBare() string { return "NOT READY" }

func (say Words) OneRoundBeforeExam(levels int) string {
	return "Only one round before the exam? Take level 1 for the technician's, level " + strconv.Itoa(levels) + " for the setter's."
}

func (say Words) AtTheMostAsked(roundLength int) string {
	return "; with what is asked again, " + strconv.Itoa(roundLength) + " at the most"
}

func (say Words) DrawnFrom(items string, n int) string {
	return items + ", drawn from " + strconv.Itoa(n) + "."
}

func (say Words) LeftOut(kindNames string, why string) string {
	return "Left out: " + kindNames + ". " + why
}

func (say Words) MustBeRight(counted string, needed int) string {
	return counted + "; " + strconv.Itoa(needed) + " must be right"
}

func (say Words) Within(counted string) string { return ", within " + counted }

func (say Words) LooksLikeAReading(set string, pos words.Positions, heightOf float64) string {
	return words.Unit(set, "mm") + " looks like a reading, which is a position of the ram. A part that stops the ram there is about " +
		pos.At(heightOf) + " high."
}

func (say Words) FailsAnExam(trimSpace string, grave string) string {
	return trimSpace + " In an exam this answer alone fails: " + grave + "."
}

func (say Words) AskedAgain() string { return ", asked again because it was missed" }

func (say Words) RightAtFirstSoFar(right int, n int) string {
	return ". " + strconv.Itoa(right) + " of " + strconv.Itoa(n) + " right at the first go"
}

func (say Words) RightAtFirst(right int, counted string, counted2 string) string {
	return strconv.Itoa(right) + " of " + counted + " right at the first go; " + counted2 + " in all."
}

func (say Words) TookTooLong() string { return " It took longer than allowed." }
