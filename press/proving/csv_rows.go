package proving

import (
	"strconv"
	"strings"
	"unicode/utf8"

	"ramplan/press"
	"ramplan/press/strict"
)

// body reads the lines behind the head. at is the line of the head.
func (t *tableReader) body(text string, separator byte, at int) {
	n := strings.Count(text, "\n") + 1
	t.rows, t.at = make([]Row, 0, n), make([]Refused, 0, n)
	t.given, t.sound = make([]given, 0, n), make([]given, 0, n)
	line := at
	for text != "" {
		var one string
		line++
		one, text = cutLine(text)
		if strings.HasPrefix(one, "#") {
			t.lines.Remarks = append(t.lines.Remarks, line)
			continue
		}
		if blank(one) || t.padded && strings.Trim(one, separators) == "" {
			continue
		}
		if len(t.rows) == MostRows {
			t.fault(line, "", "found more than 10,000 rows; at most 10,000 are read")
			t.keep(one, text, line)
			break
		}
		t.rows = append(t.rows, Row{})
		t.given, t.sound = append(t.given, 0), append(t.sound, 0)
		t.at = append(t.at, Refused{Line: line, Text: one})
		t.row(one, separator)
	}
	if len(t.rows) == 0 {
		t.fault(at, "", "found no rows behind the head; 1 to 10,000 are needed")
	}
}

// anyNumber is a column whose numbers cannot be judged.
var anyNumber = Field{Field: press.Field{Kind: press.Number}}

// row reads the line of the last row.
func (t *tableReader) row(line string, separator byte) {
	i := len(t.rows) - 1
	broken := func(column, why string) {
		t.rowFault(i, column, why)
		t.given[i] = ^given(0) // nothing more is said of it
	}
	if !utf8.ValidString(line) {
		broken("", notUTF8)
		return
	}
	cells, at, wrong := split(line, separator, t.between)
	t.between = cells
	for len(cells) > len(t.places) && cells[len(cells)-1].text == "" {
		cells = cells[:len(cells)-1]
	}
	switch columns := len(t.places); {
	case wrong != "":
		broken(t.columnName(at), wrong)
		return
	case len(cells) < columns:
		broken("", "found "+strict.Count(len(cells), "cell")+"; the head has "+strconv.Itoa(columns))
		return
	case len(cells) > columns:
		broken("", "found "+strict.Count(len(cells), "cell")+", and those beyond the head are not empty; the head has "+strconv.Itoa(columns))
		return
	}
	for k, c := range cells {
		place := t.places[k]
		if place < 0 {
			continue
		}
		f := t.kind.columns[place]
		text := c.text
		if c.quoted && f.Kind != press.Text {
			text = trim(text)
		}
		if text == "" {
			continue
		}
		t.given[i] |= 1 << place
		column := t.lines.Columns[k]
		if column.Factor == 0 && f.Kind == press.Number { // its unit does not fit, so only that it is a number can be told
			if why := t.value(&anyNumber, text, "", 1); why != "" {
				t.rowFault(i, f.Name, why)
			}
			continue
		}
		if why := t.value(f, text, column.Unit, column.Factor); why != "" {
			t.rowFault(i, f.Name, why)
			continue
		}
		f.set(t.study, &t.rows[i], &t.node)
		t.sound[i] |= 1 << place
	}
}

// columnName names a column of the head by its place, for a message.
func (t *tableReader) columnName(at int) string {
	if at < len(t.lines.Columns) {
		if f := t.lines.Columns[at].Field; f != nil {
			return f.Name
		}
	}
	return "column " + strconv.Itoa(at+1)
}

func (t *tableReader) rowFault(row int, column, message string) {
	t.at[row].Faults = append(t.at[row].Faults, Fault{t.at[row].Line, column, message})
}

// together judges what the rows must keep together, and parts the good ones from the
// refused.
func (t *tableReader) together() {
	t.study.Rows = t.rows
	if t.study.Kind != "" {
		c := rules{study: t.study, kind: t.kind, given: t.given, sound: t.sound, absent: t.absent, height: t.set[named(t.kind.heads, "height")]}
		for _, s := range c.check() {
			if s.column.Kind == press.Flag {
				s.message = "not given; " + lampWords
			}
			t.rowFault(s.row, s.column.Name, s.message)
		}
	}
	good := t.rows[:0]
	for i, at := range t.at {
		if len(at.Faults) == 0 {
			good = append(good, t.rows[i])
			t.lines.Rows = append(t.lines.Rows, at.Line)
			continue
		}
		at.Cells = t.apart(at.Text)
		t.lines.Refused = append(t.lines.Refused, at)
		t.lines.Faults = append(t.lines.Faults, at.Faults...)
	}
	t.study.Rows = good
	if len(good) == 0 {
		t.study.Rows = nil
	}
}

// apart takes a refused line into its cells; nil where its quotes cannot be read.
func (t *tableReader) apart(line string) []string {
	separator := byte(0)
	if t.lines.Separator != "" {
		separator = t.lines.Separator[0]
	}
	cells, _, wrong := split(line, separator, nil)
	if wrong != "" {
		return nil
	}
	out := make([]string, len(cells))
	for i, c := range cells {
		out[i] = c.text
	}
	return out
}
