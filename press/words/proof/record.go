package proof

import (
	"math"
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/press/proving"
	"ramplan/press/words"
)

// An Adoption is what a draft once took over from a study.
type Adoption struct {
	On     string // day
	Digest string // of the study
	Label  string // of the entry
	Was    string
	Is     string
}

// A Record is what is printed of the proof of a station.
type Record struct {
	Plan     *press.Result
	Proof    *proving.Assessment
	Studies  []*proving.Study // those that were judged, in the same order
	Adopted  []Adoption
	Revision string // that is proved; empty for a draft
}

// RecordTables are the tables of the proof of a station: what is needed and there, what the
// studies say, what happened, what was taken over, and the lines for those who sign.
func (say Words) RecordTables(r Record) []words.Table {
	out := []words.Table{say.neededTable(r)}
	if t := say.saidTable(r); len(t.Rows) > 0 {
		out = append(out, t)
	}
	if t := say.eventTable(r); len(t.Rows) > 0 {
		out = append(out, t)
	}
	if t := say.adoptedTable(r); len(t.Rows) > 0 {
		out = append(out, t)
	}
	return append(out, say.signTable())
}

// neededTable says of each kind of study what counts for it.
func (say Words) neededTable(r Record) words.Table {
	p := &r.Proof.Proved
	t := words.Table{
		Title: say.RecordName(),
		Lead:  say.RevisionState(r.Revision, p) + " Asked for " + r.Proof.On + ". A needed study counts for a year, until something happens to the station, and only where every check of it passes.",
		Columns: []words.Column{{Head: "Study", Share: 1.3}, {Head: "Needed", Share: 0.7}, {Head: "Taken", Share: 0.9}, {Head: "By", Share: 1.1}, {Head: "Study digest", Share: 1.1},
			{Head: "Verdict", Share: 0.9}, {Head: "Counts until", Share: 0.9}, {Head: "Checks", Share: 4}},
	}
	for _, kind := range proving.Kinds {
		k, known := p.Kinds[kind]
		if !known {
			continue
		}
		row := []string{say.KindName(kind), "no", "–", "–", "–", say.StateWord(k.State), "–", "–"}
		if slices.Contains(proving.Needed, kind) {
			row[1] = "yes"
		}
		if k.Study != nil && *k.Study < len(r.Studies) {
			s, j := r.Studies[*k.Study], r.Proof.Studies[*k.Study]
			row[2], row[3], row[4] = dayOf(s.TakenAt), orDash(s.TakenBy), words.ShortDigest(j.StudyDigest)
			row[6], row[7] = yearAfter(s.TakenAt), say.checksOf(kind, j.Checks)
		}
		t.Rows = append(t.Rows, row)
	}
	t.Notes = append(t.Notes, say.asFoundNote(r))
	return t
}

func orDash(s string) string {
	if s == "" {
		return "–"
	}
	return s
}

// checksOf lists checks by what they came to, those that did not pass first.
func (say Words) checksOf(kind string, checks []proving.Check) string {
	var out []string
	for _, outcome := range []proving.Answer{proving.Fail, proving.Open, proving.Pass} {
		var list []string
		for _, c := range checks {
			if c.Outcome == outcome {
				list = append(list, strings.ToLower(say.CheckName(kind, c.Name)))
			}
		}
		if len(list) > 0 {
			out = append(out, say.CheckWord(outcome)+": "+strings.Join(list, ", "))
		}
	}
	return orDash(strings.Join(out, "; "))
}

// asFoundNote is the promise computed again for the station as it was found.
func (say Words) asFoundNote(r Record) string {
	a := r.Proof.Proved.AsFound
	if !r.Proof.Proved.FoundStands() {
		return "As found: not known; it takes a master study that counts, and a window."
	}
	return say.AsFoundOf(r.Plan, a)
}

// saidTable has the figures of each study that counts.
func (say Words) saidTable(r Record) words.Table {
	t := words.Table{
		Title:   "What the studies say",
		Columns: []words.Column{{Head: "Study", Share: 1.3}, {Head: "Figure", Share: 2.2}, {Head: "Found", Share: 3}, {Head: "Plan", Share: 2.4}},
		Grouped: true,
	}
	for _, kind := range proving.Kinds {
		k, known := r.Proof.Proved.Kinds[kind]
		if !known || k.Study == nil || *k.Study >= len(r.Proof.Studies) {
			continue
		}
		j := r.Proof.Studies[*k.Study]
		add := func(figure, found, plan string) {
			t.Rows = append(t.Rows, []string{say.KindName(kind), figure, found, plan})
		}
		say.figuresOf(r.Plan, j.Result, add)
		for _, f := range j.Findings {
			if f.Severity != press.Note {
				add(string(f.Severity), say.FindingSaid(r.Plan, r.Studies[*k.Study], &j, f), "–")
			}
		}
	}
	return t
}

