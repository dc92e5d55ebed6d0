package words

import (
	"strconv"
	"strings"

	"ramplan/press"
)

// RuleName names a rule by which a window is proposed.
func (say Printer) RuleName(rule string) string {
	switch rule {
	case press.ByTarget:
		return "For the targets"
	case press.ByProcess:
		return "Around the process"
	}
	return "By the guard band"
}

// Ruled says for what a window was proposed; empty where it is by the guard bands.
func (say Printer) Ruled(p *press.Plan) string {
	switch p.Window.Rule {
	case press.ByTarget:
		return "for the targets"
	case press.ByProcess:
		return "around the process"
	}
	return ""
}

// RuleHelp says in one line what a rule does.
func (say Printer) RuleHelp(p *press.Plan, rule string) string {
	switch rule {
	case press.ByTarget:
		day := "on average"
		if p.Window.TargetsFor == press.OnWorstDay {
			day = "on a worst day"
		}
		return "the narrowest that keeps both targets tenfold " + day + ", else the one nearest to them"
	case press.ByProcess:
		return "within the guard bands, " + Exact(p.Window.ProcessSD) + " standard deviations about the nominal reading"
	}
	if p.Window.GuardFactor == 1 {
		return "inside the drawing by the uncertainty of a reading"
	}
	return "inside the drawing by " + Exact(p.Window.GuardFactor) + " times the uncertainty of a reading"
}

// WindowBy says by which rule zone start and push end stand where they do, or that it is by
// hand.
func (say Printer) WindowBy(p *press.Plan) string {
	start, end := p.Window.ZoneStart != nil, p.Window.PushStroke != nil
	if start && end {
		return "zone start and push end set by hand, by no rule"
	}
	rule := p.Window.Rule
	s := lowerFirst(say.RuleName(rule)) + ", "
	switch {
	case start:
		s = "zone start by hand, push end " + s
	case end:
		s = "push end by hand, zone start " + s
	}
	switch rule {
	case press.ByTarget:
		s += "accepted wrongly " + say.TargetPPM(p.Targets.FalseAcceptPPM) + ", refused wrongly " + say.TargetPPM(p.Targets.FalseRejectPPM)
		if p.Window.TargetsFor == press.OnWorstDay {
			return s + ", on a worst day"
		}
		return s + ", on average"
	}
	return s + say.RuleHelp(p, rule)
}

// WindowStands names the rule of the window in few words.
func (say Printer) WindowStands(p *press.Plan) string {
	if p.Window.ZoneStart != nil && p.Window.PushStroke != nil {
		return "Window set by hand"
	}
	return "Window " + lowerFirst(say.RuleName(p.Window.Rule))
}

// RulesLead heads the choice of rules.
func (say Printer) RulesLead() string {
	return "A wider window lets more wrong heights pass and refuses fewer good parts. Shares are of all parts, by their heights alone, on average; under each stands that of the worst day."
}

// RulePrice says what a rule's window costs against that of the guard bands: good parts
// refused more or fewer. Empty where either is not known, or they are the same.
func (say Printer) RulePrice(row, guard press.RuleWindow) string {
	if row.ProducerPPM == nil || guard.ProducerPPM == nil || row.Rule == guard.Rule {
		return ""
	}
	switch d := *row.ProducerPPM - *guard.ProducerPPM; {
	case d >= leastPPM:
		return say.PPM(d) + " more than by the guard band"
	case d <= -leastPPM:
		return say.PPM(-d) + " fewer than by the guard band"
	}
	return "as by the guard band"
}

// TargetSays tells how the window stands to its targets; empty under another rule.
func (say Printer) TargetSays(p *press.Plan, r *press.Result) string {
	t := r.Window.Target
	if t == nil {
		return ""
	}
	day := ""
	if p.Window.TargetsFor == press.OnWorstDay {
		day = " on a worst day"
	}
	switch {
	case t.Measure == nil:
		return "No window can be proposed for the targets."
	case t.Met:
		return "Both targets are kept" + day + ". Nearer to its target is " + bound(*t.Binding) + ", at " + say.partOf(*t.Measure) + " of it."
	case *t.Binding == press.BindBoth:
		return "The targets are missed" + day + ". No window inside the drawing keeps both: what one gains the other loses."
	}
	return "The targets are missed" + day + ". No window inside the drawing keeps the target for " + bound(*t.Binding) + ", whatever the other one allows."
}

// partOf writes a part of a target, in percent with two digits.
func (say Printer) partOf(x float64) string {
	if x < 1e-4 {
		return "under " + Unit("0.01", "%")
	}
	return Unit(Trimmed(100*x, significant(100*x, 2, 0)), "%")
}

func bound(which string) string {
	if which == press.BindsAccept {
		return "false accept"
	}
	return "false reject"
}

// ChangesLead heads the single changes that would meet the targets.
func (say Printer) ChangesLead() string {
	return "Any one of these changes alone would keep both targets, with setting and window proposed afresh. Each was evaluated. Whether your station can be made so is for you to know."
}

// ChangesNone says that no single change would do.
func (say Printer) ChangesNone() string {
	return "No single change of the station, the parts or the drawing, up to its limit, would keep both targets."
}

