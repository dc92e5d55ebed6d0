package page

// Days are how a plan fares when not all goes as on average.
type Days struct {
	Lead                string
	Lines               []DayLine
	Weak                string // what a weak ram leaves unseated
	Shift, Spread, Wear string // SVG
}

// A DayLine is one kind of day with the shares of it.
type DayLine struct{ Label, Accept, Reject, Note string }
