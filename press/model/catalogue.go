package model

import (
	"strings"
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

// catalogue goes through everything that can come to the station, and what the
// station would say and when (model section 11).
func (w *work) catalogue() {
	if !w.zone.known {
		return
	}
	w.r.Faults = make([]FaultRow, 0, 20+len(w.p.Faults.Other))
	f := &w.p.Faults
	seat := w.parts.xSeat + w.seated.deflection
	w.row(RowNominal, restsAt(w.seated.nominal))
	if w.zone.overlap {
		w.row(RowTallest, restsAt(w.zone.first))
		w.row(RowShortest, restsAt(w.zone.last))
		w.row(RowLong, restsAt(w.zone.first-beyond))
		w.row(RowShort, restsAt(w.zone.last+beyond))
	}
	w.row(RowMissing, w.missing())
	if w.parts.inserted {
		w.row(RowTwoInserts, w.twoInserts())
	}
	if w.p.Joint.Kind != Touch {
		w.row(RowAlreadyPressed, restsAt(seat))
	}
	w.tight()
	if w.p.Joint.Kind == Interference {
		r, _ := w.rest(0, w.force.now.typical, push{drag: w.p.Joint.Drag, counter: w.p.Joint.Counterforce, travel: w.parts.travel})
		w.row(RowLoose, restsAt(r))
	}
	if f.Chip > 0 {
		w.row(RowChip, restsAt(w.seated.nominal-f.Chip))
	}
	if f.Gap > 0 {
		w.row(RowGap, restsAt(seat-f.Gap))
	}
	for _, own := range f.Other {
		w.add(FaultRow{Name: own.Name, Own: true, Good: own.Good}, visit{occasion: restsAt(w.seated.nominal - own.Height)})
	}
	w.settingRow(RowSettingLow, w.r.Force.Setting-w.p.Ram.SettingStep)
	w.settingRow(RowSettingHigh, w.r.Force.Setting+w.p.Ram.SettingStep)
	if f.NestWear > 0 {
		w.row(RowNestWorn, restsAt(w.seated.nominal+f.NestWear))
	}
	w.row(RowArrivalStuckOn, w.missing())
	w.row(RowArrivalStuckOff, restsAt(w.seated.nominal))
	if w.zone.overlap {
		w.row(RowZoneStuckOn, restsAt(w.zone.first-beyond))
	}
	w.row(RowZoneStuckOff, restsAt(w.seated.nominal))
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
	w.row(RowTight, restsAt(r))
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
	w.row(name, restsAt(r))
}

// row adds a row of the catalogue.
func (w *work) row(name string, o occasion) {
	c := caseOf(name)
	w.add(FaultRow{Name: name, Good: c.Good}, visit{occasion: o, stuck: c.Stuck})
}

// add adds a row. Where the signals work it is detected when it gets the verdict that
// it should; with a stuck one it stays undetected where both signals are on.
func (w *work) add(f FaultRow, v visit) {
	met := w.says(&f, v)
	switch {
	case !met:
	case v.stuck.Any():
		if !(*f.Arrival && *f.Zone) {
			f.Detection = 1
		}
	case w.withRisk:
		accepted := 0.0
		if !v.nowhere {
			accepted = w.chance.window.Accept(v.reading)
		}
		f.Detection = 1 - accepted
		if f.Good {
			f.Detection = accepted
		}
	}
	w.r.Faults, w.visits = append(w.r.Faults, f), append(w.visits, v)
}

// says fills in what the station says and when; met is false where the part is met
// before the push begins.
func (w *work) says(row *FaultRow, o visit) (met bool) {
	z, s := w.zone.at, o.stuck
	if !o.nowhere && (z.Early(o.reading) || z.Early(o.contact)) {
		row.Verdict = EarlyContact
		return false
	}
	arrival, zone := false, z.InZone(z.End)
	if !o.nowhere && z.Arrives(o.reading) {
		arrival, zone = true, z.InZone(o.reading)
		row.Reading = ptr(o.reading)
	}
	row.Time = w.pushWatch()
	if arrival && (s.Arrival == nil || *s.Arrival) {
		row.Time = ptr(w.r.Cycle.Approach + w.p.slow(o.reading-w.pushFrom) + w.r.Cycle.Settle + w.r.Cycle.Confirm)
	}
	if s.Arrival != nil {
		arrival = *s.Arrival
	}
	if s.Zone != nil {
		zone = *s.Zone
	}
	row.Arrival, row.Zone = &arrival, &zone
	row.Verdict, row.Words = FaultWord, w.r.Verdict.Table.Words(arrival, zone)
	if len(row.Words) > 0 {
		row.Verdict = strings.Join(row.Words, " or ")
	}
	return true
}

// pushWatch is the watch time of the push alone, without the probe.
func (w *work) pushWatch() *float64 {
	c := &w.r.Cycle
	return ptr(c.Approach + w.p.slow(w.zone.at.End-w.pushFrom) + c.Settle + c.Confirm)
}
