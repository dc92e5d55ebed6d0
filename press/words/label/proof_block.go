package label

import (
	"math"

	"ramplan/press/words"
)

// BlockTitle is the message of pushes on a block.
func (say Words) BlockTitle(stiffness, off *float64) string {
	switch {
	case stiffness == nil:
		return "No stiffness can be told from these pushes"
	case off == nil:
		return "Stiffness " + perMM(*stiffness) + ", its uncertainty not known"
	}
	return "The station gives way by 1 mm per " + words.Unit(words.Fixed(*stiffness/1000, 1), "kN") + ", ±\u202f" + words.Unit(words.Fixed(*off/1000, 1), "kN")
}

func perMM(x float64) string { return words.Unit(words.Fixed(x, 0), "N/mm") }

func (say Words) ForceOnBlockAxis(measured bool) string {
	if measured {
		return "force, measured, N"
	}
	return "force by the plan's curve, N"
}

func (say Words) PositionAxis() string { return "reading + height of the block, mm" }

func (say Words) RestAxis() string { return "off the line by, mm" }

func (say Words) LineThrough() string { return "line" }

func (say Words) LineBand() string { return "its 95 % limits" }

func (say Words) OnTheLine(n int) string { return counting(n, "push", "pushes") + " in the line" }

func (say Words) BlockReach(n, spans int) string {
	return whole(n) + " pushes, drawn at " + whole(spans) + " forces from lowest to highest"
}

func (say Words) StartUp(n int, below float64) string {
	return counting(n, "push", "pushes") + " under " + say.Force(below) + " left out: play was closing"
}

func (say Words) BlockText(pos words.Positions, n, used, levels int, at, slope float64, sd *float64) string {
	s := counting(n, "push", "pushes") + " at " + counting(levels, "force", "forces") + ", " + whole(used) + " in the line. The line starts at " + pos.At(at) + " at 0 N and rises by " +
		pos.With(6).At(1000*slope) + " per kN"
	if sd != nil {
		s += "; pushes scatter about it by " + pos.With(4).At(*sd) + " (sd)"
	}
	return words.UpperFirst(s) + "."
}

func (say Words) NestText(pos words.Positions, at, force float64, off *float64) string {
	s := "Nest at " + say.Force(force) + ": " + pos.At(at)
	if off != nil {
		s += " ±\u202f" + pos.With(4).At(*off)
	}
	return s + "."
}

func (say Words) BlockReachText(pos words.Positions, from, to, most float64) string {
	return "Forces from " + say.Force(from) + " to " + say.Force(to) + "; no push in the line lies off it by more than " + pos.With(4).At(math.Abs(most)) + "."
}
