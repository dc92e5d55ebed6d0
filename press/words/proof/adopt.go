package proof

import (
	"strconv"

	"ramplan/press"
	"ramplan/press/proving"
	"ramplan/press/words"
)

// AdoptName is what an entry is called that a study offers.
func (say Words) AdoptName(path string) string {
	if f, ok := press.FieldAt(path); ok {
		return f.Label
	}
	return path
}

// AdoptValues writes an offered entry as the plan has it and as the study offers it.
func (say Words) AdoptValues(p *press.Plan, c proving.Change) (was, is string) {
	if c.Offers != nil {
		return say.curveSaid(c.Points), say.curveSaid(c.Offers)
	}
	write := func(x float64) string { return say.Positions(p).Fine().SetAt(x) }
	switch c.Path {
	case "ram.force_tolerance", "station.stiffness_tolerance":
		write = func(x float64) string { return "±" + thin + words.Unit(words.Full(x), "%") }
	case "ram.force_scatter":
		write = func(x float64) string { return "±" + thin + say.ForceFine(x) }
	case "station.stiffness":
		write = func(x float64) string { return say.Stiffness(x) }
	case "ram.repeatability", "station.reference_uncertainty":
		write = func(x float64) string { return "±" + thin + say.Positions(p).Fine().SetAt(x) }
	}
	return write(c.Was), write(c.Is)
}

// curveSaid is a curve in a few words.
func (say Words) curveSaid(points [][2]float64) string {
	if len(points) == 0 {
		return "no points"
	}
	first, last := points[0], points[len(points)-1]
	return strconv.Itoa(len(points)) + several(len(points), " point, ", " points, ") + say.Setting(first[0]) + " " + say.ForceFine(first[1]) + " to " + say.Setting(last[0]) + " " + say.ForceFine(last[1])
}

// AdoptDoes says what taking an entry over does to the plan.
func (say Words) AdoptDoes(path string) string {
	switch path {
	case "ram.curve.points":
		return "Forces, and with them the setting and where everything reads, follow what the cell measured."
	case "ram.force_tolerance", "ram.force_scatter":
		return "The band about the curve becomes what one further push keeps: the force window and the guard bands follow."
	case "ram.repeatability":
		return "The guard bands follow what the pushes on the master show. The scatter of the force is in it already."
	case "station.nest":
		return "Every proposed position moves with the nest; those set by hand stay."
	case "station.stiffness":
		return "How far the push bends the station, and with it every proposed position, follows."
	case "station.stiffness_tolerance":
		return "How well the bend of the station is known goes into the guard bands."
	case "station.reference_uncertainty":
		return "What a new start may move goes into the guard bands."
	}
	return ""
}
