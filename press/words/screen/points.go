package screen

import (
	"ramplan/press/words"
)

func (say Words) ReadOnePoint(how string, exact string, exact2 string) string {
	return "Read 1 point" + how + ": setting " + words.Unit(exact, "%") + ", force " + words.Unit(exact2, "N") + "."
}

func (say Words) ReadPoints(counted string, how string, between string, between2 string) string {
	return "Read " + counted + how + ": settings " + between + ", forces " + between2 + "."
}

func (say Words) HeadingSettingFirst(heading string) string {
	return " by the heading “" + heading + "”, setting first"
}

func (say Words) HeadingForceFirst(heading string) string {
	return " by the heading “" + heading + "”, force first"
}

func (say Words) TurnedRound() string { return ", turned round because the list fell" }

func (say Words) ColumnsSwapped(spread string, spread2 string) string {
	return spread + ", and " + spread2 + ": are the columns swapped?"
}

func (say Words) SwapTheColumns() string { return "Swap the columns" }

func (say Words) Fractions(spread string) string {
	return spread + ": are these fractions of the rated current?"
}

func (say Words) TakeTimesHundred() string { return "Take them times 100" }

func (say Words) SettingsDoNotRise() string { return "The settings do not rise from row to row." }

func (say Words) PutInOrder() string { return "Put the rows in order" }

func (say Words) SpreadOfColumn(noun string, between string) string {
	return noun + "s from " + between
}
