package paper

import (
	"strings"

	"ramplan/press/draw/canvas"
	"ramplan/press/draw/typeset"
	"ramplan/press/words"
)

// foot says under the frame what the page could not show: texts that were
// shortened, and characters that the face lacks.
func (s *sheet) foot(p *canvas.Pen, f canvas.Rectangle) {
	var notes []string
	word := s.word()
	switch {
	case !strings.Contains(allOf(p.Texts), "…"):
	case len(s.title.cut()) > 0:
		notes = append(notes, say.LeftOutSeePage(max(2, s.cutOn)))
	default:
		notes = append(notes, say.LeftOutSeePlan())
	}
	st := typeset.Quiet
	y := f.Y1 + 5 + st.Size
	right := say.PaperCaution()
	p.Text(st, f.X1, y, canvas.End, right)
	room := f.Width() - st.Width(right) - 20
	from := f.X0
	if word != "" {
		black := typeset.Strong
		word = black.Clip(word, room)
		p.Text(black, from, y, canvas.Start, word)
		from += black.Width(word) + 12
		room -= black.Width(word) + 12
	}
	if said := canvas.SayLacking(p.Texts, st, room-st.Width(strings.Join(notes, " ")+" ")); said != "" {
		notes = append(notes, said)
	}
	p.Text(st, from, y, canvas.Start, strings.Join(notes, " "))
}

// word says in plain black, on paper of any kind, that a page is not to be relied on; the
// mark across it is too pale for some printers. Of what was issued last it
// says whether its station is proved, where that is known.
func (s *sheet) word() string {
	switch {
	case s.o.Issue == nil:
		return say.NotIssued(words.DraftMark)
	case s.o.Superseded != "":
		return supersededMark(s.o.Superseded)
	}
	return s.o.proved()
}

func allOf(texts []canvas.Label) string {
	var b strings.Builder
	for _, l := range texts {
		b.WriteString(l.Text)
	}
	return b.String()
}

// oneLine puts a text of several lines on one.
func oneLine(s string) string { return strings.Join(strings.Fields(s), " ") }
