package screen

import (
	"ramplan/press/words"
)

func (say Words) Read1PointSettingForce(how string, exact string, exact2 string) string {
	return "Read 1 point" + how + ": setting " + words.Unit(exact, "%") + ", force " + words.Unit(exact2, "N") + "."
}

func (say Words) ReadSettingsForces(counted string, how string, between string, between2 string) string {
	return "Read " + counted + how + ": settings " + between + ", forces " + between2 + "."
}

func (say Words) ByTheHeadingSettingFirst(heading string) string {
	return " by the heading “" + heading + "”, setting first"
}

func (say Words) ByTheHeadingForceFirst(heading string) string {
	return " by the heading “" + heading + "”, force first"
}

func (say Words) TurnedRoundBecauseTheList() string { return ", turned round because the list fell" }

func (say Words) AndAreTheColumnsSwapped(spread string, spread2 string) string {
	return spread + ", and " + spread2 + ": are the columns swapped?"
}

func (say Words) SwapTheColumns() string { return "Swap the columns" }

func (say Words) AreTheseFractionsOfThe(spread string) string {
	return spread + ": are these fractions of the rated current?"
}

func (say Words) TakeThemTimes100() string { return "Take them times 100" }

func (say Words) TheSettingsDoNotRise() string { return "The settings do not rise from row to row." }

func (say Words) PutTheRowsInOrder() string { return "Put the rows in order" }

func (say Words) SFrom(noun string, between string) string { return noun + "s from " + between }
