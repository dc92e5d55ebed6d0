package screen

import (
	"ramplan/press/words"
)

func (say Words) AddA(noun string) string { return "Add a " + noun }

func (say Words) InBrackets(path string, d string) string {
	return " In brackets: " + words.ChoiceOf(path, d) + ", while nothing is chosen."
}

func (say Words) ButtonsOf(toLower string) string { return "Buttons of " + toLower }
