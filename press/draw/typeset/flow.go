package typeset

import (
	"strings"

	"ramplan/press/draw/canvas"
)

// A Paragraph is a text that is set into columns: an opening in bold, the text,
// and how far it stands in.
type Paragraph struct {
	Opening string
	Inked   canvas.Ink // of the opening; the zero ink is that of the text
	Text    string
	Style   canvas.Style
	hang    string  // a mark before the first line; the others stand in under the text
	Above   float64 // px kept free above, but not at the top of a column
	Keep    bool    // stays with the line after it
	Whole   bool    // of whatever length, stays in one column
}

// A Line is one line of a paragraph, ready to be placed.
type Line struct {
	hang, opening string
	inked         canvas.Ink
	Text          string
	in            float64 // px from the left edge of the column
	textIn        float64 // px from there to the text behind an opening
	style         canvas.Style
	above         float64
	keep          bool
	of            int    // the number of its paragraph
	joint         string // what stood in the text between this line and the next
}

func (l Line) height() float64 { return l.style.Size * leading }

// headed is a paragraph that names what follows.
func headed(text string) Paragraph {
	return Paragraph{Text: text, Style: Strong, Above: 7, Keep: true}
}

// Item is one entry of a list.
func Item(text string) Paragraph {
	return Paragraph{hang: "–", Text: text, Style: Text, Above: 1.5}
}

// mostWhole is the most lines of a paragraph that stay together.
const mostWhole = 5

// Set breaks paragraphs into lines of a width. Line ends in a text are kept.
func Set(ps []Paragraph, width float64) []Line {
	var out []Line
	for i, q := range ps {
		begin := len(out)
		in := 0.0
		if q.hang != "" {
			in = q.Style.Width(q.hang + "\u2002")
		}
		opening := 0.0
		if q.Opening != "" {
			opening = canvas.Bold(q.Style.Ink, q.Style.Size).Width(q.Opening + " ")
		}
		first := true
		for _, line := range strings.Split(strings.ReplaceAll(q.Text, "\r", ""), "\n") {
			texts, joints := breakLines(q.Style, line, width-in, opening)
			for k, text := range texts {
				l := Line{Text: text, in: in, style: q.Style, keep: q.Keep, of: i, joint: joints[k]}
				if first {
					l.hang, l.opening, l.above, l.textIn = q.hang, q.Opening, q.Above, opening
					l.inked = q.Inked
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
// shorter by what stands before it. Unlike [canvas.Style.Wrap] it loses nothing: a word
// that is too long alone goes on in the next line. A joint is what stood between a
// line and the next: a blank, nothing inside a word, the end of the line behind
// the last.
func breakLines(s canvas.Style, text string, width, before float64) (lines, joints []string) {
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
		if s.Width(joined) <= room {
			line = joined
			continue
		}
		if line != "" || room < width {
			next(" ")
		}
		for s.Width(word) > room {
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
func fitting(s canvas.Style, word string, room float64) int {
	n := 0
	for i, c := range word {
		if i > 0 && s.Width(word[:i+len(string(c))]) > room {
			break
		}
		n = i + len(string(c))
	}
	return n
}

// A PlacedLine is a line with the left end of its baseline.
type PlacedLine struct {
	Line
	X, Y float64
}

// Pour places lines into columns, one after the other, and gives those for which
// there is no room. A line that is to stay with the next goes to the next column
// with it.
func Pour(lines []Line, columns []canvas.Rectangle) (placed []PlacedLine, rest []Line) {
	i := 0
	for _, c := range columns {
		y := c.Y0
		for top := true; i < len(lines); top = false {
			above := lines[i].above
			if top {
				above = 0
			}
			need := above + lines[i].height()
			for k := i; lines[k].keep && k+1 < len(lines); k++ {
				need += lines[k+1].above + lines[k+1].height()
			}
			if y+need > c.Y1+0.01 && !(top && y+above+lines[i].height() <= c.Y1) {
				break
			}
			y += above + lines[i].height()
			placed = append(placed, PlacedLine{lines[i], c.X0, y - lines[i].style.Size*(leading-0.98)})
			i++
		}
	}
	return placed, lines[i:]
}

// Depth is the height of lines in one column.
func Depth(lines []Line) float64 {
	y := 0.0
	for i, l := range lines {
		if i > 0 {
			y += l.above
		}
		y += l.height()
	}
	return y
}

// Write puts placed lines on the page.
func Write(p *canvas.Pen, lines []PlacedLine) {
	for _, l := range lines {
		x := l.X + l.in
		if l.hang != "" {
			p.Text(l.style, l.X, l.Y, canvas.Start, l.hang)
		}
		if l.opening != "" {
			k := l.inked
			if k == (canvas.Ink{}) {
				k = l.style.Ink
			}
			p.Text(canvas.Bold(k, l.style.Size), x, l.Y, canvas.Start, l.opening)
		}
		p.Text(l.style, x+l.textIn, l.Y, canvas.Start, l.Text)
	}
}
