package paper

import (
	"slices"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
	"ramplan/press/words"
)

// Headings of the chapters.
var (
	findingsTitle = say.Findings()
	unseenTitle   = say.UndetectedHead()
	cautionsTitle = say.Cautions()
	notesTitle    = say.NotesOfThePlan()
	cutTitle      = say.TitleBlockWhole()
)

// sheetTexts are what a plan has to say in words.
type sheetTexts struct {
	findings, unseen, cautions, notes, cut []typeset.Paragraph
}

func (s *sheet) newTexts() sheetTexts {
	t := sheetTexts{findings: s.findings(), unseen: s.unseen(), cut: s.title.cut()}
	for _, c := range words.Cautions {
		t.cautions = append(t.cautions, typeset.Item(c))
	}
	if s.p.Title.Notes != "" {
		t.notes = []typeset.Paragraph{{Text: s.p.Title.Notes, Style: typeset.Text}}
	}
	return t
}

// choice is how many of the texts stand on the first page. Where the cautions find
// no room as they are, they stand there in short, and whole behind.
type choice struct {
	findings, unseen, notes int
	short                   bool
}

func (t sheetTexts) all() choice {
	return choice{findings: len(t.findings), unseen: len(t.unseen), notes: len(t.notes)}
}

// cautionsOn gives the cautions as they stand on the first page.
func (t sheetTexts) cautionsOn(short bool, page int) typeset.Chapter {
	if !short {
		return typeset.Chapter{Title: cautionsTitle, Paragraphs: t.cautions}
	}
	return typeset.Chapter{Title: cautionsTitle, Paragraphs: []typeset.Paragraph{
		{Text: words.CautionsInShort, Style: typeset.Text},
		{Text: say.InFullOnPage(page), Style: typeset.Strong, Above: 2},
	}}
}

// choices lists what may stand there, the best first. The notes of the plan go
// first, then findings down to the three gravest or all blockers, then what cannot
// be detected, then the cautions stand in short, which they always do; on a page on
// which hardly anything has room a finding still stands.
func (t sheetTexts) choices(blockers int) []choice {
	c := t.all()
	out := []choice{c}
	try := func(change *int, least int) {
		for *change > least {
			*change--
			out = append(out, c)
		}
	}
	try(&c.notes, 0)
	try(&c.findings, max(blockers, min(3, c.findings)))
	try(&c.unseen, min(3, c.unseen))
	c.short = true
	out = append(out, c)
	try(&c.unseen, 1)
	try(&c.findings, min(1, c.findings))
	try(&c.unseen, 0)
	try(&c.findings, 0)
	return out
}

// grown adds to a choice what has room all the same: what the choices tried first may have
// gone only because all of something else stood beside it.
func (t sheetTexts) grown(c choice, fits func(choice) bool) choice {
	all := t.all()
	for {
		before := c
		for _, more := range []func(*choice) bool{
			func(c *choice) bool { c.findings++; return c.findings <= all.findings },
			func(c *choice) bool { c.unseen++; return c.unseen <= all.unseen },
			func(c *choice) bool { c.notes++; return c.notes <= all.notes },
		} {
			if try := c; more(&try) && fits(try) {
				c = try
			}
		}
		if c == before {
			return c
		}
	}
}

// behind are the chapters that a choice leaves for the pages behind the first.
func (t sheetTexts) behind(c choice) []typeset.Chapter {
	var out []typeset.Chapter
	add := func(title string, ps []typeset.Paragraph, shown int) {
		if shown < len(ps) {
			out = append(out, typeset.Chapter{Title: title, Paragraphs: ps[shown:], Begun: shown > 0})
		}
	}
	add(findingsTitle, t.findings, c.findings)
	add(unseenTitle, t.unseen, c.unseen)
	if c.short {
		add(cautionsTitle, t.cautions, 0)
	}
	add(notesTitle, t.notes, c.notes)
	add(cutTitle, t.cut, 0)
	return out
}

// shown is a chapter with the first n of its paragraphs, and where the others are.
func shown(title string, ps []typeset.Paragraph, n, page int) typeset.Chapter {
	s := typeset.Chapter{Title: title, Paragraphs: slices.Clone(ps[:n])}
	switch left := len(ps) - n; {
	case left == 0:
	case n == 0:
		s.Paragraphs = []typeset.Paragraph{{Text: say.ContinuedOnPage(page), Style: typeset.Strong}}
	default:
		s.Paragraphs[n-1].Keep = true
		s.Paragraphs = append(s.Paragraphs, typeset.Paragraph{Text: say.MoreOnPage(left, page), Style: typeset.Strong, Above: 2})
	}
	return s
}

// columns are the rooms for texts on the first page: one that reaches down beside
// the title block, under the strip, and two over the block.
func (s *sheet) columns(underStrip, underForce float64) []canvas.Rectangle {
	f, block := s.paper.frame(), s.block(1)
	inner := f.Inset(sheetPad)
	bottom := block.Y0 - 4
	last := canvas.Rect(inner.X1-rightColumn, underForce, inner.X1, bottom)
	return []canvas.Rectangle{
		canvas.Rect(inner.X0, underStrip, block.X0-sheetGutter, f.Y1-6),
		canvas.Rect(block.X0, underStrip, last.X0-sheetGutter, bottom),
		last,
	}
}

