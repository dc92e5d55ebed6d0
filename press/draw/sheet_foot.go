package draw

import (
	"fmt"
	"strings"

	"ramplan/press/words"
)

// foot says under the frame what the page could not show: texts that were
// shortened, and characters that the face lacks.
func (s *sheet) foot(p *pen, f rect) {
	var notes []string
	word := s.word()
	switch {
	case !strings.Contains(allOf(p.texts), "…"):
	case len(s.title.cut()) > 0:
		notes = append(notes, fmt.Sprintf("… stands for text left out: see page %d.", max(2, s.cutOn)))
	default:
		notes = append(notes, "… stands for text left out: the plan has it.")
	}
	st := sheetQuiet
	y := f.y1 + 5 + st.size
	right := "ramplan · a planning aid: prove it on the station"
	p.text(st, f.x1, y, end, right)
	room := f.width() - st.width(right) - 20
	from := f.x0
	if word != "" {
		black := sheetBold
		p.text(black, from, y, start, word)
		from += black.width(word) + 12
		room -= black.width(word) + 12
	}
	if said := lackingSaid(p.texts, st, room-st.width(strings.Join(notes, " ")+" ")); said != "" {
		notes = append(notes, said)
	}
	p.text(st, from, y, start, strings.Join(notes, " "))
}

// word says in plain black, on paper of any kind, that a page is not to be relied on; the
// mark across it is too pale for some printers. Empty for what was issued last.
func (s *sheet) word() string {
	switch {
	case s.o.Issue == nil:
		return words.DraftMark + ", not issued"
	case s.o.Superseded != "":
		return supersededMark(s.o.Superseded)
	}
	return ""
}

func allOf(texts []label) string {
	var b strings.Builder
	for _, l := range texts {
		b.WriteString(l.text)
	}
	return b.String()
}

// oneLine puts a text of several lines on one.
func oneLine(s string) string { return strings.Join(strings.Fields(s), " ") }
