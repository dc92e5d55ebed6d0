package model

import (
	"math"
	"strconv"

	"ramplan/press/stack"
)

// A doubt is one part of the uncertainty of a reading: its field, and its share of the
// whole variance.
type doubt struct {
	path  string
	share float64
}

// doubt finds the largest part of the reading's uncertainty. A row of the parts is one
// by itself, so that what is said of it leads to that very row.
func (w *work) doubt() doubt {
	st := &w.p.Station
	most := doubt{path: "requirement.height_high"}
	look := func(path string, u float64) {
		if share := square(u / w.seated.u); u > 0 && share > most.share {
			most = doubt{path, share}
		}
	}
	look("ram.repeatability", w.p.Ram.Repeatability/2)
	look("station.nest_drift", st.NestDrift/math.Sqrt(3))
	look("station.stiffness", math.Hypot(w.force.now.scatter/2/st.Stiffness, w.seated.deflection*st.StiffnessTolerance/100/2))
	look("station.reference_uncertainty", st.ReferenceUncertainty/2)
	for i, row := range w.p.Parts {
		if row.Datum {
			look(rowPath(i), spread(row.term(row.DatumCount)))
		}
	}
	return most
}

// heaviest leads to the row of the parts that weighs most; to all of them where none
// weighs anything.
func (w *work) heaviest(weight func(Part) float64) string {
	path, most := "parts", 0.0
	for i, row := range w.p.Parts {
		if x := weight(row); x > most {
			path, most = rowPath(i), x
		}
	}
	return path
}

// sharePath leads to what keeps parts outside the drawing: the row that spreads most,
// or the requirement where the parts would lie inside it if they were centred.
func (w *work) sharePath() string {
	q, mean, sd := &w.p.Requirement, 0.0, 0.0
	for _, row := range w.p.Parts {
		t := row.term(row.inHeight())
		mean += t.Times * t.Mean
		sd = math.Hypot(sd, spread(t))
	}
	off := math.Abs(mean - (q.HeightLow+q.HeightHigh)/2)
	if sd == 0 || off > slack && math.Erf((q.HeightHigh-q.HeightLow)/2/sd/math.Sqrt2) >= w.p.Targets.ConformingShare {
		return "requirement.height_low"
	}
	return w.heaviest(func(row Part) float64 { return spread(row.term(row.inHeight())) })
}

// inHeight is how often a row counts in the height that the drawing asks for.
func (row Part) inHeight() float64 {
	if row.Datum && row.Carries() {
		return 0
	}
	if row.Datum {
		return -row.DatumCount
	}
	return row.Seat
}

// acceptPath leads to what lets wrong heights in: what the rule goes by, unless the edge
// that lets most of them in is set by hand, where that does nothing.
func (w *work) acceptPath() string {
	return w.guardPath(!w.tighter())
}

// refusePath leads to what refuses good parts, in the same way. A guard factor of 0
// cannot be lowered.
func (w *work) refusePath() string {
	path := w.guardPath(w.tighter())
	if path == guardField && w.p.Window.GuardFactor == 0 {
		return w.doubt().path
	}
	return path
}

const (
	guardField   = "window.guard_factor"
	ruleField    = "window.rule"
	processField = "window.process_sd"
)

// guardPath is what the rule moves the edge on this side of the overlap by, else the field
// that was set by hand. The rule of the targets has done what it can: another one is left.
func (w *work) guardPath(tall bool) string {
	z, win := &w.zone, &w.p.Window
	if !z.overlap {
		return w.zonePath()
	}
	moves, by := win.PushStroke == nil && *z.e <= *z.z2+slack, w.r.Window.By.PushEnd
	if tall {
		moves, by = win.ZoneStart == nil && *z.z1 >= z.a-slack, w.r.Window.By.ZoneStart
	}
	switch {
	case !moves || by == nil:
		return w.edgePath(tall)
	case *by == ByTarget:
		return ruleField
	case *by == ByProcess:
		return processField
	}
	return guardField
}

// coolPath is the time that lets the motor cool: no hold that is not held can be
// shortened.
func (w *work) coolPath() string {
	if w.p.Motion.HoldTime > 0 {
		return "motion.hold_time"
	}
	return "motion.handling_time"
}

// seatPath is what brings the force at the seat down: the speed, unless the push alone
// is too much.
func (w *work) seatPath() string {
	if w.r.Force.Typical > w.p.Station.MaxForce {
		if w.p.Window.Setting != nil {
			return "window.setting"
		}
		return "station.max_force"
	}
	return "motion.slow_speed"
}

// spread is the standard deviation that a row brings into a sum.
func spread(t stack.Term) float64 { return math.Abs(t.Times) * t.SD() }

// rowPath is the path of a row of the parts.
func rowPath(row int) string { return "parts[" + strconv.Itoa(row) + "]" }
