package model

import "math"

func (w *work) cautionSetUp() {
	z, j := &w.zone, &w.p.Joint
	ppm := w.r.Risk.EarlyContactPPM
	if doubt := w.p.positionDoubt(); w.r.Pressable() && z.a > w.parts.earliest-doubt+slack && ppm <= w.p.Targets.EarlyContactPPM {
		w.say(EarlyContactWorstCase, w.earlyPath(), EarlyFigures{z.a, w.parts.earliest, doubt, ppm})
	}
	if s, step := w.p.Window.Setting, w.p.Ram.SettingStep; s != nil && offStep(*s, step) {
		w.say(SettingOffStep, "window.setting", OffStepFigures{*s, step})
	}
	if q, step := w.p.Probe, w.p.Ram.SettingStep; q != nil && q.Setting != nil && offStep(*q.Setting, step) {
		w.say(SettingOffStep, "probe.setting", OffStepFigures{*q.Setting, step})
	}
	if j.Kind == Interference {
		if w.joint.raw < -slack*1000 { // µm
			w.say(GripMayVanish, "joint.fit", GripFigures{w.joint.raw})
		}
		if left := w.parts.travel - w.joint.pilot; left < j.Engagement-slack {
			w.say(PartlyEngaged, "joint.engagement", EngagementFigures{j.Engagement, w.joint.engaged})
		}
	}
	if v := w.r.Verdict; v != nil && v.Ambiguous {
		w.cautionTable()
	}
	if !w.p.MarksInsert() && w.p.Station.PresenceCheck == "" {
		w.say(InsertNotMarked, "parts[0].insert", nil)
	}
	if w.r.Narrow() {
		d := w.narrow()
		w.say(OverlapNarrow, d.path, NarrowFigures{z.last - z.first, 6 * w.seated.u, d.share})
	}
}

// offStep tells whether a value is no whole multiple of a step.
func offStep(x, step float64) bool { return math.Abs(x-math.Round(x/step)*step) > slack }

// cautionTable speaks of a table that cannot be trusted.
func (w *work) cautionTable() {
	z, sure, off := &w.zone, w.sure(), w.slips()
	f := AmbiguousFigures{
		PushEnd: *z.e, ZoneStart: *z.z1, ZoneEnd: *z.z2, PushEndOff: off.pushEnd > 0, ZoneStartOff: off.zoneStart > 0, ZoneEndOff: off.zoneEnd > 0,
		Low: sure.Low, High: sure.High,
	}
	if at, stops := w.stopsWithoutInsert(); stops {
		f.Stops, f.StopsInZone, f.BareNest = &at, z.at.InZone(at), !w.parts.inserted
	}
	path := "station.presence_check" // nothing is off: it is the missing insert
	if off != (slips{}) {
		path = w.zonePath()
	}
	w.say(AmbiguousTable, path, f)
}

// stopsWithoutInsert tells where the push end lies past what stops the ram without an
// insert: what stays in the nest or, where no row is marked, the nest itself. Both
// signals on at what stays there are told by findings of their own.
func (w *work) stopsWithoutInsert() (at float64, stops bool) {
	at = w.emptyNest()
	if w.parts.inserted {
		at = w.withoutInsert().Reading
	}
	z := w.zone.at
	stops = !z.Early(at) && z.Arrives(at) && !(w.parts.inserted && z.InZone(at))
	return at, stops
}

// narrow tells what makes the accepted readings narrow: an edge set by hand, that on the
// side further inside the drawing first, else the largest part of the reading's
// uncertainty.
func (w *work) narrow() doubt {
	for _, tall := range []bool{w.tighter(), !w.tighter()} {
		if path := w.edgeByHand(tall); path != "" {
			return doubt{path: path}
		}
	}
	return w.doubt()
}

// pastEarliest tells whether the approach reaches past the earliest contact.
func (w *work) pastEarliest() bool { return w.zone.a > w.parts.earliest+slack }

func (w *work) cautionRisk() {
	if !w.withRisk || !w.r.Pressable() {
		return
	}
	r, t := &w.r.Risk, &w.p.Targets
	if r.ConformingShare < t.ConformingShare {
		w.say(ConformingShareLow, w.sharePath(), ShareFigures{r.ConformingShare, t.ConformingShare})
	}
	if ppm := r.ConsumerPPM; ppm != nil && *ppm > t.FalseAcceptPPM {
		w.say(FalseAccept, w.acceptPath(), PPMFigures{*ppm, t.FalseAcceptPPM})
	}
	if ppm := r.ProducerPPM; ppm != nil && *ppm > t.FalseRejectPPM {
		w.say(FalseReject, w.refusePath(), PPMFigures{*ppm, t.FalseRejectPPM})
	}
}

