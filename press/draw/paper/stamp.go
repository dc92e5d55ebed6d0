package paper

import (
	"strings"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/words"
)

// Identity tells which state of which plan is drawn, or written out as rows.
func (o SheetOptions) Identity(p *press.Plan, r *press.Result) words.Identity {
	if o.Issue != nil {
		id := say.IdentityOf(p, r, o.Issue.Revision, o.Issue.Date)
		id.Superseded, id.Proved, id.Standing = o.Superseded, o.proved(), o.standing()
		return id
	}
	return say.IdentityOf(p, r, "", o.Day)
}

// Table makes a page behind the sheet, as [words.Paper] does, for this state of the plan.
func (o SheetOptions) Table(name string, p *press.Plan, r *press.Result) (words.Table, bool) {
	t, known := say.Paper(name, p, r)
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
func stamped(d *canvas.Picture, id words.Identity, k float64) *canvas.Picture {
	s := stamp{id: id, size: k * canvas.Small, from: k * canvas.Margin, to: d.Width - k*canvas.Margin}
	s.lay()
	with := d.Layout
	with.Desc = strings.TrimSpace(d.Desc + " " + id.String() + ".")
	with.Height = d.Height + s.height()
	with.Paint = func(p *canvas.Pen) {
		switch page := (canvas.Rect(0, 0, d.Width, d.Height)); {
		case id.Draft():
			draftMark(p, page)
		case id.Superseded != "":
			p.Across(page, supersededMark(id.Superseded))
		}
		d.Paint(p)
		s.paint(p, d.Height)
	}
	return canvas.NewPicture(with)
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
		if line != "" && s.plain().Width(next) > room-s.word() {
			s.lines = append(s.lines, line)
			next = part
		}
		line = s.plain().Clip(next, room-s.word())
	}
	s.lines = append(s.lines, line)
	if s.id.NotReady != "" {
		s.notReady = s.warning().Wrap(say.NotForUse(s.id.NotReady), room)
	}
}

// plain, marked and warning are the styles of the line, of its mark and of what is not ready.
func (s *stamp) plain() canvas.Style   { return canvas.Plain(canvas.Black, s.size) }
func (s *stamp) marked() canvas.Style  { return canvas.Bold(canvas.Paper, s.size) }
func (s *stamp) warning() canvas.Style { return canvas.Bold(canvas.Alert, s.size) }

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
	return s.marked().Width(s.mark()) + 3*stampPad*s.size
}

func (s *stamp) height() float64 {
	return s.size * (stampAbove + canvas.Leading*float64(len(s.lines)+len(s.notReady)) + stampPad)
}

func (s *stamp) paint(p *canvas.Pen, top float64) {
	y := top + s.size*stampAbove
	if mark := s.mark(); mark != "" {
		w := s.marked().Width(mark)
		box := canvas.Rect(s.from, y-0.1*s.size, s.from+w+2*stampPad*s.size, y+canvas.Leading*s.size)
		p.Fill(canvas.Black, box)
		p.Text(s.marked(), (box.X0+box.X1)/2, y+0.98*s.size, canvas.Middle, mark)
	}
	for _, line := range s.lines {
		p.Text(s.plain(), s.from+s.word(), y+s.size, canvas.Start, line)
		y += canvas.Leading * s.size
	}
	for _, line := range s.notReady {
		p.Text(s.warning(), s.from, y+s.size, canvas.Start, line)
		y += canvas.Leading * s.size
	}
}
