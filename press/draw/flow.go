package draw

import "strings"

// A paragraph is a text that is set into columns: an opening in bold, the text,
// and how far it stands in.
type paragraph struct {
	opening string
	inked   ink // of the opening; the zero ink is that of the text
	text    string
	style   style
	hang    string  // a mark before the first line; the others stand in under the text
	above   float64 // px kept free above, but not at the top of a column
	keep    bool    // stays with the line after it
	whole   bool    // of whatever length, stays in one column
}

// A setLine is one line of a paragraph, ready to be placed.
type setLine struct {
	hang, opening string
	inked         ink
	text          string
	in            float64 // px from the left edge of the column
	textIn        float64 // px from there to the text behind an opening
	style         style
	above         float64
	keep          bool
	of            int    // the number of its paragraph
	joint         string // what stood in the text between this line and the next
}

func (l setLine) height() float64 { return l.style.size * sheetLeading }

// headed is a paragraph that names what follows.
func headed(text string) paragraph {
	return paragraph{text: text, style: sheetBold, above: 7, keep: true}
}

// item is one entry of a list.
func item(text string) paragraph {
	return paragraph{hang: "–", text: text, style: sheetText, above: 1.5}
}

// mostWhole is the most lines of a paragraph that stay together.
const mostWhole = 5

// set breaks paragraphs into lines of a width. Line ends in a text are kept.
func set(ps []paragraph, width float64) []setLine {
	var out []setLine
	for i, q := range ps {
		begin := len(out)
		in := 0.0
		if q.hang != "" {
			in = q.style.width(q.hang + "\u2002")
		}
		opening := 0.0
		if q.opening != "" {
			opening = style{q.style.ink, q.style.size, true}.width(q.opening + " ")
		}
		first := true
		for _, line := range strings.Split(strings.ReplaceAll(q.text, "\r", ""), "\n") {
			texts, joints := breakLines(q.style, line, width-in, opening)
			for k, text := range texts {
				l := setLine{text: text, in: in, style: q.style, keep: q.keep, of: i, joint: joints[k]}
				if first {
					l.hang, l.opening, l.above, l.textIn = q.hang, q.opening, q.above, opening
					l.inked = q.inked
				}
				first, opening = false, 0
				out = append(out, l)
			}
		}
		if n := len(out) - begin; n <= mostWhole {
			for k := range n - 1 {
				out[begin+k].keep = true
			}
		}
	}
	return out
}

// breakLines breaks a text into lines of at most a width, the first of them
// shorter by what stands before it. Unlike [face.wrap] it loses nothing: a word
// that is too long alone goes on in the next line. A joint is what stood between a
// line and the next: a blank, nothing inside a word, the end of the line behind
// the last.
func breakLines(s style, text string, width, before float64) (lines, joints []string) {
	line, room := "", width-before
	next := func(joint string) {
		lines, joints = append(lines, line), append(joints, joint)
		line, room = "", width
	}
	for _, word := range strings.FieldsFunc(text, func(r rune) bool { return r == ' ' || r == '\t' }) {
		joined := word
		if line != "" {
			joined = line + " " + word
		}
		if s.width(joined) <= room {
			line = joined
			continue
		}
		if line != "" || room < width {
			next(" ")
		}
		for s.width(word) > room {
			n := fitting(s, word, room)
			line, word = word[:n], word[n:]
			next("")
		}
		line = word
	}
	return append(lines, line), append(joints, "\n")
}

// fitting gives how many bytes of a word fit into a width, one character at
// least.
func fitting(s style, word string, room float64) int {
	n := 0
	for i, c := range word {
		if i > 0 && s.width(word[:i+len(string(c))]) > room {
			break
		}
		n = i + len(string(c))
	}
	return n
}

// A placedLine is a line with the left end of its baseline.
type placedLine struct {
	setLine
	x, y float64
}

// pour places lines into columns, one after the other, and gives those for which
// there is no room. A line that is to stay with the next goes to the next column
// with it.
func pour(lines []setLine, columns []rect) (placed []placedLine, rest []setLine) {
	i := 0
	for _, c := range columns {
		y := c.y0
		for top := true; i < len(lines); top = false {
			above := lines[i].above
			if top {
				above = 0
			}
			need := above + lines[i].height()
			for k := i; lines[k].keep && k+1 < len(lines); k++ {
				need += lines[k+1].above + lines[k+1].height()
			}
			if y+need > c.y1+0.01 && !(top && y+above+lines[i].height() <= c.y1) {
				break
			}
			y += above + lines[i].height()
			placed = append(placed, placedLine{lines[i], c.x0, y - lines[i].style.size*(sheetLeading-0.98)})
			i++
		}
	}
	return placed, lines[i:]
}

// depth is the height of lines in one column.
func depth(lines []setLine) float64 {
	y := 0.0
	for i, l := range lines {
		if i > 0 {
			y += l.above
		}
		y += l.height()
	}
	return y
}

// write puts placed lines on the page.
func (p *pen) write(lines []placedLine) {
	for _, l := range lines {
		x := l.x + l.in
		if l.hang != "" {
			p.text(l.style, l.x, l.y, start, l.hang)
		}
		if l.opening != "" {
			k := l.inked
			if k == (ink{}) {
				k = l.style.ink
			}
			p.text(style{k, l.style.size, true}, x, l.y, start, l.opening)
		}
		p.text(l.style, x+l.textIn, l.y, start, l.text)
	}
}
