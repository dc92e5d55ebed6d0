package label

import (
	"ramplan/press/words"
)

func (say Words) DemandAtSeat(pos words.Positions, travel float64, from float64, d float64, to float64) string {
	return "At the seat, " + pos.At(travel) + " from first contact, the fit demands " + say.Force(from) + " to " + say.Force(d) + ", typically " + say.Force(to) + "."
}

func (say Words) RamGives(low float64, high float64, typical float64) string {
	return "The ram gives " + say.Force(low) + " to " + say.Force(high) + ", typically " + say.Force(typical) + "."
}

func (say Words) DepthAxis() string { return "depth from first contact, mm" }

func (say Words) ForceAxis() string { return "force, N" }

func (say Words) TightestFit(beyond string) string { return "tightest fit" + beyond }

func (say Words) LoosestFit() string { return "loosest fit" }

func (say Words) TightestStallsWeak() string { return "tightest fit stalls a weak ram" }

func (say Words) TypicalFitStalls() string { return "typical fit stalls" }

func (say Words) OnlyTouch() string {
	return "The parts only touch: no depth, no press-in force."
}