// mostAllowed is by how many times a target may rise to be offered: more gives it up.
const mostAllowed = 10

// givesUp tells whether a change keeps a target by allowing so much more that there is
// hardly one left.
func givesUp(c press.TargetChange) bool {
	return strings.HasPrefix(c.Path, "targets.") && c.To != nil && *c.To > mostAllowed*c.From
}

// GivenUp speaks of the targets that would be kept only by giving them up, which is not
// offered; empty where there are none.
func (say Printer) GivenUp(changes []press.TargetChange) string {
	var list []string
	for _, c := range changes {
		if f, known := press.FieldAt(c.Path); known && givesUp(c) {
			list = append(list, lowerFirst(f.Label)+" of "+Unit(ppmDigits(*c.To, 2), "ppm")+", "+say.times(*c.To/c.From)+" what is asked for")
		}
	}
	if len(list) == 0 {
		return ""
	}
	return "Allowing more would do it only with a " + strings.Join(list, ", or a ") + ": that gives the target up, and is not offered."
}

// mends names the single changes that would keep both targets, as they were evaluated, or
// says that none does; empty where nothing was looked for.
func (t *told) mends() string {
	if target := t.r.Window.Target; target == nil || target.Met || t.r.Plan == nil {
		return ""
	}
	var names []string
	for _, c := range t.r.TargetChanges() {
		if text, ok := t.say.Change(t.r.Plan, c); ok {
			names = append(names, lowerFirst(text.What))
		}
	}
	switch {
	case len(t.r.TargetChanges()) == 0:
		return ""
	case len(names) == 0:
		return "no single change of the station, the parts or the drawing keeps both targets, so several are needed"
	case len(names) == 1:
		return "a change of the " + names[0] + " alone would keep both targets"
	case len(names) > mostNamed:
		names = append(names[:mostNamed:mostNamed], "others")
	}
	return "any one of these changes alone would keep both targets: " + and(names) + " (see the rules of the window)"
}

// mostNamed is how many changes a finding names.
const mostNamed = 3

// A ChangeText is a change that would meet the targets, in words.
type ChangeText struct{ What, To string }

// Change writes one change. Not ok: even its limit does not do it, or it gives a target up.
func (say Printer) Change(p *press.Plan, c press.TargetChange) (text ChangeText, ok bool) {
	if c.To == nil || givesUp(c) {
		return ChangeText{}, false
	}
	pos := say.Positions(p)
	switch c.Path {
	case press.ChangeMean:
		return ChangeText{"Mean height of the parts", "to " + Unit(fine(*c.To), say.UnitOfLength()) + ", by the nominal length in " + changedRow(p, c.Entries)}, true
	case press.ChangeSpread:
		return ChangeText{"Tolerances of all rows that are no datum", "to " + say.partOf(*c.To) + " of what they are"}, true
	case press.ChangeRequirement:
		return ChangeText{"Requirement", "wider by " + pos.Fine().Length(*c.To) + " on both sides"}, true
	}
	f, known := press.FieldAt(c.Path)
	if !known {
		return ChangeText{}, false
	}
	return ChangeText{f.Label, "from " + Unit(fine(c.From), f.Unit) + " to " + Unit(fine(*c.To), f.Unit)}, true
}

// fine writes a figure with four significant digits at most.
func fine(x float64) string { return Trimmed(x, significant(x, 4, 0)) }

// changedRow names the row of the parts that is changed.
func changedRow(p *press.Plan, entries []press.FieldValue) string {
	for _, e := range entries {
		if _, n, ok := rowOf(e.Path); ok {
			if n < len(p.Parts) && strings.TrimSpace(p.Parts[n].Name) != "" {
				return "“" + strings.TrimSpace(p.Parts[n].Name) + "”"
			}
			return "row " + strconv.Itoa(n+1)
		}
	}
	return "the parts"
}

// Tried tells what a change did to the entries.
func (say Printer) Tried(t ChangeText) string {
	return t.What + " " + t.To + " is entered for a try: nothing at the station has changed yet."
}

// RuleSet tells that another rule was chosen.
func (say Printer) RuleSet(rule string) string {
	return "Zone start and push end are proposed " + lowerFirst(say.RuleName(rule)) + "."
}

// RulesByHand is said where both edges of the window are set by hand.
func (say Printer) RulesByHand() string {
	return "Zone start and push stroke are set by hand: no rule moves them. Empty one of them to have it proposed."
}

// RuleOnWorstDay is a share of a rule's window on the worst day.
func (say Printer) RuleOnWorstDay(ppm float64) string { return "worst day " + say.PPM(ppm) }

// RuleNoWindow stands in place of the button of a rule that proposes no window.
func (say Printer) RuleNoWindow() string { return "no window by this rule" }

// RuleMisses is said of a window that was looked for the targets and misses them.
func (say Printer) RuleMisses() string { return "misses the targets" }

// NotTried is said where a change cannot be taken into the entries.
func (say Printer) NotTried() string {
	return "This cannot be done with the entries as they are now. Nothing was changed."
}
