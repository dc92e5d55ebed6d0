package proof

import (
	"strconv"

	"ramplan/press"
	"ramplan/press/proving"
	"ramplan/press/words"
)

// A Figures is a table of figures of a study.
type Figures struct {
	Name, Head string
	Heads      []string // of the columns, the first over the labels; none for two columns
	Rows       []FigureRow
}

// A FigureRow is one row of them.
type FigureRow struct {
	Label string
	Cells []string
}

// lister collects rows of one figure each.
type lister struct {
	Words
	rows []FigureRow
}

func (l *lister) add(label, cell string) {
	if cell != "" {
		l.rows = append(l.rows, FigureRow{label, []string{cell}})
	}
}

// fine writes a length to a tenth of a micrometre less than what matters: 0.001 mm.
func (say Words) fine(mm float64) string { return words.Unit(words.Fixed(mm, 3), "mm") }

func (say Words) finest(mm float64) string { return words.Unit(words.Fixed(mm, 4), "mm") }

// known writes a figure with its ±, in mm.
func (say Words) withinMM(value float64, u *float64) string {
	if u == nil {
		return say.finest(value)
	}
	return words.Fixed(value, 4) + " ± " + say.finest(*u)
}

func pairOf(p *proving.Pair, write func(float64) string) string {
	if p == nil {
		return ""
	}
	return write(p[0]) + " to " + write(p[1])
}

func given(x *float64, write func(float64) string) string {
	if x == nil {
		return ""
	}
	return write(*x)
}

// chance writes a p value.
func chance(p *float64) string {
	if p == nil {
		return ""
	}
	if *p < 0.0001 {
		return "< 0.0001"
	}
	return words.Fixed(*p, 4)
}

// FiguresOf are the figures of a judged study in tables.
func (say Words) FiguresOf(r *press.Result, s *proving.Study, j *proving.Judged) []Figures {
	switch x := j.Result.(type) {
	case *proving.LoadCellResult:
		if x != nil {
			return say.loadCellFigures(x)
		}
	case *proving.StiffnessResult:
		if x != nil {
			return say.stiffnessFigures(x)
		}
	case *proving.MasterResult:
		if x != nil {
			return say.masterFigures(x)
		}
	case *proving.RestartResult:
		if x != nil {
			return say.restartFigures(x)
		}
	case *proving.TrialResult:
		if x != nil {
			return say.trialFigures(x)
		}
	case *proving.SamplesResult:
		if x != nil {
			return say.samplesFigures(r, x)
		}
	}
	return nil
}

func (say Words) newtons(n float64) string { return words.Unit(words.Fixed(n, 1), "N") }

func (say Words) percent(x float64) string { return words.Unit(words.Trimmed(x, 2), "%") }

func plainly(decimals int) func(float64) string {
	return func(x float64) string { return words.Fixed(x, decimals) }
}

func (say Words) loadCellFigures(x *proving.LoadCellResult) []Figures {
	at := Figures{Name: "settings", Head: "Force at each setting, N", Heads: []string{"Setting", "Pushes", "Mean", "sd", "One further push", "Plan", "It lies"}}
	for _, s := range x.Settings {
		row := FigureRow{Label: say.Setting(s.Setting), Cells: []string{strconv.Itoa(s.N), words.Fixed(s.Mean, 1), given(s.SD, plainly(1)), pairOf(s.Predict, plainly(0)), "", ""}}
		if s.Plan != nil {
			row.Cells[4] = words.Fixed(s.Plan[0], 0) + " to " + words.Fixed(s.Plan[2], 0)
		}
		if s.Place != nil {
			row.Cells[5] = say.placeWord(*s.Place)
		}
		at.Rows = append(at.Rows, row)
	}
	l := lister{Words: say}
	l.add("Scatter that grows with the force, ±", given(x.Scatter.Tolerance, say.percent))
	l.add("Scatter that is the same everywhere, ±", given(x.Scatter.Scatter, say.newtons))
	l.add("Scatter against the plan's", given(x.Scatter.Factor, plainly(2)))
	l.add("Its limits", pairOf(x.Scatter.FactorLimits, plainly(2)))
	l.add("Chance of such a scatter (p)", chance(x.Scatter.P))
	if f := x.Fit.Scale; f != nil {
		l.add("The curve is to be multiplied by", words.Fixed(f.Factor, 4))
		l.add("Its limits", pairOf(f.Limits, plainly(4)))
		l.add("Chance, were it 1 (p)", chance(f.P))
	}
	if f := x.Fit.Bend; f != nil {
		l.add("Chance of such a bend, were the shape right (p)", chance(f.P))
	}
	if d := x.Drift; d != nil {
		l.add("Drift over the study, in sd", words.Fixed(d.ChangeSD, 2))
		l.add("Chance of such a drift (p)", chance(&d.P))
	}
	if c := x.ColdWarm; c != nil {
		l.add("Warm against cold, in sd", words.Fixed(c.DifferenceSD, 2))
		l.add("Chance of such a difference (p)", chance(&c.P))
	}
	if a := x.AtSetting; a != nil {
		l.add("Force at the plan's setting, "+say.Setting(a.Setting), say.newtons(a.Force))
		l.add("One further push there", pairOf(a.Predict, say.newtons))
		l.add("Needed, and allowed at most", pairOf(&proving.Pair{a.Need, a.Cap}, say.newtons))
	}
	return []Figures{at, {Name: "scatter", Head: "Scatter, scale and drift", Rows: l.rows}}
}

