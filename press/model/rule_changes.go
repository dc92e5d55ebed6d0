package model

import (
	"math"
	"slices"
	"strconv"
)

// A TargetChange is one input that alone would make the window meet its targets.
type TargetChange struct {
	Path string   `json:"path"`
	To   *float64 `json:"to"` // a value that does it, in the unit of the path; nil where not even its limit does

	From    float64      `json:"-"` // the value that it has
	Entries []FieldValue `json:"-"` // what is typed in for it
}

// An FieldValue is a field and the value that it is to get.
type FieldValue struct {
	Path  string
	Value float64
}

// Paths of changes that are no single field.
const (
	ChangeMean        = "parts.mean"   // mm, mean of the height above the datum
	ChangeSpread      = "parts.spread" // factor on the tolerances of all rows that are no datum
	ChangeRequirement = "requirement"  // mm, by which the drawing is widened on both sides
)

// TargetChanges tells which single input, moved from its value toward its limit, would
// make the window meet the targets, each with a value that does it: setting and window are
// proposed afresh for it. Empty where they are met, and under another rule. It is computed
// when it is asked for first.
func (r *Outcome) TargetChanges() []TargetChange {
	w := r.work
	if w == nil || r.Window.Target == nil || r.Window.Target.Met {
		return []TargetChange{}
	}
	w.toTarget.Do(func() {
		for _, l := range w.levers() {
			w.changes = append(w.changes, l.pull(w.p))
		}
	})
	return slices.Clone(w.changes)
}

// A lever is one input on its way from its value to its limit.
type lever struct {
	path        string
	from, limit float64
	evenly      bool // in the logarithm
	entries     func(to float64) []FieldValue
}

// thousandths are the steps of the way that a change is told by.
const thousandths = 1000

// pull finds the least part of the way that does it, by halving between one that does not
// and one that does.
func (l *lever) pull(in *Input) TargetChange {
	does := func(k int) bool { return in.with(l.entries(l.at(k))).meetsTarget() }
	if l.from == l.limit || l.entries == nil || !does(thousandths) {
		return TargetChange{Path: l.path, From: l.from}
	}
	not, yes := 0, thousandths
	for yes-not > 1 {
		if mid := (not + yes) / 2; does(mid) {
			yes = mid
		} else {
			not = mid
		}
	}
	to := l.at(yes)
	return TargetChange{Path: l.path, From: l.from, To: &to, Entries: l.entries(to)}
}

// at is the value after so many thousandths of the way.
func (l *lever) at(k int) float64 {
	switch part := float64(k) / thousandths; {
	case k == thousandths:
		return l.limit
	case l.evenly:
		return plain(l.from * math.Pow(l.limit/l.from, part))
	default:
		return plain(l.from + (l.limit-l.from)*part)
	}
}

// plain keeps ten digits: no more are meant.
func plain(x float64) float64 {
	v, err := strconv.ParseFloat(strconv.FormatFloat(x, 'g', 10, 64), 64)
	if err != nil {
		return x
	}
	return v
}

// meetsTarget tells whether the window that is proposed for a station meets its targets.
func (in *Input) meetsTarget() bool {
	t := in.placed().r.Window.Target
	return t != nil && t.Met
}

