package view

import (
	"slices"
	"strconv"
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
	Version  int64 // of the draft
}

// A Side is one of the two: an issued revision, the draft, or a state that it had.
type Side struct {
	Name   string // its letter, draft, or that of a state
	At     time.Time
	Plan   *press.Plan // nil for a draft that is no sound plan
	Result *press.Result
	Strip  string
}

// Called names a side in a sentence: revision A, the draft.
func (s Side) Called() string {
	name := s.label()
	return strings.ToLower(name[:1]) + name[1:]
}

func (s Side) label() string {
	switch n, isState := StateOf(s.Name); {
	case s.Name == draftSide:
		return say.ThatDraft()
	case isState:
		return "State " + strconv.FormatInt(n, 10)
	}
	return "Revision " + s.Name
}

// draftSide names the working draft where sides are compared.
const draftSide = "draft"

// stateSide begins the name of a state of the draft where sides are compared.
const stateSide = "state-"

// StateSide names a state of the draft where sides are compared.
func StateSide(n int64) string { return stateSide + strconv.FormatInt(n, 10) }

// StateOf tells which state a side is.
func StateOf(side string) (n int64, ok bool) {
	digits, ok := strings.CutPrefix(side, stateSide)
	if !ok {
		return 0, false
	}
	n, err := strconv.ParseInt(digits, 10, 64)
	return n, err == nil
}

// Page gives the page on which two states are compared.
func (c Compared) Page(assets page.Assets) page.ComparedPage {
	out := page.ComparedPage{Assets: assets, Title: c.Title.page(), Address: c.Address, From: c.side(c.From), To: c.side(c.To), Changes: changedAll(c.Changes)}
	out.Heading = say.ComparedWith(out.From.Label, inside(out.To.Label))
	out.Back = c.back()
	sides := append([]string{draftSide}, c.Sides...)
	for _, s := range []string{c.From.Name, c.To.Name} {
		if !slices.Contains(sides, s) {
			sides = append(sides, s)
		}
	}
	for _, o := range sides {
		name := Side{Name: o}.label()
		out.FromOptions = append(out.FromOptions, page.Option{Value: o, Label: name, Chosen: o == c.From.Name})
		out.ToOptions = append(out.ToOptions, page.Option{Value: o, Label: name, Chosen: o == c.To.Name})
	}
	if c.From.Plan == nil || c.To.Plan == nil {
		return out
	}
	for _, f := range figuresOf(c.From, c.To) {
		switch {
		case f.Was != f.Is:
			out.Differing = append(out.Differing, f)
		case f.Group != say.KnownAfter(): // of so many times only those that changed are of use
			out.Same = append(out.Same, f)
		}
	}
	out.SameCount = say.TheSame(counted(len(out.Same), "figure is", "figures are"))
	out.New = missingFrom(c.From.Result, c.To.Result)
	out.Gone = missingFrom(c.To.Result, c.From.Result)
	return out
}

// inside is a label in the middle of a sentence.
func inside(label string) string { return strings.ToLower(label[:1]) + label[1:] }

// back offers to make the second side the draft, where that is compared with it.
func (c Compared) back() *page.BringBack {
	if c.From.Name != draftSide || c.To.Name == draftSide {
		return nil
	}
	out := &page.BringBack{Version: strconv.FormatInt(c.Version, 10)}
	if n, isState := StateOf(c.To.Name); isState {
		out.Action, out.Do, out.Label = c.Address+"/history", "restore "+strconv.FormatInt(n, 10), say.BringBackState(n)
		return out
	}
	out.Action, out.Do, out.Label = c.Address+"/revisions/"+c.To.Name, "draft", StartAgain(c.To.Name)
	return out
}

// StartAgain is said on the button that makes a revision the draft.
func StartAgain(letter string) string { return say.StartTheDraftFromRevision(letter) }

func (c Compared) side(s Side) page.Side {
	out := page.Side{Label: s.label(), Strip: s.Strip}
	if s.Plan == nil {
		out.Note = say.NoFigures()
		return out
	}
	out.Headline, out.Blocked = say.Headline(s.Plan, s.Result), s.Result.Blocked()
	if !s.At.IsZero() {
		out.Note = "issued " + say.Day(s.At)
		if _, isState := StateOf(s.Name); isState {
			out.Note = "of " + say.When(s.At)
		}
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
		w := writer{s.Plan, s.Result, places{}, say.Positions(s.Plan)}
		add(setpointsHead, w.setpoints(), i == 1)
		for _, g := range w.groups(Drawings{}) {
			add(g.Label, g.Rows, i == 1)
		}
		add(say.SamplesLabel(), w.samples(), i == 1)
		add(say.JudgedRightly(), w.judged(), i == 1)
		add(say.KnownAfter(), w.known(), i == 1)
	}
	return out
}

// judged is how surely each row of the fault catalogue is judged.
func (w writer) judged() []page.Figure {
	var out []page.Figure
	for _, f := range w.r.Faults {
		out = append(out, page.Figure{Label: say.Fault(f).Word, Value: say.Detected(w.p, w.r, words.AsJudged(f))})
	}
	return out
}

// known is that time of each row, from leaving home.
func (w writer) known() []page.Figure {
	var out []page.Figure
	for _, f := range w.r.Faults {
		x := page.Figure{Label: say.Fault(f).Word, Value: none}
		if f.Time != nil {
			x.Value, x.Unit = say.AfterBare(*f.Time), "s"
		}
		out = append(out, x)
	}
	return out
}

// missingFrom lists the findings of b that a does not have.
func missingFrom(a, b *press.Result) []page.Finding {
	say.Explain(a)
	say.Explain(b)
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

// setpointsHead heads the setpoints among the figures that are compared.
const setpointsHead = "Setpoints"
