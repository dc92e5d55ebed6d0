package model

import "ramplan/press/verdict"

// verdict tells what the two signals say of every reading (model section 8); nil
// where they are not known.
func (z *signals) verdict(win *Readings, sure verdict.Range, missing verdict.Insert) *Verdict {
	if !z.known {
		return nil
	}
	drawing := verdict.Range{Low: win.GoodRange[0], High: win.GoodRange[1]}
	v := &Verdict{Segments: []Segment{}, End: PushEnd{z.at.End, z.at.InZone(z.at.End)}}
	for _, s := range verdict.Segments(z.at, drawing) {
		v.Segments = append(v.Segments, Segment(s))
	}
	table := verdict.NewTable(z.at, verdict.Judgement{Drawing: drawing, Sure: sure}, missing)
	v.Table, v.Ambiguous = Table(table), table.Ambiguous()
	return v
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
