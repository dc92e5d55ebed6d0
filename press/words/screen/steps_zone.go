package screen

import "ramplan/press/words"

// ZoneStrayed says that a step does not end in its own zone.
func (say Words) ZoneStrayed(target float64) string {
	return "This step ends at " + words.Unit(words.Exact(target), "mm") + ", outside its zone: the signal is off there. A zone does not move with its step by itself."
}

// MoveZone is the button that moves it.
func (say Words) MoveZone(to [2]float64) string { return "Move the zone to " + zoneSaid(to) }

// ZoneMoved says what was done.
func (say Words) ZoneMoved(step string, to [2]float64) string {
	return step + ": its zone is now " + zoneSaid(to) + ", as wide as before and about the place where the step ends."
}

// NoZoneMoved says why nothing was.
func (say Words) NoZoneMoved() string {
	return "No zone was moved: the step ends in its zone already, or an entry is at fault."
}

func zoneSaid(z [2]float64) string {
	return words.Exact(z[0]) + " to " + words.Unit(words.Exact(z[1]), "mm")
}