// levers are the inputs that may be moved, in the order in which they are told.
func (w *work) levers() []lever {
	in := w.p
	st, need := &in.Station, &in.Requirement
	one := func(path string, from, limit float64) lever {
		return lever{path: path, from: from, limit: limit, entries: func(to float64) []FieldValue { return []FieldValue{{path, to}} }}
	}
	target := func(path string, ppm float64) lever {
		l := one(path, max(ppm, finest), million64)
		l.evenly = true
		return l
	}
	width := need.HeightHigh - need.HeightLow
	return []lever{
		one("ram.repeatability", in.Ram.Repeatability, 0),
		one("station.nest_drift", st.NestDrift, 0),
		one("station.reference_uncertainty", st.ReferenceUncertainty, 0),
		one("station.stiffness_tolerance", st.StiffnessTolerance, 0),
		one("ram.force_tolerance", in.Ram.ForceTolerance, 0),
		one("ram.force_scatter", in.Ram.ForceScatter, 0),
		one("station.stiffness", st.Stiffness, 10*st.Stiffness),
		w.meanLever(),
		{path: ChangeSpread, from: 1, limit: 0, entries: in.spreadEntries},
		{path: ChangeRequirement, from: 0, limit: width, entries: func(by float64) []FieldValue {
			return []FieldValue{{"requirement.height_low", tidy(need.HeightLow - by)}, {"requirement.height_high", tidy(need.HeightHigh + by)}}
		}},
		target("targets.false_accept_ppm", in.Targets.FalseAcceptPPM),
		target("targets.false_reject_ppm", in.Targets.FalseRejectPPM),
	}
}

// meanLever moves the mean height toward the middle of the drawing, by the nominal length
// of one row: of one that counts in contact as in the seat, where there is one, so that
// the press-in travel stays.
func (w *work) meanLever() lever {
	in := w.p
	row := slices.IndexFunc(in.Parts, func(row Part) bool { return !row.Datum && row.Carries() && row.Contact == row.Seat })
	if row < 0 {
		row = slices.IndexFunc(in.Parts, func(row Part) bool { return !row.Datum && row.Carries() })
	}
	mean, middle := w.meanHeight(), (in.Requirement.HeightLow+in.Requirement.HeightHigh)/2
	l := lever{path: ChangeMean, from: mean, limit: middle}
	if row < 0 || math.Abs(mean-middle) < slack {
		l.limit = l.from
		return l
	}
	l.entries = func(to float64) []FieldValue {
		part := in.Parts[row]
		return []FieldValue{{rowPath(row) + ".nominal", tidy(part.Nominal + (to-mean)/part.Seat)}}
	}
	return l
}

// meanHeight is the mean of the height above the datum, mm.
func (w *work) meanHeight() float64 { return w.p.Station.Nest - w.parts.xSeat - w.parts.under.Mean }

// spreadEntries narrows the tolerances of all rows that are no datum, about their means.
func (in *Input) spreadEntries(factor float64) []FieldValue {
	var out []FieldValue
	for i, row := range in.Parts {
		half := (row.Minus + row.Plus) / 2
		if row.Datum || half == 0 {
			continue
		}
		at := rowPath(i)
		if row.Minus != row.Plus {
			out = append(out, FieldValue{at + ".nominal", tidy(row.mean())})
		}
		out = append(out, FieldValue{at + ".minus", plain(factor * half)}, FieldValue{at + ".plus", plain(factor * half)})
	}
	return out
}

// with gives the input with other values for some of its fields.
func (in *Input) with(entries []FieldValue) *Input {
	out := *in
	out.Parts = slices.Clone(in.Parts)
	at := map[string]*float64{
		"ram.repeatability": &out.Ram.Repeatability, "ram.force_tolerance": &out.Ram.ForceTolerance, "ram.force_scatter": &out.Ram.ForceScatter,
		"station.nest_drift": &out.Station.NestDrift, "station.reference_uncertainty": &out.Station.ReferenceUncertainty,
		"station.stiffness_tolerance": &out.Station.StiffnessTolerance, "station.stiffness": &out.Station.Stiffness,
		"requirement.height_low": &out.Requirement.HeightLow, "requirement.height_high": &out.Requirement.HeightHigh,
		"targets.false_accept_ppm": &out.Targets.FalseAcceptPPM, "targets.false_reject_ppm": &out.Targets.FalseRejectPPM,
	}
	for i := range out.Parts {
		row := &out.Parts[i]
		path := "parts[" + strconv.Itoa(i) + "]"
		at[path+".nominal"], at[path+".minus"], at[path+".plus"] = &row.Nominal, &row.Minus, &row.Plus
	}
	for _, e := range entries {
		*at[e.Path] = e.Value
	}
	return &out
}
