package label

import (
	"ramplan/press/words"
)

func (say Words) FromHome(pos words.Positions, home float64) string {
	return "from home " + pos.Bare(home)
}

func (say Words) SlowContact(pos words.Positions, slowContact float64) string {
	return "slow contact " + pos.At(slowContact)
}

func (say Words) BeyondTheStroke() string { return ", beyond the stroke" }

func (say Words) EndOfStroke() string { return "end of stroke" }
