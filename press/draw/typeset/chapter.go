package typeset

import (
	"strings"

	"ramplan/press/draw/canvas"
)

// A Chapter is a heading with what stands under it. It may go on in the next
// column or on the next page; its heading is then said again.
type Chapter struct {
	Title      string // empty: its paragraph opens itself
	Paragraphs []Paragraph
	Begun      bool // some of it stands before
}

// heading is what is written over the next paragraph of the chapter at the top of
// a column, or where the chapter begins.
func (s Chapter) heading() []Paragraph {
	switch {
	case s.Title == "":
		return nil
	case s.Begun:
		return []Paragraph{headed(s.Title + ", continued")}
	}
	return []Paragraph{headed(s.Title)}
}

// Same tells whether as much is left of a chapter as of another.
func (s Chapter) Same(o Chapter) bool {
	return len(s.Paragraphs) == len(o.Paragraphs) && s.Paragraphs[0].Text == o.Paragraphs[0].Text
}

// group are the next paragraphs that stay together.
func (s Chapter) group() []Paragraph {
	n := 1
	for s.Paragraphs[n-1].Keep && n < len(s.Paragraphs) {
		n++
	}
	return s.Paragraphs[:n]
}

// Setter keeps the lines of what was set already: a page is laid out in several
// ways before one is taken.
type Setter map[setKey][]Line

type setKey struct {
	opening, hang, text string
	bold                bool
	width               float64
}

func (m Setter) set(q Paragraph, width float64) []Line {
	key := setKey{q.Opening, q.hang, q.Text, q.Style.Bold, width}
	lines, known := m[key]
	if !known {
		lines = Set([]Paragraph{q}, width)
		m[key] = lines
	}
	return lines
}

// Fill places chapters into columns, one under the other, and gives what found no
// room. Short paragraphs stay whole; in columns of one width long ones go on in the
// next.
func (m Setter) Fill(list []Chapter, columns []canvas.Rectangle) (placed []PlacedLine, rest []Chapter) {
	at, y := 0, 0.0
	if len(columns) > 0 {
		y = columns[0].Y0
	}
	for i, s := range list {
		for first := true; len(s.Paragraphs) > 0; {
			if at == len(columns) {
				return placed, append([]Chapter{s}, list[i+1:]...)
			}
			c := columns[at]
			top := y == c.Y0
			var lines []Line
			if top || first {
				for _, q := range s.heading() {
					lines = append(lines, m.set(q, c.Width())...)
				}
			}
			group := s.group()
			before := len(lines)
			for _, q := range group {
				lines = append(lines, m.set(q, c.Width())...)
			}
			own := lines[before:]
			free := c.Y1 - y
			if whole := drop(lines, top); whole <= free+0.01 {
				placed = append(placed, put(lines, c.X0, y, top)...)
				y += whole
				s.Paragraphs, s.Begun, first = s.Paragraphs[len(group):], true, false
				continue
			}
			if n := min(fitted(lines, top, free)-(len(lines)-len(own)), len(own)-2); n > 1 && len(group) == 1 && len(own) > mostWhole && !group[0].Whole {
				head := lines[:len(lines)-len(own)+n]
				placed = append(placed, put(head, c.X0, y, top)...)
				s.Paragraphs = append([]Paragraph{remainder(group[0], own[n:])}, s.Paragraphs[1:]...)
				s.Begun, first = true, false
			}
			if at++; at < len(columns) {
				y = columns[at].Y0
			}
		}
	}
	return placed, nil
}

// remainder is the paragraph of the lines that are left of one.
func remainder(q Paragraph, left []Line) Paragraph {
	var text strings.Builder
	for i, l := range left {
		text.WriteString(l.Text)
		if i < len(left)-1 {
			text.WriteString(l.joint)
		}
	}
	return Paragraph{Text: text.String(), Style: q.Style}
}

// drop is how far lines reach down, at the top of a column or under others.
func drop(lines []Line, top bool) float64 {
	y := Depth(lines)
	if !top && len(lines) > 0 {
		y += lines[0].above
	}
	return y
}

// fitted is how many of the lines fit into a height.
func fitted(lines []Line, top bool, room float64) int {
	n := 0
	for n < len(lines) && drop(lines[:n+1], top) <= room {
		n++
	}
	return n
}

// put places lines under one another.
func put(lines []Line, x, y float64, top bool) []PlacedLine {
	out := make([]PlacedLine, 0, len(lines))
	for i, l := range lines {
		if i > 0 || !top {
			y += l.above
		}
		y += l.height()
		out = append(out, PlacedLine{l, x, y - l.style.Size*(leading-0.98)})
	}
	return out
}