func (say Words) placeWord(place string) string {
	switch place {
	case proving.Inside:
		return "inside"
	case proving.Outside:
		return "outside"
	}
	return "open"
}

func (say Words) perMM(n float64) string { return words.Unit(words.Fixed(n, 0), "N/mm") }

func (say Words) stiffnessFigures(x *proving.StiffnessResult) []Figures {
	l := lister{Words: say}
	if k := x.Stiffness; k != nil {
		text := say.perMM(k.Value)
		if k.Uncertainty != nil {
			text = words.Fixed(k.Value, 0) + " ± " + say.perMM(*k.Uncertainty)
		}
		l.add("Stiffness", text)
	}
	if n := x.Nest; n != nil {
		l.add("Nest under "+say.Force(n.NestForce), say.withinMM(n.Value, n.Uncertainty))
	}
	if n := x.Taught; n != nil {
		l.add("Nest under "+say.Force(n.NestForce), say.withinMM(n.Value, n.Uncertainty))
	}
	if a := x.Agreement; a != nil {
		l.add("Stiffness against the plan, E_n", given(a.StiffnessEN, plainly(2)))
		if a.PositionShift != nil {
			l.add("Shift at the plan's force", say.withinMM(*a.PositionShift, a.PositionUncertainty))
		}
		l.add("Shift that the plan allows", given(a.PositionAllowed, say.finest))
		l.add("Shift against the plan, E_n", given(a.PositionEN, plainly(2)))
	}
	if p := x.Repeatability; p != nil {
		l.add("Scatter about the line, ±", given(p.Value, say.finest))
		l.add("Supported by these pushes, ±", given(p.Upper, say.finest))
	}
	l.add("Pushes, levels of force, pushes used", strconv.Itoa(x.N)+", "+strconv.Itoa(x.Levels)+", "+strconv.Itoa(x.Used))
	l.add("Start-up below", given(x.StartupBelow, say.newtons))
	if b := x.Lowest; b != nil {
		l.add("Lowest level off the line of the others", say.finest(b.Deviation))
		l.add("Chance of that (p)", chance(b.P))
	}
	if c := x.Curvature; c != nil {
		l.add("Sag of a bent line", say.finest(c.Sag))
		l.add("Chance of such a bend (p)", chance(c.P))
	}
	l.series(x.Trend, x.Serial)
	return []Figures{{Name: "line", Head: "The line through the pushes", Rows: l.rows}}
}

func (l *lister) series(t *proving.Trend, s *proving.Serial) {
	if t != nil {
		l.add("Chance of such a trend (p)", chance(&t.P))
	}
	if s != nil {
		l.add("Chance of neighbours so alike (p)", chance(&s.P))
	}
}

