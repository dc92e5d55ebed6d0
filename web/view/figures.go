package view

import (
	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// groups are the figures behind the setpoints, with the drawing that shows them.
func (w writer) groups(d Drawings) []page.Figures {
	out := []page.Figures{{ID: "force", Label: say.PushForce(), Drawing: d.Force, Rows: w.force()}}
	if w.r.Joint != nil {
		out = append(out, page.Figures{ID: "joint", Label: say.JointHead(), Drawing: d.PressIn, Rows: w.joint()})
	}
	if !w.r.Pressable() { // nothing that rests on a seated part has a figure
		return out
	}
	if rows := w.probe(); rows != nil {
		out = append(out, page.Figures{ID: "probe", Label: say.ProbeHead(), Drawing: d.Probe, Rows: rows})
	}
	cycle := d.Cycle
	if rows := w.run(); rows != nil {
		cycle = "" // the ram runs through the steps and not through the plain cycle
		out = append(out, page.Figures{ID: "run", Label: say.RunHead(), Drawing: d.Run, Rows: rows, Run: w.onRun(d.RunPlaces)})
	}
	return append(out,
		page.Figures{ID: "cycle", Label: say.OneCycle(), Drawing: cycle, Rows: w.cycle()},
		page.Figures{ID: "travel", Label: say.TravelAndWindow(), Rows: w.travel()},
		w.risk(),
	)
}

func figure(label string, x float64, decimals int, unit string) page.Figure {
	return page.Figure{Label: label, Value: words.Fixed(x, decimals), Unit: unit, Exact: words.Exact(x)}
}

func (w writer) force() []page.Figure {
	f := w.r.Force
	out := []page.Figure{
		figure(say.NeededAtTheSeat(), f.Need, 0, "N"),
		figure(say.AllowedAtMost(), f.Cap, 0, "N"),
		{Label: say.AtThisSetting(), Value: span(f.Low, f.High, 0), Unit: "N", Note: say.AtRest(w.r)},
	}
	if f.Settings != nil {
		out = append(out, page.Figure{Label: say.SettingsInside(), Value: span(f.Settings[0], f.Settings[1], 1), Unit: "%"})
	} else {
		out = append(out, page.Figure{Label: say.SettingsInside(), Value: "none"})
	}
	if f.Steps != nil {
		out = append(out, page.Figure{Label: say.StepsInside(), Value: words.Trimmed(f.Steps[0], 2) + " to " + words.Trimmed(f.Steps[1], 2), Unit: "%"})
	}
	return append(out,
		page.Figure{Label: say.OneStepIsWorth(), Value: words.Fixed(f.StepWorth, 0), Unit: "N", Exact: words.Exact(f.StepWorth), Note: say.OfThisSetting()},
		page.Figure{Label: say.MetAtFirstContact(), Value: say.BlowFigure(w.r, w.r.Impact.Contact), Unit: "N", Exact: words.Exact(w.r.Impact.Contact), Note: words.BlowNote(w.r)},
		page.Figure{Label: say.MetAtTheSeat(), Value: words.Fixed(f.Typical, 0) + " to " + say.BlowFigure(w.r, w.r.Impact.SeatExpected), Unit: "N", Exact: words.Exact(w.r.Impact.SeatExpected), Note: say.SeatBlow(w.r)},
		page.Figure{Label: say.AtTheSeatUndamped(), Value: say.BlowFigure(w.r, w.r.Impact.SeatBound), Unit: "N", Note: say.BoundNote(w.r)},
		page.Figure{Label: say.MetInTheApproach(), Value: say.AtLeast(w.r.Impact.Early), Unit: "N", Exact: words.Exact(w.r.Impact.Early), Note: say.EarlyNote(w.r)},
	)
}

func span(a, b float64, decimals int) string {
	return words.Fixed(a, decimals) + " to " + words.Fixed(b, decimals)
}

func (w writer) travel() []page.Figure {
	t, n := w.r.Travel, w.r.Window
	out := []page.Figure{
		w.position(say.FirstContact(), &t.Contact),
		w.position(say.SlowTravelToContact(), &t.SlowContact),
		w.position(say.PressInTravel(), &t.PressIn),
		w.position("Overtravel", t.Overtravel),
		{Label: say.ReadingsOfGoodParts(), Value: span(n.GoodRange[0], n.GoodRange[1], 3), Unit: "mm"},
		{Label: say.GuardBand(), Value: words.Fixed(n.GuardBand, 3), Unit: "mm"},
	}
	if n.Overlap != nil {
		out = append(out, page.Figure{Label: say.AcceptedReadings(), Value: w.pos.Bare(n.Overlap[0]) + " to " + w.pos.Bare(n.Overlap[1]), Unit: "mm"})
	} else {
		out = append(out, page.Figure{Label: say.AcceptedReadings(), Value: "none"})
	}
	return append(out, page.Figure{Label: say.UncertaintyOfAReading(), Value: "± " + words.Fixed(2*n.Uncertainty, 3), Unit: "mm", Note: say.TwoStandardDeviations()})
}

func (w writer) cycle() []page.Figure {
	c := &w.r.Cycle
	out := []page.Figure{lasting(say.CycleNominalPart(), &c.Total)}
	for _, x := range words.CyclePhases(c) {
		out = append(out, page.Figure{Label: words.UpperFirst(x.Name), Value: x.Bare, Unit: "s", Exact: words.Exact(x.Seconds)})
	}
	missing := lasting(say.CyclePartMissing(), c.MissingWatched)
	if c.MissingWatched != nil {
		missing.Note = say.MissingCycle(w.r)
	}
	if words.TwoLooks(w.r) {
		first := maybe(say.WatchTimeOfTheProbe(), w.r.Probe.WatchTime, 2, "s", say.WatchBrief(w.r))
		first.Value = say.AfterBare(*w.r.Probe.WatchTime)
		out = append(out, first)
	}
	out = append(out, watchTime(w.r), missing, figure(say.PeakSpeed(), c.PeakSpeed, 0, "mm/s"))
	return append(out, maybe(say.HeatsLike(), w.r.Heating.RMSSetting, 1, "%", say.HeldWithoutEnd()))
}

// lasting is a time, rounded as it is everywhere.
func lasting(label string, s *float64) page.Figure {
	f := maybe(label, s, 2, "s", "")
	if s != nil {
		f.Value = say.SecondsBare(*s)
	}
	return f
}

// watchTime is rounded up: who waits for less hears too early.
func watchTime(r *press.Result) page.Figure {
	least := r.Cycle.WatchTime
	f := maybe(say.WatchTimeAtLeast(), least, 2, "s", say.WatchBrief(r))
	if least != nil {
		f.Value = say.AfterBare(*least)
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

// risk is what the closed form knows at once; the shares that come while one reads go
// further, and it leads to them.
func (w writer) risk() page.Figures {
	r, marks := w.r.Risk, say.ClosedMarks(w.r)
	share := func(label string, x *float64, marks string) page.Figure {
		f := share(label, x)
		f.Marks = marks
		return f
	}
	return page.Figures{ID: "risk", Label: say.SharesByTheClosedForm(), Says: marks.Says, Rows: []page.Figure{
		{Label: say.PartsWithinTheDrawing(), Value: say.Share(r.ConformingShare), Exact: words.Exact(r.ConformingShare)},
		share(say.WrongHeightsAccepted(), r.ConsumerPPM, marks.Accept),
		share(say.GoodPartsRefused(), r.ProducerPPM, marks.Reject),
		share(say.MetInTheApproach(), &r.EarlyContactPPM, marks.Early),
	}}
}

func share(label string, x *float64) page.Figure {
	if x == nil {
		return page.Figure{Label: label, Value: say.NotKnown()}
	}
	return page.Figure{Label: label, Value: say.PPM(*x), Exact: words.Exact(*x)}
}

func (w writer) joint() []page.Figure {
	j := w.r.Joint
	out := []page.Figure{triple(say.DemandAtTheSeat(), &j.Demand, 0, "N")}
	add := func(label string, t *press.Triple, decimals int, unit string) {
		if t != nil {
			out = append(out, triple(label, t, decimals, unit))
		}
	}
	add("Interference", j.Interference, 1, "µm")
	add(say.AfterSmoothing(), j.Effective, 1, "µm")
	add("Pressure", j.Pressure, 1, "MPa")
	add(say.HoldingForce(), j.Holding, 0, "N")
	used := func(label string, share, mises *float64, where string) {
		if share != nil {
			out = append(out, maybe(label, new(100**share), 0, "%", say.VonMisesUpTo(words.Fixed(*mises, 0), where)))
		}
	}
	used(say.HubUsed(), j.HubUtilisation, j.HubMises, say.AtItsBore())
	if w.p.Joint.Insert.Bore > 0 {
		used(say.InsertUsed(), j.InsertUtilisation, j.InsertMises, say.AtItsBore())
		add(say.BoreClosesBy(), j.BoreClosure, 1, "µm")
	} else {
		used(say.InsertUsed(), j.InsertUtilisation, j.InsertMises, say.AllThroughIt())
	}
	add(say.HubGrowsBy(), j.HubGrowth, 1, "µm")
	return out
}

func triple(label string, t *press.Triple, decimals int, unit string) page.Figure {
	return page.Figure{Label: label, Value: span(t[0], t[2], decimals), Unit: unit, Note: "mean " + words.Fixed(t[1], decimals)}
}
