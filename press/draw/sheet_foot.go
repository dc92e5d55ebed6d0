package draw

import "strings"

// foot says under the frame what the page could not show: texts that were
// shortened, and characters that the face lacks.
func (s *sheet) foot(p *pen, f rect) {
	var notes []string
	if shortened(p.texts) {
		notes = append(notes, "… stands for text left out here; the whole of it is in the plan.")
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

func shortened(texts []label) bool {
	for _, l := range texts {
		if strings.Contains(l.text, "…") {
			return true
		}
	}
	return false
}

// oneLine puts a text of several lines on one.
func oneLine(s string) string { return strings.Join(strings.Fields(s), " ") }
