package label

import (
	"ramplan/press/words"
)

func (say Words) GuardBandsOverlap(pos words.Positions, from float64) string {
	return "the guard bands overlap by " + pos.Length(from)
}