// figuresOf calls for each figure of a result that decides something.
func (say Words) figuresOf(plan *press.Result, result any, add func(figure, found, plan string)) {
	pos := say.Positions(plan.Plan).Fine()
	fine := pos.With(4)
	within := func(v float64, u *float64, write func(float64) string) string {
		if u == nil {
			return write(v)
		}
		return write(v) + " ± " + write(*u)
	}
	st, ram := plan.Plan.Station, plan.Plan.Ram
	switch q := result.(type) {
	case *proving.LoadCellResult:
		if a := q.AtSetting; a != nil {
			found := say.Force(a.Force)
			if a.Predict != nil {
				found += ", one more push " + say.Force(a.Predict[0]) + " to " + say.Force(a.Predict[1])
			}
			add("force at "+say.Setting(a.Setting), found, "needed "+say.Force(a.Need)+", cap "+say.Force(a.Cap))
		}
		if s := q.Fit.Scale; s != nil {
			add("scale of the entered curve", ratio(s.Factor, s.Limits), "1")
		}
		if q.Scatter.Tolerance != nil && q.Scatter.Scatter != nil {
			add("scatter of the force", "± "+percent(*q.Scatter.Tolerance)+" and ± "+words.Unit(words.Fixed(*q.Scatter.Scatter, 1), "N"), "± "+percent(ram.ForceTolerance)+" and ± "+words.Unit(words.Fixed(ram.ForceScatter, 1), "N"))
		}
	case *proving.StiffnessResult:
		if k := q.Stiffness; k != nil {
			perMM := func(x float64) string { return words.Unit(words.Fixed(x, 0), "N/mm") }
			tolerance := st.Stiffness * st.StiffnessTolerance / 100
			add("stiffness", within(k.Value, k.Uncertainty, perMM), within(st.Stiffness, &tolerance, perMM))
		}
		if n := q.Nest; n != nil {
			add("nest at "+say.Force(n.NestForce), within(n.Value, n.Uncertainty, fine.At), fine.At(st.Nest))
		}
		if a := q.Agreement; a != nil && a.PositionShift != nil && a.PositionAllowed != nil {
			add("position under the plan's force, off by", within(*a.PositionShift, a.PositionUncertainty, fine.At), "± "+fine.At(*a.PositionAllowed)+" allowed")
		}
	case *proving.MasterResult:
		add("readings", whole(q.N)+", mean "+fine.At(q.Mean), "predicted "+fine.At(q.Predicted))
		add("bias", within(q.Bias.Value, q.Bias.Uncertainty, fine.At), "± "+fine.At(q.Bias.Allowed)+" allowed")
		if q.SD != nil {
			add("standard deviation", fine.At(*q.SD), fine.At(q.Spread.PlannedSD))
		}
		if q.Repeatability != nil && q.Repeatability.Upper != nil {
			add("repeatability shown", "± "+fine.At(*q.Repeatability.Upper), "± "+fine.At(ram.Repeatability))
		}
		if g := q.Gauge; g.Cg != nil && g.Cgk != nil {
			add("Cg, Cgk (0.2 T/6 s)", words.Fixed(*g.Cg, 2)+", "+words.Fixed(*g.Cgk, 2), "1.33 is usual")
		}
	case *proving.RestartResult:
		add("starts", whole(len(q.Starts))+" with "+whole(q.N)+" pushes", "–")
		if q.Supported != nil {
			add("a new start keeps", "± "+fine.At(*q.Supported), "± "+fine.At(st.ReferenceUncertainty))
		}
	case *proving.TrialResult:
		add("parts", whole(q.N)+", "+whole(q.Used)+" with the arrival signal", "–")
		rejects := whole(q.Rejects.Seen) + " of " + whole(q.Rejects.Of)
		if l := q.Rejects.Limits; l != nil {
			rejects += " (" + say.SeenShare(l[0]) + " to " + say.SeenShare(l[1]) + ")"
		}
		predicted := "–"
		if q.Rejects.Predicted != nil {
			predicted = say.SeenShare(*q.Rejects.Predicted)
		}
		add("not both lamps on", rejects, predicted)
		for _, s := range []struct {
			name string
			*proving.Shift
		}{{"readings off by", q.Shift}, {"station off by, the parts taken out", q.StationShift}} {
			if s.Shift == nil {
				continue
			}
			allowed := "–"
			if s.Allowed != nil {
				allowed = "± " + fine.At(*s.Allowed) + " allowed"
			}
			add(s.name, within(s.Value, s.Uncertainty, fine.At), allowed)
		}
		if c := q.Capability; c != nil && c.Ppk != nil {
			add("Ppk of the "+c.Of, ratio(*c.Ppk, c.PpkLimits), "–")
		}
		if c := q.Correction; c != nil {
			add("correction of the nest", steps(c.Steps)+", to "+pos.At(c.Nest), pos.At(st.Nest))
		}
	case *proving.SamplesResult:
		add("rows of each role", whole(q.Roles.Long)+" long, "+whole(q.Roles.Short)+" short, "+whole(q.Roles.Good)+" good, "+whole(q.Roles.Empty)+" without an insert", "3 of each")
		wrong := 0
		for _, row := range q.Rows {
			if row.Lamps == proving.Fail || row.Reading != nil && *row.Reading == proving.Fail {
				wrong++
			}
		}
		add("not as predicted", whole(wrong)+" of "+whole(len(q.Rows)), "none")
		if o := q.Offset; o != nil {
			add("readings off by", fine.At(o.Value), "± "+fine.At(o.Allowed)+" allowed")
		}
	}
}

