package model

import "ramplan/press/verdict"

// verdict fills in what the two signals say of every reading (model section 8).
func (w *work) verdict() {
	if !w.zone.known {
		return
	}
	win := &w.r.Window
	drawing := verdict.Range{Low: win.GoodRange[0], High: win.GoodRange[1]}
	v := &Verdict{Segments: []Segment{}, End: PushEnd{w.zone.at.End, w.zone.at.InZone(w.zone.at.End)}}
	for _, s := range verdict.Segments(w.zone.at, drawing) {
		v.Segments = append(v.Segments, Segment(s))
	}
	table := verdict.NewTable(w.zone.at, verdict.Judgement{Drawing: drawing, Sure: w.sure()}, w.withoutInsert())
	v.Table, v.Ambiguous = Table(table), table.Ambiguous()
	w.r.Verdict = v
}

// sure is the range of readings that are good for certain: the acceptance range
// rounded inward, or, where nothing is left of it, the middle of the good range.
func (w *work) sure() verdict.Range {
	win, step := &w.r.Window, w.p.Station.PositionStep
	if a := win.Acceptance; a != nil {
		if low, high := roundUp(a[0], step), roundDown(a[1], step); low <= high+slack {
			return verdict.Range{Low: low, High: high}
		}
	}
	middle := (win.GoodRange[0] + win.GoodRange[1]) / 2
	return verdict.Range{Low: middle, High: middle}
}

// withoutInsert tells where the ram stops when the insert is missing.
func (w *work) withoutInsert() verdict.Insert {
	return verdict.Insert{
		Nowhere: !w.parts.inserted,
		Reading: w.p.Station.Nest - w.parts.without + w.seated.deflection,
		Checked: w.p.Station.PresenceCheck != "",
	}
}