// texts fills what the drawings leave free with as much as there is room for; the
// rest is counted, and goes on behind.
func (s *sheet) texts(g *sheetPage, underStrip, underForce float64) {
	t, m := s.newTexts(), typeset.Setter{}
	columns := s.columns(underStrip, underForce)
	c, ok := s.choose(m, t, columns)
	if !ok {
		s.cutOn = s.behind(m, append([]typeset.Chapter{s.rule()}, t.behind(choice{short: true})...))[cutTitle]
		return
	}
	on := s.behind(m, t.behind(c))
	s.cutOn = on[cutTitle]
	// Numbers of pages are as wide as any other digit: what fitted still does.
	placed := s.arrange(m, t, c, columns, on)
	g.add(func(p *canvas.Pen) { typeset.Write(p, placed) })
}

// choose takes the best choice that has room, and as much more as has room then; false
// where none has.
func (s *sheet) choose(m typeset.Setter, t sheetTexts, columns []canvas.Rectangle) (choice, bool) {
	fits := func(c choice) bool { return s.arrange(m, t, c, columns, nil) != nil }
	for _, c := range t.choices(s.r.Count(press.Blocker)) {
		if fits(c) {
			return t.grown(c, fits), true
		}
	}
	return choice{}, false
}

// rule is the reading rule.
func (s *sheet) rule() typeset.Chapter {
	return typeset.Chapter{Paragraphs: []typeset.Paragraph{{Opening: say.ReadingRuleHead(), Text: say.ReadingRule(s.p, s.r), Style: typeset.Text, Above: 7, Whole: true}}}
}

// arrange places the texts of a choice: each in a column of its own where that
// does, else one behind the other through all columns. Nil: they find no room.
func (s *sheet) arrange(m typeset.Setter, t sheetTexts, c choice, columns []canvas.Rectangle, on map[string]int) []typeset.PlacedLine {
	page := func(title string) int { return max(2, on[title]) }
	part := func(title string, ps []typeset.Paragraph, n int) typeset.Chapter {
		return shown(title, ps, n, page(title))
	}
	cautions, rule := t.cautionsOn(c.short, page(cautionsTitle)), s.rule()
	findings, unseen := part(findingsTitle, t.findings, c.findings), part(unseenTitle, t.unseen, c.unseen)
	var notes []typeset.Chapter
	if len(t.notes) > 0 {
		notes = []typeset.Chapter{part(notesTitle, t.notes, c.notes)}
	}
	if len(t.findings) == 0 {
		findings.Paragraphs = []typeset.Paragraph{{Text: "None.", Style: typeset.Text}}
	}
	last := append([]typeset.Chapter{unseen}, notes...)
	for _, own := range [][][]typeset.Chapter{
		{{cautions, rule}, {findings}, last},
		{{cautions, rule}, append([]typeset.Chapter{findings}, notes...), {unseen}},
		{append([]typeset.Chapter{cautions, rule}, notes...), {findings}, {unseen}},
		{{cautions}, {findings, rule}, last},
		{{cautions}, append([]typeset.Chapter{findings, rule}, notes...), {unseen}},
		{{cautions, rule}, append([]typeset.Chapter{findings}, last...)},
		{{cautions}, append([]typeset.Chapter{findings, rule}, last...)},
		{append([]typeset.Chapter{cautions, findings, rule}, last...)},
	} {
		if placed, ok := share(m, own, columns); ok {
			return placed
		}
	}
	return nil
}

// share gives each list of chapters a column, the last list all that are left;
// false where something finds no room.
func share(m typeset.Setter, lists [][]typeset.Chapter, columns []canvas.Rectangle) (placed []typeset.PlacedLine, ok bool) {
	for i, list := range lists {
		room := columns[i : i+1]
		if i == len(lists)-1 {
			room = columns[i:]
		}
		lines, rest := m.Fill(list, room)
		if len(rest) > 0 {
			return nil, false
		}
		placed = append(placed, lines...)
	}
	return placed, true
}

// unseen is what has to be known whatever the findings are.
func (s *sheet) unseen() []typeset.Paragraph {
	var out []typeset.Paragraph
	for _, u := range say.Unseen(s.p, s.r) {
		out = append(out, typeset.Item(u))
	}
	if perfect := say.Perfect(s.r); perfect != "" {
		out = append(out, typeset.Item(perfect))
	}
	_, says := say.MarkedHeadline(s.p, s.r)
	for _, text := range says {
		out = append(out, typeset.Item(text))
	}
	return out
}

// findings are the sentences of the findings, each opened by how grave it is.
func (s *sheet) findings() []typeset.Paragraph {
	var out []typeset.Paragraph
	for _, f := range s.r.Findings {
		q := typeset.Paragraph{Opening: upper(string(f.Severity)) + ":", Text: f.Message, Style: typeset.Text, Above: 2, Whole: true}
		if f.Severity == press.Blocker {
			q.Inked = canvas.Alert
		}
		out = append(out, q)
	}
	return out
}

func upper(word string) string { return string(word[0]-'a'+'A') + word[1:] }