func whole(n int) string { return words.Fixed(float64(n), 0) }

func percent(x float64) string { return words.Unit(words.Fixed(x, 2), "%") }

func steps(n int) string {
	if math.Abs(float64(n)) == 1 {
		return words.Fixed(float64(n), 0) + " step"
	}
	return words.Fixed(float64(n), 0) + " steps"
}

// ratio writes a plain factor with its limits.
func ratio(x float64, limits *proving.Pair) string {
	s := words.Fixed(x, 3)
	if limits != nil {
		s += " (" + words.Fixed(limits[0], 3) + " to " + words.Fixed(limits[1], 3) + ")"
	}
	return s
}

// eventTable lists what happened to the station, as it was given.
func (say Words) eventTable(r Record) words.Table {
	t := words.Table{
		Title:   "What happened to the station",
		Columns: []words.Column{{Head: "When", Share: 1.2}, {Head: "What", Share: 2}, {Head: "By", Share: 1.4}, {Head: "Which studies it withdraws", Share: 4}, {Head: "Notes", Share: 3}},
	}
	for _, s := range r.Studies {
		if s.Kind == proving.Event {
			t.Rows = append(t.Rows, []string{s.TakenAt, say.EventName(s.Event), orDash(s.TakenBy), say.EventEffect(s.Event), orDash(s.Notes)})
		}
	}
	return t
}

// adoptedTable lists what the plan took over from studies.
func (say Words) adoptedTable(r Record) words.Table {
	t := words.Table{
		Title:   "Taken over from studies",
		Columns: []words.Column{{Head: "When", Share: 1}, {Head: "Study digest", Share: 1.2}, {Head: "Entry", Share: 2.4}, {Head: "Before", Share: 2}, {Head: "After", Share: 2}},
	}
	for _, a := range r.Adopted {
		t.Rows = append(t.Rows, []string{a.On, words.ShortDigest(a.Digest), a.Label, orDash(a.Was), orDash(a.Is)})
	}
	return t
}

// signTable has the lines for those who sign.
func (say Words) signTable() words.Table {
	t := words.Table{
		Title:   "Signed",
		Columns: []words.Column{{Head: "Who", Share: 1.6}, {Head: "Name", Share: 2.4, Box: true}, {Head: "Date", Share: 1.2, Box: true}, {Head: "Signature", Share: 3, Box: true}},
	}
	for _, who := range []string{"Took the studies", "Judged them", "Releases the station"} {
		t.Rows = append(t.Rows, []string{who, "", "", ""})
	}
	t.Notes = []string{"Passing means that the studies do not refute the plan. Guarding and stopping are no part of this proof."}
	return t
}
