package model

func (w *work) blockForce() {
	f := &w.r.Force
	if w.p.Window.Setting == nil {
		if !f.SettingFeasible {
			w.say(NoSetting, w.settingPath(), NoSettingFigures{Need: f.Need, Cap: f.Cap, Setting: f.Setting, Low: f.Low, High: f.High})
		}
		return
	}
	if w.force.now.tooWeak(f.Need) {
		w.say(SettingNotFeasible, "window.setting", NotFeasibleFigures{Setting: f.Setting, Force: f.Low, Limit: f.Need, Weak: true})
	}
	if w.force.now.tooStrong(f.Cap) {
		w.say(SettingNotFeasible, "window.setting", NotFeasibleFigures{Setting: f.Setting, Force: f.High, Limit: f.Cap})
	}
}

func (w *work) blockReadings() {
	if !w.r.Pressable() {
		return
	}
	win, z := &w.r.Window, &w.zone
	switch t := win.Target; {
	case t != nil && t.Measure == nil:
		w.noPlace()
	case t == nil && win.Acceptance == nil:
		width := win.GoodRange[1] - win.GoodRange[0]
		d := w.doubt()
		w.say(NoAcceptance, d.path, NoAcceptanceFigures{Width: width, Guard: win.GuardBand, Uncertainty: 2 * win.Uncertainty, Ratio: 4 * win.Uncertainty / width, Of: d.share})
	}
	if z.known && !z.overlap {
		w.say(NeverGood, w.zonePath(), StretchFigures{From: max(z.a, *z.z1), To: min(*z.e, *z.z2)})
	}
	if refused := w.r.Risk.ProducerPPM; z.overlap && (w.nominalOutside() || refused != nil && *refused > quarter) {
		f := NominalFigures{
			Reading: w.seated.nominal, From: z.first, To: z.last, Height: w.seated.base - w.seated.nominal,
			HeightLow: w.p.Requirement.HeightLow, HeightHigh: w.p.Requirement.HeightHigh,
		}
		if !w.nominalOutside() {
			f.PPM = refused
		}
		w.say(NominalRejected, w.rejectPath(), f)
	}
	home, stroke := w.p.Station.Home, w.p.Ram.Stroke
	if home > z.a+slack {
		path := "station.home"
		if w.p.Window.ApproachEnd != nil {
			path = "window.approach_end"
		}
		w.say(BeyondStroke, path, BeyondFigures{home, z.a, BeyondHome})
	}
	if z.e != nil && *z.e > stroke+slack {
		w.say(BeyondStroke, w.farPath(), BeyondFigures{*z.e, stroke, BeyondPushEnd})
	}
	if z.z2 != nil && *z.z2 > stroke+slack {
		path := "window.zone_end"
		if w.p.Window.ZoneEnd == nil { // it follows the push end
			path = w.farPath()
		}
		w.say(BeyondStroke, path, BeyondFigures{*z.z2, stroke, BeyondZoneEnd})
	}
	w.stepsBeyondStroke()
}

// noPlace speaks of a rule of targets that has no two positions to choose from: they
// lie before the approach ends, or too few lie within the drawing.
func (w *work) noPlace() {
	good, step := w.r.Window.GoodRange, w.p.Station.PositionStep
	f := NoPlaceFigures{From: good[0], To: good[1], Step: step}
	path := "station.position_step"
	if len(positions(good, step)) > 1 {
		end := w.zone.a
		path, f.ApproachEnd = w.earlyPath(), &end
	}
	w.say(NoAcceptance, path, f)
}

// quarter of all parts, ppm: a station that refuses more of the good ones is of no use.
const quarter = 250000

// nominalOutside tells whether the nominal part does not give both signals.
func (w *work) nominalOutside() bool {
	return w.seated.nominal < w.zone.first-slack || w.seated.nominal > w.zone.last+slack
}

// rejectPath leads to what refuses the nominal part, or a quarter of all: the setting
// where it stalls, else the edge of the overlap that it lies beyond.
func (w *work) rejectPath() string {
	if w.nominalOutside() && w.seated.stalled {
		return "window.setting"
	}
	tall := w.seated.nominal < w.zone.first-slack
	if !w.nominalOutside() {
		tall = w.tighter()
	}
	return w.edgePath(tall)
}

// looksGood speaks of every row of the catalogue that should not be good, stands
// outside the drawing and gives both signals all the same.
func (w *work) looksGood() {
	if !w.zone.overlap {
		return
	}
	good := w.r.Window.GoodRange
	for i, f := range w.r.Faults {
		if f.Good || f.Reading == nil || f.Name == RowMissing && !f.Own || w.visits[i].stuck.Any() {
			continue
		}
		r := *f.Reading
		tall, short := r < good[0]-slack, r > good[1]+slack
		if !tall && !short || r < w.zone.first-slack || r > w.zone.last+slack {
			continue
		}
		w.say(FaultLooksGood, w.edgePath(tall), FaultFigures{Row: i, Reading: r, Low: good[0], High: good[1], From: w.zone.first, To: w.zone.last})
	}
}

