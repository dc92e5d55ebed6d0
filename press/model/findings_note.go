package model

import "slices"

func (w *work) notes() {
	j, ram := &w.p.Joint, &w.p.Ram
	if w.r.MissingPasses() && w.p.Station.PresenceCheck != "" {
		w.say(PresenceByOtherCheck, "station.presence_check", ReadingFigures{w.withoutInsert().Reading})
	}
	if early, most := w.r.Impact.Early, w.p.Station.MaxForce; early > most && w.r.Pressable() && (w.pastEarliest() || w.twoMetEarly()) {
		speed := w.p.Motion.ApproachSpeed // the blow grows with it
		w.say(ImpactEarly, "motion.approach_speed", EarlyBlowFigures{BlowFigures{early, most, speed * most / early}, speed, w.p.Motion.SlowSpeed})
	}
	if c := ram.SettingContinuous; c != nil && w.r.Force.Setting > *c {
		w.say(ClampedHot, "ram.setting_continuous", LimitFigures{w.r.Force.Setting, *c})
	}
	for _, path := range w.p.Unstated {
		w.say(TakenAsPerfect, path, nil)
	}
	if u, growth := w.p.Station.ReferenceUncertainty, w.coldStart(); !slices.Contains(w.p.Unstated, "station.reference_uncertainty") && u < growth-slack {
		w.say(WarmUpThin, "station.reference_uncertainty", WarmUpFigures{u, growth})
	}
	if j.Kind == Interference && w.joint.pilot > 1+slack {
		w.say(FreeTravel, "joint.pilot", PilotFigures{w.joint.pilot})
	}
	switch {
	case j.Kind == Touch:
	case w.probeWorks():
		w.probeNotes()
	default:
		var f UnseenFigures
		if w.r.Probe.Possible {
			f.Highest = w.r.Probe.HighestSetting
		}
		w.say(LooseFitUnseen, "joint.kind", f)
	}
	if w.probed != nil {
		w.say(SecondStart, "probe.use", nil)
	}
	if j.Kind != Interference {
		return
	}
	if s, mean := j.SmoothingMost*j.smoothing().RzSum, j.interference().Mean; s > mean/5+slack {
		w.say(SmoothingLarge, w.smoothingPath(mean), SmoothingFigures{s, mean})
	}
	if v := w.p.Motion.SlowSpeed; v > 2 {
		w.say(PressInSpeed, "motion.slow_speed", LimitFigures{v, 2})
	}
}

// twoMetEarly tells whether two inserts on one another are met in the approach.
func (w *work) twoMetEarly() bool {
	two := w.twoInserts()
	return w.parts.inserted && (two.contact < w.zone.a-slack || two.reading < w.zone.a-slack)
}

// coldStart is by how much the way from home to the nest grows when steel warms up
// by 10 K, mm.
func (w *work) coldStart() float64 {
	return Growth(w.p.Station.Nest-w.p.Station.Home, 10, SteelExpansion)
}

// smoothingPath leads to the smoothing, or to the fit where on average there is no
// interference that it could take anything from.
func (w *work) smoothingPath(mean float64) string {
	if mean <= 0 {
		return "joint.fit"
	}
	return "joint.smoothing_most"
}
