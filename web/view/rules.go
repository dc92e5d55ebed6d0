package view

import (
	"strings"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// Commands of the choice of rules and of the changes that would meet the targets.
const (
	DoRule = "rule"
	DoTry  = "try"
)

// rules sets the windows of the three rules side by side; nil where nothing can be pressed
// in.
func (w writer) rules() *page.Rules {
	rows := w.r.RuleWindows()
	if len(rows) == 0 {
		return nil
	}
	out := &page.Rules{Lead: w.pos.RulesLead(), Says: w.pos.TargetSays(w.p, w.r)}
	if rows[0].ByHand {
		out.ByHand = w.pos.RulesByHand()
	}
	for _, row := range rows {
		line := page.RuleRow{
			Name: w.pos.RuleName(row.Rule), Help: w.pos.RuleHelp(w.p, row.Rule), Chosen: row.Chosen, Do: DoRule + " " + row.Rule,
			Start: w.maybePosition(row.ZoneStart), End: w.maybePosition(row.PushEnd), Width: w.maybePosition(row.Width),
			Accept: none, Reject: none, Price: w.pos.RulePrice(row, rows[0]),
		}
		if row.ConsumerPPM != nil {
			line.Accept, line.Reject = w.pos.PPM(*row.ConsumerPPM), w.pos.PPM(*row.ProducerPPM)
		}
		if row.Worst != nil {
			line.AcceptWorst, line.RejectWorst = w.pos.RuleOnWorstDay(row.Worst.ConsumerPPM), w.pos.RuleOnWorstDay(row.Worst.ProducerPPM)
		}
		if row.Width == nil && !row.ByHand {
			line.NoWindow = w.pos.RuleNoWindow()
		}
		if row.TargetMissed && row.ZoneStart != nil {
			line.Missed = w.pos.RuleMisses()
		}
		out.Rows = append(out.Rows, line)
	}
	out.Changes = w.changes()
	return out
}

func (w writer) maybePosition(x *float64) string {
	if x == nil {
		return none
	}
	return w.pos.Bare(*x)
}

// changes are what alone would meet the targets; nil where they are met, or not asked for.
func (w writer) changes() *page.Changes {
	if t := w.r.Window.Target; t == nil || t.Met {
		return nil
	}
	out := &page.Changes{}
	for _, c := range w.r.TargetChanges() {
		if text, ok := w.pos.Change(w.p, c); ok {
			out.Rows = append(out.Rows, page.ChangeRow{What: text.What, To: text.To, Do: DoTry + " " + c.Path})
		}
	}
	out.GivenUp = w.pos.GivenUp(w.r.TargetChanges())
	out.Lead = w.pos.ChangesLead()
	if len(out.Rows) == 0 {
		out.Lead = w.pos.ChangesNone()
	}
	return out
}

// Choose takes another rule into the entries. It is false where there is no such rule.
func Choose(t Typed, rule string) (Typed, string, bool) {
	f, _ := press.FieldAt("window.rule")
	for _, known := range f.Choices {
		if known == rule {
			return set(t, []press.Entry{{Path: f.Path, Text: rule}}), say.RuleSet(rule), true
		}
	}
	return t, "", false
}

// Try takes one of the changes that would meet the targets into the entries. It is false
// where there is no such change, because the entries are no plan or lead elsewhere.
func Try(t Typed, path string) (Typed, string, bool) {
	p, faults := t.Draft.Check()
	if len(faults) > 0 {
		return t, "", false
	}
	for _, c := range press.Evaluate(p).TargetChanges() {
		text, ok := say.Change(p, c)
		if c.Path != path || !ok {
			continue
		}
		var entries []press.Entry
		for _, e := range c.Entries {
			entries = append(entries, press.Entry{Path: e.Path, Text: words.Exact(e.Value)})
		}
		return set(t, entries), say.Tried(text), true
	}
	return t, "", false
}

// set types texts into the entries.
func set(t Typed, entries []press.Entry) Typed {
	d := press.Draft{Entries: append([]press.Entry(nil), t.Draft.Entries...)}
	for _, e := range entries {
		d.Set(e.Path, strings.TrimSpace(e.Text))
	}
	t.Draft = d
	return t
}