// farPath is what moved the push end too far: what was set by hand, or the nest, from
// which the proposal came.
func (w *work) farPath() string {
	if w.p.Window.PushStroke != nil {
		return w.endPath()
	}
	return "station.nest"
}

// settingPath is the field that would open the force window.
func (w *work) settingPath() string {
	weak, strong := w.force.now.tooWeak(w.r.Force.Need), w.force.now.tooStrong(w.r.Force.Cap)
	switch {
	case weak && strong:
		return "ram.force_tolerance"
	case strong:
		return "station.max_force"
	}
	return "ram.setting_max"
}

func (w *work) blockMotion() {
	ppm, limit := w.r.Risk.EarlyContactPPM, w.p.Targets.EarlyContactPPM
	if ppm > limit { // without a way to press in there is no share
		w.say(EarlyContactBlocked, w.earlyPath(), PPMFigures{ppm, limit})
	}
	m, r := &w.p.Motion, &w.p.Ram
	for _, c := range []struct {
		path         string
		value, limit float64
	}{
		{"motion.approach_speed", m.ApproachSpeed, r.MaxSpeed},
		{"motion.retract_speed", m.RetractSpeed, r.MaxSpeed},
		{"motion.accel", m.Accel, r.MaxAccel},
		{"motion.decel", m.Decel, r.MaxAccel},
	} {
		if c.value > c.limit {
			w.say(SpeedOverRam, c.path, LimitFigures{c.value, c.limit})
		}
	}
	w.stepsOverRam()
}

// earlyPath is the field that moves the approach end.
func (w *work) earlyPath() string {
	if w.p.Window.ApproachEnd != nil {
		return "window.approach_end"
	}
	return "motion.clearance"
}

func (w *work) blockJoint() {
	j := &w.p.Joint
	if j.Kind != Touch && j.Stop == NoStop {
		w.say(NothingStopsIt, "joint.stop", nil)
	}
	if w.r.MissingPasses() && w.p.Station.PresenceCheck == "" && !w.missingRefused() {
		w.say(MissingLooksGood, "station.presence_check", ReadingFigures{w.withoutInsert().Reading})
	}
	w.looksGood()
	if w.r.Joint != nil && w.r.Joint.Pressure != nil {
		w.blockInterference()
	}
	if t := w.parts.travel; t < 0 {
		w.say(TravelNegative, w.heaviest(func(row Part) float64 { return (row.Seat - row.Contact) * row.mean() }), TravelFigures{t})
	}
	if t := w.parts.travel; j.Kind == Touch && t != 0 {
		w.say(TouchWithTravel, "joint.kind", TravelFigures{t})
	}
	if w.joint.tooLong {
		w.say(EngagementTooLong, "joint.engagement", EngagementFigures{j.Engagement, w.parts.travel})
	}
}

func (w *work) blockInterference() {
	j := &w.p.Joint
	if u := *w.r.Joint.HubUtilisation; u > 1+1e-12 {
		w.say(OverYield, "joint.hub.yield", YieldFigures{u})
	}
	if u := *w.r.Joint.InsertUtilisation; u > 1+1e-12 {
		w.say(OverYield, "joint.insert.yield", YieldFigures{u})
	}
	if limit := j.HoldingRequired * j.HoldingSafety; w.joint.grip < limit*(1-1e-12) {
		w.say(HoldingShort, "joint.holding_required", HoldingFigures{w.joint.grip, limit})
	}
}

// overlapWider speaks of an overlap that reaches outside the drawing: a blocker
// where more wrong heights are accepted than the target allows.
func (w *work) overlapWider(s Severity) {
	z, good := &w.zone, w.r.Window.GoodRange
	if !z.overlap || z.first >= good[0]-slack && z.last <= good[1]+slack {
		return
	}
	ppm := w.r.Risk.ConsumerPPM
	if over := ppm != nil && *ppm > w.p.Targets.FalseAcceptPPM; over != (s == Blocker) {
		return
	}
	f := WiderFigures{From: z.first, To: z.last, Low: good[0], High: good[1]}
	if part, ok := w.tightPasses(); ok {
		f.Tight = &part
	}
	w.sayAs(s, OverlapWider, w.edgePath(z.first < good[0]-slack), f)
}

// tightPasses gives by how much more than the typical push a fit may demand at the seat
// and still be accepted, %: it stalls where the overlap begins. Not where nothing is pressed
// in, or so early that the fit has not taken hold. The demand rises as in the row of the tight fit.
func (w *work) tightPasses() (part float64, ok bool) {
	d, f := w.joint.push[mid], w.force.now.typical
	back := w.r.Travel.SeatReading - w.zone.first // off the seat
	taken := d.share(w.parts.travel-back, d.pilot, d.length)
	if w.p.Joint.Kind == Touch || back <= slack || taken <= 0 || d.length <= 0 || f <= d.drag {
		return 0, false
	}
	return 100 * ((d.drag+(f-d.drag)/taken)/f - 1), true
}
