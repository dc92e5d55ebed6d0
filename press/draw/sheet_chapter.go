package draw

import "strings"

// A chapter is a heading with what stands under it. It may go on in the next
// column or on the next page; its heading is then said again.
type chapter struct {
	title string // empty: its paragraph opens itself
	ps    []paragraph
	begun bool // some of it stands before
}

// heading is what is written over the next paragraph of the chapter at the top of
// a column, or where the chapter begins.
func (s chapter) heading() []paragraph {
	switch {
	case s.title == "":
		return nil
	case s.begun:
		return []paragraph{headed(s.title + ", continued")}
	}
	return []paragraph{headed(s.title)}
}

// same tells whether as much is left of a chapter as of another.
func (s chapter) same(o chapter) bool {
	return len(s.ps) == len(o.ps) && s.ps[0].text == o.ps[0].text
}

// group are the next paragraphs that stay together.
func (s chapter) group() []paragraph {
	n := 1
	for s.ps[n-1].keep && n < len(s.ps) {
		n++
	}
	return s.ps[:n]
}

// setter keeps the lines of what was set already: a page is laid out in several
// ways before one is taken.
type setter map[setKey][]setLine

type setKey struct {
	opening, hang, text string
	bold                bool
	width               float64
}

func (m setter) set(q paragraph, width float64) []setLine {
	key := setKey{q.opening, q.hang, q.text, q.style.bold, width}
	lines, known := m[key]
	if !known {
		lines = set([]paragraph{q}, width)
		m[key] = lines
	}
	return lines
}

// fill places chapters into columns, one under the other, and gives what found no
// room. Short paragraphs stay whole; in columns of one width long ones go on in the
// next.
func (m setter) fill(list []chapter, columns []rect) (placed []placedLine, rest []chapter) {
	at, y := 0, 0.0
	if len(columns) > 0 {
		y = columns[0].y0
	}
	for i, s := range list {
		for first := true; len(s.ps) > 0; {
			if at == len(columns) {
				return placed, append([]chapter{s}, list[i+1:]...)
			}
			c := columns[at]
			top := y == c.y0
			var lines []setLine
			if top || first {
				for _, q := range s.heading() {
					lines = append(lines, m.set(q, c.width())...)
				}
			}
			group := s.group()
			before := len(lines)
			for _, q := range group {
				lines = append(lines, m.set(q, c.width())...)
			}
			own := lines[before:]
			free := c.y1 - y
			if whole := drop(lines, top); whole <= free+0.01 {
				placed = append(placed, put(lines, c.x0, y, top)...)
				y += whole
				s.ps, s.begun, first = s.ps[len(group):], true, false
				continue
			}
			if n := min(fitted(lines, top, free)-(len(lines)-len(own)), len(own)-2); n > 1 && len(group) == 1 && len(own) > mostWhole && !group[0].whole {
				head := lines[:len(lines)-len(own)+n]
				placed = append(placed, put(head, c.x0, y, top)...)
				s.ps = append([]paragraph{remainder(group[0], own[n:])}, s.ps[1:]...)
				s.begun, first = true, false
			}
			if at++; at < len(columns) {
				y = columns[at].y0
			}
		}
	}
	return placed, nil
}

// remainder is the paragraph of the lines that are left of one.
func remainder(q paragraph, left []setLine) paragraph {
	var text strings.Builder
	for i, l := range left {
		text.WriteString(l.text)
		if i < len(left)-1 {
			text.WriteString(l.joint)
		}
	}
	return paragraph{text: text.String(), style: q.style}
}

// drop is how far lines reach down, at the top of a column or under others.
func drop(lines []setLine, top bool) float64 {
	y := depth(lines)
	if !top && len(lines) > 0 {
		y += lines[0].above
	}
	return y
}

// fitted is how many of the lines fit into a height.
func fitted(lines []setLine, top bool, room float64) int {
	n := 0
	for n < len(lines) && drop(lines[:n+1], top) <= room {
		n++
	}
	return n
}

// put places lines under one another.
func put(lines []setLine, x, y float64, top bool) []placedLine {
	out := make([]placedLine, 0, len(lines))
	for i, l := range lines {
		if i > 0 || !top {
			y += l.above
		}
		y += l.height()
		out = append(out, placedLine{l, x, y - l.style.size*(sheetLeading-0.98)})
	}
	return out
}