func (say Words) masterFigures(x *proving.MasterResult) []Figures {
	l := lister{Words: say}
	l.add("Pushes", strconv.Itoa(x.N))
	l.add("Mean reading at "+say.Setting(x.Setting), say.finest(x.Mean))
	l.add("Predicted", say.finest(x.Predicted))
	l.add("Bias", say.withinMM(x.Bias.Value, x.Bias.Uncertainty))
	l.add("Bias that the plan allows", say.finest(x.Bias.Allowed))
	l.add("Standard deviation", given(x.SD, say.finest))
	l.add("Its limits", pairOf(x.SDLimits, say.finest))
	l.add("Planned", say.finest(x.Spread.PlannedSD))
	l.add("Chance of such a spread (p)", chance(x.Spread.P))
	if p := x.Repeatability; p != nil {
		l.add("Repeatability, ±", given(p.Value, say.finest))
		l.add("Supported by these pushes, ±", given(p.Upper, say.finest))
	}
	l.series(x.Trend, x.Serial)
	g := Figures{Name: "gauge", Head: "Gauge study of type 1, tolerance " + say.fine(x.Gauge.Tolerance), Heads: []string{"Definition", "Cg", "Cgk"}}
	for _, v := range x.Gauge.Variants {
		g.Rows = append(g.Rows, FigureRow{v.Name, []string{given(v.Cg, plainly(2)), given(v.Cgk, plainly(2))}})
	}
	if x.Gauge.QMS != nil {
		g.Rows = append(g.Rows, FigureRow{"Q_MS, C_MS", []string{given(x.Gauge.QMS, say.percent), given(x.Gauge.CMS, plainly(2))}})
	}
	return []Figures{{Name: "master", Head: "Readings of the master", Rows: l.rows}, g}
}

func (say Words) restartFigures(x *proving.RestartResult) []Figures {
	at := Figures{Name: "starts", Head: "Readings after each start", Heads: []string{"Start", "Pushes", "Mean, mm"}}
	for _, s := range x.Starts {
		at.Rows = append(at.Rows, FigureRow{words.Trimmed(s.Start, 0), []string{strconv.Itoa(s.N), words.Fixed(s.Mean, 4)}})
	}
	l := lister{Words: say}
	l.add("Within a start, sd", given(x.Within, say.finest))
	l.add("Between starts, sd", given(x.Between, say.finest))
	if a := x.Anova; a != nil {
		l.add("Chance, were all starts alike (p)", chance(a.P))
	}
	l.add("Means of the starts, sd", given(x.SD, say.finest))
	l.add("Planned", say.finest(x.Spread.PlannedSD))
	l.add("Chance of such a spread (p)", chance(x.Spread.P))
	l.add("A new start is shown to keep, ±", given(x.Supported, say.finest))
	if c := x.ColdWarm; c != nil {
		l.add("Cold starts against warm ones", say.finest(c.Difference))
		l.add("Its limits", pairOf(c.Limits, say.finest))
	}
	l.series(x.Trend, x.Serial)
	return []Figures{{Name: "restart", Head: "What a new start moves", Rows: l.rows}, at}
}

func (say Words) pairName(pair string) string {
	switch pair {
	case "on_on":
		return "both on"
	case "on_off":
		return "arrival on, zone off"
	case "off_on":
		return "arrival off, zone on"
	case "off_off":
		return "both off"
	}
	return "rejects"
}

func (say Words) seenRow(label string, s proving.SeenShare) FigureRow {
	return FigureRow{label, []string{strconv.Itoa(s.Seen) + " of " + strconv.Itoa(s.Of), given(s.Share, say.SeenShare), pairOf(s.Limits, say.SeenShare), given(s.Predicted, say.SeenShare)}}
}

