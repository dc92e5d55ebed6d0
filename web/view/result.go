package view

import (
	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// headline says in plain words what the plan catches and what it never sees.
func headline(p *press.Plan, r *press.Result) string {
	if s := words.Headline(p, r); s != "" {
		return s
	}
	return p.Title.Name
}

// writer writes figures as far as the plan's steps know them.
type writer struct {
	p      *press.Plan
	r      *press.Result
	places places
	pos    words.Positions
}

// result gives everything that a plan leads to in ready words.
func result(p *press.Plan, r *press.Result, at places) *page.Result {
	w := writer{p, r, at, words.PositionsOf(p)}
	out := &page.Result{
		Digest:    r.PlanDigest,
		Setpoints: w.setpoints(),
		Table:     w.table(),
		Findings:  w.findings(),
		Count:     w.count(),
		Groups:    w.groups(),
		Faults:    w.catalogue(),
		Samples:   w.samples(),
	}
	if r.Verdict != nil && r.Verdict.Ambiguous {
		out.Unclear = "The table is ambiguous: one pair of signals stands for parts that must be told apart."
	}
	return out
}

// setpoints are what is typed into the controller.
func (w writer) setpoints() []page.Figure {
	t, z := w.r.Travel, w.r.Window.Zone
	var z1, z2 *float64
	if z != nil {
		z1, z2 = z[0], z[1]
	}
	setting := page.Figure{Label: "Setting", Value: words.Trimmed(w.r.Force.Setting, 2), Unit: "%", Exact: words.Exact(w.r.Force.Setting)}
	return []page.Figure{
		w.byHand(setting, "window.setting"),
		w.byHand(w.position("Approach end", &t.ApproachEnd), "window.approach_end"),
		w.byHand(w.position("Push stroke", t.PushStroke), "window.push_stroke"),
		w.byHand(w.position("Push end", t.PushEnd), "window.push_stroke"),
		w.byHand(w.position("Zone start", z1), "window.zone_start"),
		w.byHand(w.position("Zone end", z2), "window.zone_end"),
		w.readingFigure(),
	}
}

// byHand says whether a setpoint was set by hand, and leads to where it is set.
func (w writer) byHand(f page.Figure, path string) page.Figure {
	f.Link = w.places.link(path)
	f.Note = "proposed"
	if w.p.Given(path) {
		f.Note = "by hand"
	}
	if f.Value == none {
		f.Note = "not known"
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

// table is the four signal pairs with their words.
func (w writer) table() []page.Lamps {
	v := w.r.Verdict
	if v == nil {
		return nil
	}
	var out []page.Lamps
	for _, pair := range [][2]bool{{true, true}, {true, false}, {false, true}, {false, false}} {
		l := page.Lamps{Arrival: pair[0], Zone: pair[1]}
		for _, word := range v.Table.Words(pair[0], pair[1]) {
			l.Words = append(l.Words, page.Word{Kind: word, Text: word})
		}
		if len(l.Words) == 0 {
			l.Words = []page.Word{{Kind: "fault", Text: "fault"}}
		}
		out = append(out, l)
	}
	return out
}

func (w writer) findings() []page.Finding {
	words.Explain(w.r)
	var out []page.Finding
	for _, f := range w.r.Findings {
		text := f.Message
		if text == "" {
			text = f.Code
		}
		out = append(out, page.Finding{Severity: string(f.Severity), Text: text, Link: w.places.link(f.Path), Where: label(f.Path)})
	}
	return out
}

func (w writer) count() string {
	s := ""
	for _, k := range []press.Severity{press.Blocker, press.Caution, press.Note} {
		if n := w.r.Count(k); n > 0 {
			if s != "" {
				s += ", "
			}
			s += counted(n, string(k))
		}
	}
	return s
}
