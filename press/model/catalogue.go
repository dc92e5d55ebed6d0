package model

import (
	"strings"
)

// Names of the rows of the fault catalogue, in their order. The user's own rows
// stand between RowGap and RowSettingLow under their own names.
const (
	RowNominal         = "nominal"
	RowTallest         = "tallest-accepted"
	RowShortest        = "shortest-accepted"
	RowLong            = "long"
	RowShort           = "short"
	RowMissing         = "missing"
	RowTwoInserts      = "two-inserts"
	RowAlreadyPressed  = "already-pressed"
	RowTight           = "tight"
	RowLoose           = "loose"
	RowChip            = "chip"
	RowGap             = "gap"
	RowSettingLow      = "setting-low"
	RowSettingHigh     = "setting-high"
	RowNestWorn        = "nest-worn"
	RowArrivalStuckOn  = "arrival-stuck-on"
	RowArrivalStuckOff = "arrival-stuck-off"
	RowZoneStuckOn     = "zone-stuck-on"
	RowZoneStuckOff    = "zone-stuck-off"
)

// beyond is how far outside the overlap the rows long and short stand, mm.
const beyond = 0.001

// tightness is by how much the tight row asks for more than a strong ram gives.
const tightness = 1.2

// occasion is what happens at the station: where the ram would come to rest.
type occasion struct {
	nowhere bool    // nothing stops it
	reading float64 // mm, otherwise
	contact float64 // mm, first contact, where it matters beside the reading
}

func restsAt(r float64) occasion { return occasion{reading: r, contact: r} }

// stuck are signals that do not follow the ram; nil follows.
type stuck struct{ arrival, zone *bool }

// catalogue goes through everything that can come to the station, and what the
// station would say and when (model section 11).
func (w *work) catalogue() {
	if !w.zone.known {
		return
	}
	w.r.Faults = make([]FaultRow, 0, 20+len(w.p.Faults.Other))
	f := &w.p.Faults
	seat := w.parts.xSeat + w.seated.deflection
	w.good(RowNominal, w.seated.nominal)
	if w.zone.overlap {
		w.good(RowTallest, w.zone.first)
		w.good(RowShortest, w.zone.last)
		w.bad(RowLong, w.zone.first-beyond)
		w.bad(RowShort, w.zone.last+beyond)
	}
	w.row(RowMissing, w.missing(), false)
	if w.parts.inserted {
		w.row(RowTwoInserts, w.twoInserts(), false)
	}
	if w.p.Joint.Kind != Touch {
		w.bad(RowAlreadyPressed, seat)
	}
	w.tight()
	if w.p.Joint.Kind == Interference {
		r, _ := w.rest(0, w.force.now.typical, push{drag: w.p.Joint.Drag, counter: w.p.Joint.Counterforce, travel: w.parts.travel})
		w.bad(RowLoose, r)
	}
	if f.Chip > 0 {
		w.bad(RowChip, w.seated.nominal-f.Chip)
	}
	if f.Gap > 0 {
		w.bad(RowGap, seat-f.Gap)
	}
	for _, own := range f.Other {
		w.row(own.Name, restsAt(w.seated.nominal-own.Height), own.Good)
		w.r.Faults[len(w.r.Faults)-1].Own = true
	}
	w.settingRow(RowSettingLow, w.r.Force.Setting-w.p.Ram.SettingStep)
	w.settingRow(RowSettingHigh, w.r.Force.Setting+w.p.Ram.SettingStep)
	if f.NestWear > 0 {
		w.bad(RowNestWorn, w.seated.nominal+f.NestWear)
	}
	on, off := true, false
	w.stuckRow(RowArrivalStuckOn, w.missing(), stuck{arrival: &on})
	w.stuckRow(RowArrivalStuckOff, restsAt(w.seated.nominal), stuck{arrival: &off})
	if w.zone.overlap {
		w.stuckRow(RowZoneStuckOn, restsAt(w.zone.first-beyond), stuck{zone: &on})
	}
	w.stuckRow(RowZoneStuckOff, restsAt(w.seated.nominal), stuck{zone: &off})
}