func (say Words) trialFigures(x *proving.TrialResult) []Figures {
	shares := Figures{Name: "shares", Head: "Lamps seen and predicted", Heads: []string{"Lamps", "Seen", "Share", "95 % limits", "Predicted"}}
	for _, s := range x.Shares {
		shares.Rows = append(shares.Rows, say.seenRow(say.pairName(s.Pair), s))
	}
	shares.Rows = append(shares.Rows, say.seenRow("all but both on", x.Rejects))
	out := []Figures{shares}
	l := lister{Words: say}
	l.add("Parts, with arrival", strconv.Itoa(x.N)+", "+strconv.Itoa(x.Used))
	l.add("Mean reading", given(x.Mean, say.finest))
	l.add("Planned", say.finest(x.Nominal))
	shift := func(name string, s *proving.Shift) {
		if s != nil {
			l.add(name, say.withinMM(s.Value, s.Uncertainty))
			l.add(name+", allowed", given(s.Allowed, say.finest))
		}
	}
	shift("Shift of the readings", x.Shift)
	shift("Shift of the station", x.StationShift)
	shift("Shift of the parts", x.PartsShift)
	l.add("Standard deviation", given(x.SD, say.finest))
	l.add("Its limits", pairOf(x.SDLimits, say.finest))
	l.add("Planned", say.finest(x.Spread.PlannedSD))
	l.add("Chance of such a spread (p)", chance(x.Spread.P))
	if n := x.Normality; n != nil {
		l.add("Chance, were the readings normal (p)", chance(&n.P))
	}
	l.series(x.Trend, x.Serial)
	out = append(out, Figures{Name: "readings", Head: "Readings", Rows: l.rows})
	if c := x.Capability; c != nil {
		l := lister{Words: say}
		l.add("Of", say.capabilityOf(c))
		l.add("Mean", given(c.Mean, say.finest))
		l.add("Standard deviation", given(c.SD, say.finest))
		l.add("Pp", given(c.Pp, plainly(2)))
		l.add("Limits of Pp", pairOf(c.PpLimits, plainly(2)))
		l.add("Ppk", given(c.Ppk, plainly(2)))
		l.add("Limits of Ppk", pairOf(c.PpkLimits, plainly(2)))
		out = append(out, Figures{Name: "capability", Head: "Capability", Rows: l.rows})
	}
	if t := x.Truth; t != nil {
		f := Figures{Name: "truth", Head: "Measured parts and their lamps", Heads: []string{"The part is", "both on", "arrival only", "zone only", "both off"}}
		for _, key := range []string{"long", "good", "short"} {
			m := t.Matrix[key]
			f.Rows = append(f.Rows, FigureRow{key, []string{strconv.Itoa(m.OnOn), strconv.Itoa(m.OnOff), strconv.Itoa(m.OffOn), strconv.Itoa(m.OffOff)}})
		}
		l := lister{Words: say}
		l.add("Parts too near to a limit to be counted", strconv.Itoa(t.Doubtful))
		out = append(out, f, Figures{Name: "false", Head: "Wrongly passed and wrongly refused", Heads: []string{"Parts", "Seen", "Share", "95 % limits", "Predicted"}, Rows: []FigureRow{
			say.seenRow("wrongly passed", t.FalseAccept), say.seenRow("wrongly refused", t.FalseReject),
		}})
	}
	return out
}

func (say Words) capabilityOf(c *proving.Capability) string {
	if c.Of == proving.OfHeights {
		return counted(c.N, "measured height", "measured heights")
	}
	return counted(c.N, "height from its reading", "heights from their readings")
}

func (say Words) samplesFigures(r *press.Result, x *proving.SamplesResult) []Figures {
	rows := Figures{Name: "samples", Head: "Samples", Heads: []string{"Sample", "Proves", "Lamps", "Predicted", "Reading", "Predicted, mm", "Off by"}}
	for _, s := range x.Rows {
		rows.Rows = append(rows.Rows, FigureRow{strconv.Itoa(s.Row) + ". " + s.Sample, []string{
			say.RoleWord(s.Role), say.CheckWord(s.Lamps), say.LampsPredicted(s.Arrival, s.Zone), say.readingWord(s.Reading), given(s.PredictedReading, plainly(3)), given(s.Difference, plainly(3)),
		}})
	}
	l := lister{Words: say}
	l.add("Rows that prove: long, short, good, empty", strconv.Itoa(x.Roles.Long)+", "+strconv.Itoa(x.Roles.Short)+", "+strconv.Itoa(x.Roles.Good)+", "+strconv.Itoa(x.Roles.Empty))
	if o := x.Offset; o != nil {
		l.add("Mean difference of the readings", say.finest(o.Value))
		l.add("Allowed", say.finest(o.Allowed))
	}
	return []Figures{rows, {Name: "roles", Head: "Roles and readings", Rows: l.rows}}
}

// RoleWord says what a sample proves.
func (say Words) RoleWord(role *string) string {
	if role == nil {
		return "nothing"
	}
	return *role
}

// LampsPredicted is the pair of lamps that a plan predicts.
func (say Words) LampsPredicted(arrival, zone *bool) string {
	if arrival == nil || zone == nil {
		return "not known"
	}
	return words.Pair{Arrival: *arrival, Zone: *zone}.String()
}

func (say Words) readingWord(a *proving.Answer) string {
	if a == nil {
		return ""
	}
	return say.CheckWord(*a)
}
