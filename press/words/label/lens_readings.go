package label

import (
	"ramplan/press/words"
)

func (say Words) TheGuardBandsOverlapBy(pos words.Positions, from float64) string {
	return "the guard bands overlap by " + pos.Length(from)
}

func (say Words) GuardBands12(pos words.Positions, guard float64) string {
	return "guard bands " + pos.Length(guard)
}
