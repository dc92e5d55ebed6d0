package view

import (
	"strings"
	"time"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/web/page"
)

// Compared is two states of a plan: entry by entry and figure by figure.
type Compared struct {
	Title    Title
	Address  string
	Sides    []string // letters of the issued revisions, the newest first
	From, To Side
	Changes  []Change
}

// A Side is one of the two: an issued revision, or the draft.
type Side struct {
	Name   string // its letter, or draft
	At     time.Time
	Plan   *press.Plan // nil for a draft that is no sound plan
	Result *press.Result
	Strip  string
}

func (s Side) label() string {
	if s.Name == "draft" {
		return "The draft"
	}
	return "Revision " + s.Name
}

// Page gives the page on which two states are compared.
func (c Compared) Page(assets page.Assets) page.ComparedPage {
	out := page.ComparedPage{Assets: assets, Title: c.Title.page(), Address: c.Address, From: c.side(c.From), To: c.side(c.To), Changes: changedAll(c.Changes)}
	for _, o := range append([]string{"draft"}, c.Sides...) {
		name := Side{Name: o}.label()
		out.FromOptions = append(out.FromOptions, page.Option{Value: o, Label: name, Chosen: o == c.From.Name})
		out.ToOptions = append(out.ToOptions, page.Option{Value: o, Label: name, Chosen: o == c.To.Name})
	}
	if c.From.Plan == nil || c.To.Plan == nil {
		return out
	}
	out.Figures = figuresOf(c.From, c.To)
	for _, f := range out.Figures {
		if f.Differs {
			out.Differing++
		}
	}
	out.New = missingFrom(c.From.Result, c.To.Result)
	out.Gone = missingFrom(c.To.Result, c.From.Result)
	return out
}

func (c Compared) side(s Side) page.Side {
	out := page.Side{Label: s.label(), Strip: s.Strip}
	if s.Plan == nil {
		out.Note = "no sound plan: it has no figures"
		return out
	}
	out.Headline = words.Headline(s.Plan, s.Result)
	if !s.At.IsZero() {
		out.Note = "issued " + words.Day(s.At)
	}
	return out
}

// figuresOf puts every figure of one side beside that of the other.
func figuresOf(a, b Side) []page.ComparedFigure {
	var out []page.ComparedFigure
	at := map[string]int{}
	add := func(group string, rows []page.Figure, second bool) {
		for _, f := range rows {
			key := group + "\x00" + f.Label
			i, known := at[key]
			if !known {
				i = len(out)
				at[key] = i
				out = append(out, page.ComparedFigure{Group: group, Label: f.Label, Was: none, Is: none})
			}
			value := strings.TrimSpace(f.Value + " " + f.Unit)
			if second {
				out[i].Is = value
			} else {
				out[i].Was = value
			}
		}
	}
	for i, s := range []Side{a, b} {
		w := writer{s.Plan, s.Result, places{}, words.PositionsOf(s.Plan)}
		add("Setpoints", w.setpoints(), i == 1)
		for _, g := range w.groups(Drawings{}) {
			add(g.Label, g.Rows, i == 1)
		}
		add("Limit samples", w.samples(), i == 1)
		add("Judged rightly", w.judged(), i == 1)
	}
	for i := range out {
		out[i].Differs = out[i].Was != out[i].Is
	}
	return out
}

// judged is how surely each row of the fault catalogue is judged.
func (w writer) judged() []page.Figure {
	var out []page.Figure
	for _, f := range w.r.Faults {
		out = append(out, page.Figure{Label: words.Fault(f).Word, Value: words.Detected(w.p, f)})
	}
	return out
}

// missingFrom lists the findings of b that a does not have.
func missingFrom(a, b *press.Result) []page.Finding {
	words.Explain(a)
	words.Explain(b)
	had := map[string]bool{}
	for _, f := range a.Findings {
		had[f.Code+f.Path] = true
	}
	var out []page.Finding
	for _, f := range b.Findings {
		if !had[f.Code+f.Path] {
			out = append(out, page.Finding{Severity: string(f.Severity), Text: f.Message})
		}
	}
	return out
}