// cautionRule speaks of a rule that could not do what was asked of it.
func (w *work) cautionRule() {
	if t := w.r.Window.Target; t != nil && t.Measure != nil && !t.Met {
		path := w.doubt().path
		switch *t.Binding {
		case BindsAccept:
			path = "targets.false_accept_ppm"
		case BindsReject:
			path = "targets.false_reject_ppm"
		}
		win := &w.p.Window
		w.say(TargetMissed, path, MissedFigures{
			Measure: *t.Measure, Accept: w.p.Targets.FalseAcceptPPM, Reject: w.p.Targets.FalseRejectPPM,
			ByHand: win.ZoneStart != nil && win.PushStroke != nil, WorstDay: win.TargetsFor == OnWorstDay,
		})
	}
	if w.rule.outside {
		spread := w.p.readingSpread(&w.parts, &w.seated)
		w.say(ProcessOutside, w.sharePath(), OutsideFigures{
			Reading: w.r.Travel.SeatReading, Reach: w.p.Window.ProcessSD * spread, Low: w.r.Window.GoodRange[0], High: w.r.Window.GoodRange[1]})
	}
}

func (w *work) cautionImpact() {
	z, i := &w.zone, &w.r.Impact
	if c, rms := w.p.Ram.SettingContinuous, w.r.Heating.RMSSetting; c != nil && rms != nil && *rms > *c {
		w.say(HeatingOver, w.coolPath(), LimitFigures{*rms, *c})
	}
	if z.known && *z.e > *z.z2+slack {
		m := &w.p.Motion
		on, limit := *z.z2-math.Max(z.a, *z.z1), 2*m.ScanTime*m.SlowSpeed
		if on < limit-slack {
			w.say(ZoneTooShort, "window.zone_end", TimeFigures{on / m.SlowSpeed, 2 * m.ScanTime})
		}
	}
	most := w.p.Station.MaxForce
	if i.Contact > most {
		w.say(ImpactContact, "motion.slow_speed", BlowFigures{i.Contact, most, w.slowerThan(most)})
	}
	if i.SeatExpected > most {
		w.say(ImpactSeat, w.seatPath(), SeatBlowFigures{
			BlowFigures{i.SeatExpected, most, w.slowerThan(most - w.r.Force.Typical)}, i.SeatStrong, w.slowerThan(most - w.r.Force.High)})
	}
	w.cautionPositions()
	if w.r.Force.Need <= 0 {
		w.say(NoForceAsked, "requirement.min_seating_force", nil)
	}
}

// slowerThan gives the slow speed at which the blow alone is as large as a force, mm/s: the
// blow grows with the speed. Not above 0: no speed is slow enough, or none does anything.
func (w *work) slowerThan(force float64) float64 {
	if v := w.p.Motion.SlowSpeed * force / w.r.Impact.Contact; !math.IsInf(v, 0) && !math.IsNaN(v) {
		return v
	}
	return 0
}

// cautionPositions speaks of positions that cannot be typed in or do not mean what
// they seem to.
func (w *work) cautionPositions() {
	win, step := &w.p.Window, w.p.Station.PositionStep
	for _, hand := range []struct {
		path  string
		value *float64
	}{
		{"window.approach_end", win.ApproachEnd},
		{"window.push_stroke", win.PushStroke},
		{"window.zone_start", win.ZoneStart},
		{"window.zone_end", win.ZoneEnd},
	} {
		if hand.value != nil && offStep(*hand.value, step) {
			w.say(PositionOffStep, hand.path, OffStepFigures{*hand.value, step})
		}
	}
	w.offSteps()
	if t := w.parts.travel; t > 0 && t-w.parts.lost < -slack {
		w.say(TravelMayVanish, w.heaviest(func(row Part) float64 { return math.Abs(row.Seat-row.Contact) * row.term(1).Half }), VanishFigures{t, w.parts.lost})
	}
	if d := w.seated.deflection; w.r.Pressable() && d > 2*w.seated.u && w.p.Station.NestForce == 0 {
		w.say(DeflectionUntaught, "station.nest_force", DeflectionFigures{d, 2 * w.seated.u, w.r.Force.Typical})
	}
}
