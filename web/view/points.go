package view

import (
	"ramplan/press/words"
)

// PointsRead says what was read into the curve: points of % and N.
func PointsRead(points [][2]float64) string {
	settings, forces := [2]float64{points[0][0], points[0][0]}, [2]float64{points[0][1], points[0][1]}
	for _, p := range points {
		settings = [2]float64{min(settings[0], p[0]), max(settings[1], p[0])}
		forces = [2]float64{min(forces[0], p[1]), max(forces[1], p[1])}
	}
	if len(points) == 1 {
		return "Read 1 point: setting " + words.Unit(words.Exact(settings[0]), "%") + ", force " + words.Unit(words.Exact(forces[0]), "N") + "."
	}
	return "Read " + counted(len(points), "point", "points") + ": settings " + between(settings, "%") + ", forces " + between(forces, "N") + "."
}

func between(ends [2]float64, unit string) string {
	return words.Exact(ends[0]) + " to " + words.Unit(words.Exact(ends[1]), unit)
}
