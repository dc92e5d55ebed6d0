package view

import (
	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// groups are the figures behind the setpoints, with the drawing that shows them.
func (w writer) groups(d Drawings) []page.Figures {
	out := []page.Figures{{ID: "force", Label: "Push force", Drawing: d.Force, Rows: w.force()}}
	if w.r.Joint != nil {
		out = append(out, page.Figures{ID: "joint", Label: "What the joint takes and holds", Drawing: d.PressIn, Rows: w.joint()})
	}
	if !w.r.Pressable() { // nothing that rests on a seated part has a figure
		return out
	}
	if rows := w.probe(); rows != nil {
		out = append(out, page.Figures{ID: "probe", Label: "The probe", Drawing: d.Probe, Rows: rows})
	}
	cycle := d.Cycle
	if rows := w.run(); rows != nil {
		cycle = "" // the ram runs through the steps and not through the plain cycle
		out = append(out, page.Figures{ID: "run", Label: "Where each step ends", Drawing: d.Run, Rows: rows, Run: w.onRun(d.RunPlaces)})
	}
	return append(out,
		page.Figures{ID: "cycle", Label: "One cycle", Drawing: cycle, Rows: w.cycle()},
		page.Figures{ID: "travel", Label: "Travel and window", Rows: w.travel()},
		page.Figures{ID: "risk", Label: "Shares of all parts", Rows: w.risk()},
	)
}

func figure(label string, x float64, decimals int, unit string) page.Figure {
	return page.Figure{Label: label, Value: words.Fixed(x, decimals), Unit: unit, Exact: words.Exact(x)}
}

func (w writer) force() []page.Figure {
	f := w.r.Force
	out := []page.Figure{
		figure("Needed at the seat", f.Need, 0, "N"),
		figure("Allowed at most", f.Cap, 0, "N"),
		{Label: "At this setting", Value: span(f.Low, f.High, 0), Unit: "N", Note: words.AtRest(w.r)},
	}
	if f.Settings != nil {
		out = append(out, page.Figure{Label: "Settings inside", Value: span(f.Settings[0], f.Settings[1], 1), Unit: "%"})
	} else {
		out = append(out, page.Figure{Label: "Settings inside", Value: "none"})
	}
	if f.Steps != nil {
		out = append(out, page.Figure{Label: "Steps inside", Value: words.Trimmed(f.Steps[0], 2) + " to " + words.Trimmed(f.Steps[1], 2), Unit: "%"})
	}
	return append(out,
		page.Figure{Label: "One step is worth", Value: words.Fixed(f.StepWorth, 0), Unit: "N", Exact: words.Exact(f.StepWorth), Note: "at this setting"},
		page.Figure{Label: "Met at first contact", Value: words.BlowFigure(w.r, w.r.Impact.Contact), Unit: "N", Exact: words.Exact(w.r.Impact.Contact), Note: words.BlowNote(w.r)},
		page.Figure{Label: "Met at the seat", Value: words.Fixed(f.Typical, 0) + " to " + words.BlowFigure(w.r, w.r.Impact.SeatExpected), Unit: "N", Exact: words.Exact(w.r.Impact.SeatExpected), Note: words.SeatBlow(w.r)},
		page.Figure{Label: "At the seat, undamped", Value: words.BlowFigure(w.r, w.r.Impact.SeatBound), Unit: "N", Note: words.BoundNote(w.r)},
		page.Figure{Label: "Met in the approach", Value: "at least " + words.Fixed(w.r.Impact.Early, 0), Unit: "N", Exact: words.Exact(w.r.Impact.Early), Note: words.EarlyNote(w.r)},
	)
}

func span(a, b float64, decimals int) string {
	return words.Fixed(a, decimals) + " to " + words.Fixed(b, decimals)
}

func (w writer) travel() []page.Figure {
	t, n := w.r.Travel, w.r.Window
	out := []page.Figure{
		w.position("First contact", &t.Contact),
		w.position("Slow travel to contact", &t.SlowContact),
		w.position("Press-in travel", &t.PressIn),
		w.position("Overtravel", t.Overtravel),
		{Label: "Readings of good parts", Value: span(n.GoodRange[0], n.GoodRange[1], 3), Unit: "mm"},
		{Label: "Guard band", Value: words.Fixed(n.GuardBand, 3), Unit: "mm"},
	}
	if n.Overlap != nil {
		out = append(out, page.Figure{Label: "Accepted readings", Value: w.pos.Bare(n.Overlap[0]) + " to " + w.pos.Bare(n.Overlap[1]), Unit: "mm"})
	} else {
		out = append(out, page.Figure{Label: "Accepted readings", Value: "none"})
	}
	return append(out, page.Figure{Label: "Uncertainty of a reading", Value: "± " + words.Fixed(2*n.Uncertainty, 3), Unit: "mm", Note: "two standard deviations"})
}

func (w writer) cycle() []page.Figure {
	c := &w.r.Cycle
	out := []page.Figure{lasting("Cycle, nominal part", &c.Total)}
	for _, x := range words.CyclePhases(c) {
		out = append(out, page.Figure{Label: words.UpperFirst(x.Name), Value: x.Bare, Unit: "s", Exact: words.Exact(x.Seconds)})
	}
	missing := lasting("Cycle, part missing", c.MissingWatched)
	if c.MissingWatched != nil {
		missing.Note = words.MissingCycle(w.r)
	}
	if words.TwoLooks(w.r) {
		first := maybe("Watch time of the probe, at least", w.r.Probe.WatchTime, 2, "s", words.WatchBrief(w.r))
		first.Value = words.AfterBare(*w.r.Probe.WatchTime)
		out = append(out, first)
	}
	out = append(out, watchTime(w.r), missing, figure("Peak speed", c.PeakSpeed, 0, "mm/s"))
	return append(out, maybe("Heats like", w.r.Heating.RMSSetting, 1, "%", "held without end"))
}

// lasting is a time, rounded as it is everywhere.
func lasting(label string, s *float64) page.Figure {
	f := maybe(label, s, 2, "s", "")
	if s != nil {
		f.Value = words.SecondsBare(*s)
	}
	return f
}

// watchTime is rounded up: who waits for less hears too early.
func watchTime(r *press.Result) page.Figure {
	least := r.Cycle.WatchTime
	f := maybe("Watch time, at least", least, 2, "s", words.WatchBrief(r))
	if least != nil {
		f.Value = words.AfterBare(*least)
	}
	return f
}

func maybe(label string, x *float64, decimals int, unit, note string) page.Figure {
	if x == nil {
		return page.Figure{Label: label, Value: none}
	}
	f := figure(label, *x, decimals, unit)
	f.Note = note
	return f
}

func (w writer) risk() []page.Figure {
	r := w.r.Risk
	return []page.Figure{
		{Label: "Parts within the drawing", Value: words.Share(r.ConformingShare), Exact: words.Exact(r.ConformingShare)},
		share("Wrong heights accepted", r.ConsumerPPM),
		share("Good parts refused", r.ProducerPPM),
		share("Met in the approach", &r.EarlyContactPPM),
	}
}

func share(label string, x *float64) page.Figure {
	if x == nil {
		return page.Figure{Label: label, Value: "not known"}
	}
	return page.Figure{Label: label, Value: words.PPM(*x), Exact: words.Exact(*x)}
}

func (w writer) joint() []page.Figure {
	j := w.r.Joint
	out := []page.Figure{triple("Demand at the seat", &j.Demand, 0, "N")}
	add := func(label string, t *press.Triple, decimals int, unit string) {
		if t != nil {
			out = append(out, triple(label, t, decimals, unit))
		}
	}
	add("Interference", j.Interference, 1, "µm")
	add("After smoothing", j.Effective, 1, "µm")
	add("Pressure", j.Pressure, 1, "MPa")
	add("Holding force", j.Holding, 0, "N")
	used := func(label string, share, mises *float64, where string) {
		if share != nil {
			out = append(out, maybe(label, new(100**share), 0, "%", "von Mises up to "+words.Unit(words.Fixed(*mises, 0), "MPa")+" "+where))
		}
	}
	used("Hub used", j.HubUtilisation, j.HubMises, "at its bore")
	if w.p.Joint.Insert.Bore > 0 {
		used("Insert used", j.InsertUtilisation, j.InsertMises, "at its bore")
		add("Bore closes by", j.BoreClosure, 1, "µm")
	} else {
		used("Insert used", j.InsertUtilisation, j.InsertMises, "all through it")
	}
	add("Hub grows by", j.HubGrowth, 1, "µm")
	return out
}

func triple(label string, t *press.Triple, decimals int, unit string) page.Figure {
	return page.Figure{Label: label, Value: span(t[0], t[2], decimals), Unit: unit, Note: "mean " + words.Fixed(t[1], decimals)}
}
