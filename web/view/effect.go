package view

import (
	"slices"

	"ramplan/web/page"
)

// An Effect is what a change of the entries does: figures that differ, findings that come and
// that go.
type Effect struct {
	Figures   []page.ComparedFigure
	New, Gone []page.Finding
}

// EffectOf is what a change does to setpoints, window and shares, and to the findings. Both
// sides are sound plans.
func EffectOf(was, is Side) Effect {
	out := Effect{New: missingFrom(was.Result, is.Result), Gone: missingFrom(is.Result, was.Result)}
	told := []string{setpointsHead, say.TravelAndWindow(), say.SharesByTheClosedForm()}
	for _, f := range figuresOf(was, is) {
		if f.Was != f.Is && slices.Contains(told, f.Group) {
			out.Figures = append(out.Figures, f)
		}
	}
	return out
}