func (w *work) missing() occasion {
	m := w.withoutInsert()
	return occasion{nowhere: m.Nowhere, reading: m.Reading, contact: m.Reading}
}

// twoInserts lie on one another: the rows of the insert count once more.
func (w *work) twoInserts() occasion {
	return occasion{
		reading: w.parts.xSeat + w.seated.deflection - w.parts.inserts,
		contact: w.parts.xContact - w.parts.inserts,
	}
}

// tight asks for 1.2 times what a strong ram gives, on the same way in.
func (w *work) tight() {
	d, demand := w.joint.push[mid], tightness*w.force.now.high()
	none := w.p.Joint.Kind == Touch || demand <= d.drag || w.p.Joint.Kind == Interference && w.joint.engaged <= 0
	if none {
		return
	}
	r, _ := w.rest(0, w.force.now.typical, w.tightPush())
	w.bad(RowTight, r)
}

// tightPush is the demand of the tight row: the line tells the whole of it.
func (w *work) tightPush() push {
	d := w.joint.push[mid]
	d.counter, d.rise = 0, tightness*w.force.now.high()-d.drag
	return d
}

// settingRow sees the nominal part with another setting, the zone as it is.
func (w *work) settingRow(name string, setting float64) {
	if setting < w.p.Ram.SettingMin-slack || setting > w.p.Ram.SettingMax+slack {
		return
	}
	r, _ := w.rest(0, w.force.at(setting).typical, w.joint.push[mid])
	w.good(name, r)
}

func (w *work) good(name string, reading float64) { w.row(name, restsAt(reading), true) }

func (w *work) bad(name string, reading float64) { w.row(name, restsAt(reading), false) }

// row adds a row whose signals work: it is detected when it gets the verdict
// that it should.
func (w *work) row(name string, o occasion, good bool) {
	f, met := w.outcome(name, o, stuck{})
	w.visits = append(w.visits, visit{occasion: o})
	f.Good = good
	if met && w.withRisk {
		accepted := 0.0
		if !o.nowhere {
			accepted = w.chance.window.Accept(o.reading)
		}
		f.Detection = 1 - accepted
		if good {
			f.Detection = accepted
		}
	}
	w.r.Faults = append(w.r.Faults, f)
}

// stuckRow adds a row with a stuck signal: it stays undetected where both
// signals are on.
func (w *work) stuckRow(name string, o occasion, s stuck) {
	f, met := w.outcome(name, o, s)
	w.visits = append(w.visits, visit{occasion: o, stuck: s})
	if met && !(*f.Arrival && *f.Zone) {
		f.Detection = 1
	}
	w.r.Faults = append(w.r.Faults, f)
}

// outcome tells what the station says and when; met is false where the part is
// met before the push begins.
func (w *work) outcome(name string, o occasion, s stuck) (row FaultRow, met bool) {
	z := w.zone.at
	if !o.nowhere && (z.Early(o.reading) || z.Early(o.contact)) {
		return FaultRow{Name: name, Verdict: EarlyContact}, false
	}
	row.Name = name
	arrival, zone := false, z.InZone(z.End)
	if !o.nowhere && z.Arrives(o.reading) {
		arrival, zone = true, z.InZone(o.reading)
		row.Reading = ptr(o.reading)
	}
	row.Time = w.pushWatch()
	if arrival && (s.arrival == nil || *s.arrival) {
		row.Time = ptr(w.r.Cycle.Approach + w.p.slow(o.reading-w.pushFrom) + w.r.Cycle.Settle + w.r.Cycle.Confirm)
	}
	if s.arrival != nil {
		arrival = *s.arrival
	}
	if s.zone != nil {
		zone = *s.zone
	}
	row.Arrival, row.Zone = &arrival, &zone
	row.Verdict, row.Words = FaultWord, w.r.Verdict.Table.Words(arrival, zone)
	if len(row.Words) > 0 {
		row.Verdict = strings.Join(row.Words, " or ")
	}
	return row, true
}

// pushWatch is the watch time of the push alone, without the probe.
func (w *work) pushWatch() *float64 {
	c := &w.r.Cycle
	return ptr(c.Approach + w.p.slow(w.zone.at.End-w.pushFrom) + c.Settle + c.Confirm)
}
