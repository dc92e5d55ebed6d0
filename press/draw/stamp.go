package draw

import (
	"strings"

	"ramplan/press"
	"ramplan/press/words"
)

// Identity tells which state of which plan is drawn, or written out as rows.
func (o SheetOptions) Identity(p *press.Plan, r *press.Result) words.Identity {
	if o.Issue != nil {
		id := words.IdentityOf(p, r, o.Issue.Revision, o.Issue.Date)
		id.Superseded = o.Superseded
		return id
	}
	return words.IdentityOf(p, r, "", o.Day)
}

// Table makes a page behind the sheet, as [words.Paper] does, for this state of the plan.
func (o SheetOptions) Table(name string, p *press.Plan, r *press.Result) (words.Table, bool) {
	t, known := words.Paper(name, p, r)
	if known && o.Issue != nil {
		t = t.SignedBy(words.Signed{Prepared: o.Issue.Prepared, Checked: o.Issue.Checked, Approved: o.Issue.Approved})
	}
	return t, known
}

// Sizes of the line under a drawing that stands alone, in type sizes.
const (
	stampAbove = 0.9
	stampPad   = 0.45 // around the word of a draft
)

// stamped is the same drawing with a line under it that says of which plan it is; a
// draft has its mark across it as well, under everything that is drawn, and so has what
// is superseded. The type is
// of the size of the drawing's smallest, k times as large.
func (d *Picture) stamped(id words.Identity, k float64) *Picture {
	s := stamp{id: id, size: k * small, from: k * margin, to: d.width - k*margin}
	s.lay()
	with := d.layout
	with.desc = strings.TrimSpace(d.desc + " " + id.String() + ".")
	with.height = d.height + s.height()
	with.paint = func(p *pen) {
		switch page := (rect{0, 0, d.width, d.height}); {
		case id.Draft():
			p.draftMark(page)
		case id.Superseded != "":
			p.across(page, supersededMark(id.Superseded))
		}
		d.paint(p)
		s.paint(p, d.height)
	}
	return newPicture(with)
}

// stamp is that line while it is laid out; it may need several.
type stamp struct {
	id       words.Identity
	size     float64
	from, to float64 // px
	lines    []string
	notReady []string
}

func (s *stamp) lay() {
	room := s.to - s.from
	var rest []string
	for i, part := range s.id.Parts() {
		if i == 0 || !s.id.Draft() || !strings.HasPrefix(part, words.DraftMark) {
			rest = append(rest, part)
		} else if after := strings.TrimLeft(strings.TrimPrefix(part, words.DraftMark), ", "); after != "" {
			rest = append(rest, after)
		}
	}
	line := ""
	for _, part := range rest {
		next := part
		if line != "" {
			next = line + " · " + part
		}
		if line != "" && s.plain().width(next) > room-s.word() {
			s.lines = append(s.lines, line)
			next = part
		}
		line = s.plain().clip(next, room-s.word())
	}
	s.lines = append(s.lines, line)
	if s.id.NotReady != "" {
		s.notReady = s.warning().wrap(words.NotForUse(s.id.NotReady), room)
	}
}

// plain, marked and warning are the styles of the line, of its mark and of what is not ready.
func (s *stamp) plain() style   { return style{black, s.size, false} }
func (s *stamp) marked() style  { return style{paper, s.size, true} }
func (s *stamp) warning() style { return style{alert, s.size, true} }

// mark is the word in front: of a draft, or of what is no longer to be used.
func (s *stamp) mark() string {
	switch {
	case s.id.Draft():
		return words.DraftMark
	case s.id.Superseded != "":
		return "SUPERSEDED"
	}
	return ""
}

// word is the room of the mark, before every line.
func (s *stamp) word() float64 {
	if s.mark() == "" {
		return 0
	}
	return s.marked().width(s.mark()) + 3*stampPad*s.size
}

func (s *stamp) height() float64 {
	return s.size * (stampAbove + leading*float64(len(s.lines)+len(s.notReady)) + stampPad)
}

func (s *stamp) paint(p *pen, top float64) {
	y := top + s.size*stampAbove
	if mark := s.mark(); mark != "" {
		w := s.marked().width(mark)
		box := rect{s.from, y - 0.1*s.size, s.from + w + 2*stampPad*s.size, y + leading*s.size}
		p.fill(black, box)
		p.text(s.marked(), (box.x0+box.x1)/2, y+0.98*s.size, middle, mark)
	}
	for _, line := range s.lines {
		p.text(s.plain(), s.from+s.word(), y+s.size, start, line)
		y += leading * s.size
	}
	for _, line := range s.notReady {
		p.text(s.warning(), s.from, y+s.size, start, line)
		y += leading * s.size
	}
}
