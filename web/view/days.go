package view

import (
	"ramplan/press"
	"ramplan/web/page"
)

// DayDrawings are those of other days than the average, as SVG; empty where the risks of a
// plan are not known.
type DayDrawings struct{ Shift, Spread, Wear string }

// Days tells how the plan fares on a worst day; nil where its window is not known.
func Days(p *press.Plan, r *press.Result, d DayDrawings) *page.Days {
	day := r.WorstDay()
	if day == nil {
		return nil
	}
	pos := say.Positions(p)
	out := &page.Days{Lead: pos.WorstDayLead(), Weak: pos.WeakDay(day), Shift: d.Shift, Spread: d.Spread, Wear: d.Wear}
	for _, l := range pos.WorstDay(p, day) {
		out.Lines = append(out.Lines, page.DayLine(l))
	}
	return out
}
