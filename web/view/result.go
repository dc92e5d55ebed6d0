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
	w := writer{p, r, at, words.PositionsOf(p)}
	out := &page.Result{
		Digest:    r.PlanDigest,
		Strip:     d.Strip,
		Setpoints: w.setpoints(),
		Table:     w.table(),
		Findings:  w.findings(),
		Count:     w.count(),
		Groups:    w.groups(d),
		Faults:    w.catalogue(),
		Samples:   w.samples(),
		Rule:      words.ReadingRule,
		Unseen:    words.Unseen(p, r),
		Perfect:   words.Perfect(r),
		Cautions:  words.Cautions,
		Trade:     words.TradeCautions,
	}
	if r.Blocked() {
		out.NotReady = "Not ready to be typed in: " + words.NotReady(r) + "."
	}
	if r.Verdict != nil && r.Verdict.Ambiguous {
		out.Unclear = "The table is ambiguous: one pair of signals stands for parts that must be told apart."
	}
	return out
}

// settingLabel names the first setpoint.
const settingLabel = "Setting"

// setpoints are what is typed into the controller.
func (w writer) setpoints() []page.Figure {
	t, z := w.r.Travel, w.r.Window.Zone
	var z1, z2 *float64
	if z != nil {
		z1, z2 = z[0], z[1]
	}
	word := func(f page.Figure, word string) page.Figure {
		f.Word = WordLink(word)
		return f
	}
	setting := page.Figure{Label: settingLabel, Value: words.Trimmed(w.r.Force.Setting, 2), Unit: "%", Exact: words.Exact(w.r.Force.Setting)}
	return []page.Figure{
		word(w.enough(w.byHand(setting, "window.setting")), "setting"),
		word(w.byHand(w.position("Approach end", &t.ApproachEnd), "window.approach_end"), "approach"),
		word(w.byHand(w.position("Push stroke", t.PushStroke), "window.push_stroke"), "push stroke"),
		word(w.byHand(w.position("Push end", t.PushEnd), "window.push_stroke"), "push end"),
		word(w.byHand(w.position("Zone start", z1), "window.zone_start"), "zone"),
		word(w.byHand(w.position("Zone end", z2), "window.zone_end"), "zone"),
		word(w.readingFigure(), "reading"),
	}
}

// byHand says whether a setpoint was set by hand, and leads to where it is set.
func (w writer) byHand(f page.Figure, path string) page.Figure {
	f.Link = w.places.link(path)
	f.Note = words.SetpointNote(w.r, w.p.Given(path))
	if f.Value == none {
		f.Note = "not known"
	}
	return f
}

// enough says so where the setting lies outside the force window.
func (w writer) enough(f page.Figure) page.Figure {
	switch {
	case w.r.Force.SettingFeasible:
	case w.p.Given("window.setting"):
		f.Note = "by hand, not enough"
	default:
		f.Note = "nearest, not enough"
	}
	return f
}

func (w writer) readingFigure() page.Figure {
	f := w.position("Expected reading", &w.r.Travel.SeatReading)
	f.Note = "nominal part, seated"
	return f
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
	for _, t := range words.PairTexts(w.r) {
		l := page.Lamps{Arrival: t.Pair.Arrival, Zone: t.Pair.Zone, Means: t.Meaning, Do: t.Do}
		for _, word := range t.Words {
			l.Words = append(l.Words, page.Word{Kind: word, Text: word})
		}
		if len(l.Words) == 0 {
			l.Words = []page.Word{{Kind: press.FaultWord, Text: t.Verdict}}
		}
		out = append(out, l)
	}
	return out
}

func (w writer) findings() []page.Finding {
	words.Explain(w.r)
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
