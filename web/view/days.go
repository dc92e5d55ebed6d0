package view

import "ramplan/web/page"

// days tells how the plan fares on a worst day; nil where its window is not known.
func (w writer) days(d Drawings) *page.Days {
	day := w.r.WorstDay()
	if day == nil {
		return nil
	}
	out := &page.Days{Lead: w.pos.WorstDayLead(), Weak: w.pos.WeakDay(day), Shift: d.Shift, Spread: d.Spread, Wear: d.Wear}
	for _, l := range w.pos.WorstDay(w.p, day) {
		out.Lines = append(out.Lines, page.DayLine(l))
	}
	return out
}
