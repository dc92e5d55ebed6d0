package paper

import (
	"ramplan/press"
	"ramplan/press/carry"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
	"ramplan/press/words"
)

// SheetOptions say how a plan is put on paper.
type SheetOptions struct {
	Paper  string        // one of [Papers] by name; empty: the first
	Issue  *carry.Issue  // nil: a draft
	Day    string        // on which a draft is drawn; empty: it is not said
	Pages  []words.Table // tables on pages behind the first
	Source []byte        // the plan's own bytes, which the sheet carries; nil: as the plan writes itself

	Proof  *Proof // what is known of the station's proof; nil: it is not said whether it is proved
	Record bool   // the proof stands on pages behind the others

	Superseded string // by which revision, and when that was issued, as [words.SupersededBy] says it; empty where none was
}

// sheet is a plan on paper while its pages are laid out.
type sheet struct {
	p     *press.Plan
	r     *press.Result
	o     SheetOptions
	paper Paper
	title titleBlock
	pages []*sheetPage

	cutOn    int        // the page that has the fields of the title block whole
	last     *sheetPage // that holds a table, which ends at tableEnd
	tableEnd float64
}

// sheetPage is one page: its name among the bookmarks, what is on it, and what
// goes over everything else.
type sheetPage struct {
	name  string
	parts []func(*canvas.Pen)
}

func (g *sheetPage) add(part func(*canvas.Pen)) { g.parts = append(g.parts, part) }

// NewSheet lays out the sheet of a plan. Its first page holds what is attached to
// the quality plan; what does not fit there goes on behind it. The sentences of
// the findings are written into the result.
func NewSheet(p *press.Plan, r *press.Result, o SheetOptions) *Document {
	say.Explain(r)
	s := &sheet{p: p, r: r, o: o, paper: paperOf(o.Paper)}
	s.title = newTitleBlock(p, r, o.Issue)
	s.title.supersede(o.Superseded)
	if word := o.proved(); word != "" {
		s.title.prove(o.unproved())
	}
	if o.Issue == nil {
		s.title.drawn(o.Day)
	}
	s.front()
	for _, g := range o.Pages {
		for _, part := range g.Parts() {
			s.table(part)
		}
		if g.Name == words.DaysPaper && len(g.Rows) > 0 {
			s.days()
		}
	}
	if o.Record && o.Proof != nil {
		s.record()
	}
	return s.document()
}

func paperOf(name string) Paper {
	for _, s := range Papers {
		if s.Name == name {
			return s
		}
	}
	return Papers[0]
}

// page adds an empty page.
func (s *sheet) page(name string) *sheetPage {
	g := &sheetPage{name: name}
	s.pages = append(s.pages, g)
	return g
}

// block is where the title block of a page stands: in the lower right corner.
func (s *sheet) block(page int) canvas.Rectangle {
	f := s.paper.frame()
	return canvas.Rect(f.X1-titleWidth, f.Y1-s.title.height(page), f.X1, f.Y1)
}

// Distances on a sheet, px.
const (
	sheetPad    = 11 // from the frame to what is in it
	sheetGutter = 18 // between columns
)

// body is the room for what is on a page behind the first, the title block taken away
// below.
func (s *sheet) body() canvas.Rectangle {
	b := s.paper.frame().Inset(sheetPad)
	b.Y1 = s.block(2).Y0 - 8
	return b
}

// document makes pictures of the pages.
func (s *sheet) document() *Document {
	source := s.o.Source
	if source == nil {
		source = s.p.JSON()
	}
	d := &Document{
		title:   s.title.heading(),
		subject: say.Headline(s.p, s.r),
		author:  s.title.creator,
		date:    s.title.date,
		carried: carry.Carried{Plan: source, Digest: s.r.PlanDigest(), Issue: s.o.Issue},
	}
	w, h := s.paper.px()
	for i, g := range s.pages {
		d.pages = append(d.pages, canvas.NewPicture(canvas.Layout{
			Kind: "sheet", Title: d.title + ", " + g.name, Desc: d.subject, Width: w, Height: h, Fixed: true,
			Paint: func(p *canvas.Pen) { s.paint(p, g, i+1) },
		}))
		d.names = append(d.names, g.name)
	}
	return d
}

// paint draws a page: the mark of a draft, or of what is no longer to be used, first,
// so that it hides nothing.
func (s *sheet) paint(p *canvas.Pen, g *sheetPage, number int) {
	f := s.paper.frame()
	switch {
	case s.o.Issue == nil:
		draftMark(p, f)
	case s.o.Superseded != "":
		p.Across(f, supersededMark(s.o.Superseded))
	case s.o.unproved():
		p.Across(f, notProvedMark)
	}
	for _, part := range g.parts {
		part(p)
	}
	p.Frame(canvas.Black, typeset.Thick, canvas.Solid, f)
	s.title.paint(p, s.block(number), number, len(s.pages))
	s.foot(p, f)
}
