package view

import (
	"strings"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// writer writes figures as far as the plan's steps know them.
type writer struct {
	p      *press.Plan
	r      *press.Result
	places places
	pos    words.Positions
}

// result gives everything that a plan leads to in ready words.
func result(p *press.Plan, r *press.Result, d Drawings, at places) *page.Result {
	w := writer{p, r, at, say.Positions(p)}
	out := &page.Result{
		Digest:    r.PlanDigest(),
		Strip:     d.Strip,
		Setpoints: w.setpoints(),
		Rules:     w.rules(),
		Table:     w.table(),
		TableHead: say.TableHead(r),
		Findings:  w.findings(),
		Count:     w.count(),
		Groups:    w.groups(d),
		Faults:    w.catalogue(),
		Lead:      say.CatalogueLead(r),
		Samples:   w.samples(),
		Rule:      say.ReadingRule(p, r),
		Unseen:    say.Unseen(p, r),
		Perfect:   say.Perfect(r),
		Cautions:  words.Cautions,
		Trade:     words.TradeCautions,
		NotReady:  say.NotTyped(r),
	}
	if r.Verdict != nil && r.Verdict.Ambiguous {
		out.Unclear = say.TableAmbiguous()
	}
	return out
}

// setpoints are what is typed into the controller.
func (w writer) setpoints() []page.Figure {
	var out []page.Figure
	for _, s := range say.Setpoints(w.p, w.r) {
		f := page.Figure{Label: s.Label, Value: s.Value, Unit: s.Unit, Note: s.Note, Exact: s.Exact, Word: WordLink(s.Word)}
		if w, named := words.InOwnWords(w.p, s); named {
			f.Own = w.String()
		}
		if s.Path != "" {
			f.Link = w.places.link(s.Path)
		}
		out = append(out, f)
	}
	return out
}

// none stands where a figure does not exist.
const none = "–"

func (w writer) position(label string, x *float64) page.Figure {
	if x == nil {
		return page.Figure{Label: label, Value: none}
	}
	return page.Figure{Label: label, Value: w.pos.Bare(*x), Unit: "mm", Exact: words.Exact(*x)}
}

// table is the four signal pairs with their words and what to do.
func (w writer) table() []page.Lamps {
	var out []page.Lamps
	for _, t := range say.PairTexts(w.p, w.r) {
		l := page.Lamps{Arrival: t.Pair.Arrival, Zone: t.Pair.Zone, Means: t.Meaning, Do: t.Do}
		switch {
		case len(t.Words) == 0:
			l.Words = []page.Word{{Kind: press.FaultWord, Text: t.Verdict}}
		case words.Settled(w.p, t.Words):
			l.Words = []page.Word{{Kind: press.Good, Text: t.Verdict}}
		default:
			for _, word := range t.Words {
				l.Words = append(l.Words, page.Word{Kind: word, Text: words.Say(word)})
			}
		}
		out = append(out, l)
	}
	return out
}

func (w writer) findings() []page.Finding {
	say.Explain(w.r)
	var out []page.Finding
	for _, f := range w.r.Findings {
		out = append(out, page.Finding{Severity: string(f.Severity), Text: f.Message, Link: w.places.link(f.Path), Where: label(f.Path)})
	}
	return out
}

// severities, gravest first.
var severities = []press.Severity{press.Blocker, press.Caution, press.Note}

func (w writer) count() string {
	var counts []string
	for _, k := range severities {
		if n := w.r.Count(k); n > 0 {
			counts = append(counts, counted(n, string(k), string(k)+"s"))
		}
	}
	return strings.Join(counts, ", ")
}

// gravest is the severity of the gravest finding; empty without any.
func gravest(r *press.Result) string {
	for _, k := range severities {
		if r.Count(k) > 0 {
			return string(k)
		}
	}
	return ""
}
