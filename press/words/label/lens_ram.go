package label

import (
	"ramplan/press/words"
)

func (say Words) NominalPart(pos words.Positions, seat float64) string {
	return "nominal part " + pos.Bare(seat)
}

func (say Words) StopsAtPushEnd(pos words.Positions, seat float64) string {
	return "stops at the push end; nominal part " + pos.Bare(seat)
}

func (say Words) StopsBeforeNominal(pos words.Positions, seat float64) string {
	return "stops before nominal " + pos.Bare(seat)
}

func (say Words) NoInsert(pos words.Positions, missing float64) string {
	return "no insert " + pos.Bare(missing)
}

func (say Words) ToldByOtherCheck() string { return ", told by the other check only" }

func (say Words) LooksGoodNoInsert(pos words.Positions, missing float64) string {
	return "looks good: no insert " + pos.Bare(missing)
}
