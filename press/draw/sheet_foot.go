package draw

import (
	"fmt"
	"strings"
)

// foot says under the frame what the page could not show: texts that were
// shortened, and characters that the face lacks.
func (s *sheet) foot(p *pen, f rect) {
	var notes []string
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
	if said := lackingSaid(p.texts, st, room-st.width(strings.Join(notes, " ")+" ")); said != "" {
		notes = append(notes, said)
	}
	p.text(st, f.x0, y, start, strings.Join(notes, " "))
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
