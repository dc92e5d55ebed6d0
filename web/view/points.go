package view

import (
	"slices"

	"ramplan/press/words"
	"ramplan/web/page"
)

// A Reading is what two columns of text were read as.
type Reading struct {
	Points     [][2]float64 // %, N
	Heading    string       // that named the columns; empty where none did
	ForceFirst bool         // by that heading
	Turned     bool         // the list fell and was turned round
}

// Said says what was read into the curve, and how.
func (r Reading) Said() string {
	settings, forces := r.ends()
	if len(r.Points) == 1 {
		return say.ReadOnePoint(r.how(), words.Exact(settings[0]), words.Exact(forces[0]))
	}
	return say.ReadPoints(counted(len(r.Points), "point", "points"), r.how(), between(settings, "%"), between(forces, "N"))
}

// how says by what the columns were told apart, and whether rows were moved.
func (r Reading) how() string {
	s := ""
	if r.Heading != "" {
		s = say.HeadingSettingFirst(r.Heading)
		if r.ForceFirst {
			s = say.HeadingForceFirst(r.Heading)
		}
	}
	if r.Turned {
		s += say.TurnedRound()
	}
	return s
}

// Doubts are questions about figures that may be meant in another way, each with
// what would mend it. Nothing is changed without the button.
func (r Reading) Doubts() []page.Doubt {
	settings, forces := r.ends()
	var out []page.Doubt
	if settings[1] > 100 && forces[1] <= settings[1] {
		out = append(out, page.Doubt{
			Text: say.ColumnsSwapped(spread("Setting", settings, "%"), spread("force", forces, "N")),
			Do:   DoSwap, Button: say.SwapTheColumns(),
		})
	}
	if settings[0] >= 0 && settings[1] <= 1 {
		out = append(out, page.Doubt{
			Text: say.Fractions(spread("Setting", settings, "%")),
			Do:   DoHundred, Button: say.TakeTimesHundred(),
		})
	}
	if !slices.IsSortedFunc(r.Points, bySetting) {
		out = append(out, page.Doubt{Text: say.SettingsDoNotRise(), Do: DoSort, Button: say.PutInOrder()})
	}
	return out
}

func bySetting(a, b [2]float64) int {
	switch {
	case a[0] < b[0]:
		return -1
	case a[0] > b[0]:
		return 1
	}
	return 0
}

// ends are the least and the greatest setting and force.
func (r Reading) ends() (settings, forces [2]float64) {
	settings, forces = [2]float64{r.Points[0][0], r.Points[0][0]}, [2]float64{r.Points[0][1], r.Points[0][1]}
	for _, p := range r.Points {
		settings = [2]float64{min(settings[0], p[0]), max(settings[1], p[0])}
		forces = [2]float64{min(forces[0], p[1]), max(forces[1], p[1])}
	}
	return settings, forces
}

// spread says between which ends a column lies.
func spread(noun string, ends [2]float64, unit string) string {
	if ends[0] == ends[1] {
		return noun + " " + words.Unit(words.Exact(ends[0]), unit)
	}
	return say.SpreadOfColumn(noun, between(ends, unit))
}

func between(ends [2]float64, unit string) string {
	return words.Exact(ends[0]) + " to " + words.Unit(words.Exact(ends[1]), unit)
}
