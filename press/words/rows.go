package words

import "slices"

// RowsFile writes tables as one file of rows for other programs, an empty line
// between two of them. Every row says of which table and of which plan it is.
func RowsFile(tables []Table, id Identity, s Separation) []byte {
	var rows [][]string
	for i, t := range tables {
		if i > 0 {
			rows = append(rows, nil)
		}
		rows = append(rows, t.rows(id, s)...)
	}
	return s.File(rows)
}

// rows are those of one table, the names of the columns first; columns of boxes are
// left out. A table without rows says why in one.
func (t Table) rows(id Identity, s Separation) [][]string {
	head := slices.Clone(identityHeads)
	var columns []rowColumn
	for i, c := range t.Columns {
		if c.Box {
			continue
		}
		k := rowColumn{at: i, kind: t.kindOf(i)}
		head = append(head, k.heads(Cell(c.Head))...)
		columns = append(columns, k)
	}
	start := func() []string {
		var out []string
		for _, cell := range id.cells(t.Title) {
			out = append(out, Cell(plainText(cell)))
		}
		return out
	}
	out := [][]string{head}
	for _, row := range t.Rows {
		line := start()
		for _, k := range columns {
			if k.at < len(row) {
				line = append(line, k.cells(row[k.at], s)...)
			}
		}
		out = append(out, line)
	}
	if len(t.Rows) == 0 {
		line := append(start(), plainText(t.Lacking))
		out = append(out, append(line, make([]string, len(head)-len(line))...))
	}
	return out
}

// A rowColumn is a column of a table in a file of rows, where it may become several.
type rowColumn struct {
	at   int
	kind columnKind
}

type columnKind int

const (
	plainColumn  columnKind = iota // text
	typedColumn                    // text that was typed in, never a number
	figureColumn                   // a figure, its unit, and what else is said
	rangeColumn                    // the text, a figure or its limits, and the unit
)

// kindOf tells what a column holds: what the table says of it, or else what its cells
// show.
func (t Table) kindOf(column int) columnKind {
	head := t.Columns[column].Head
	switch {
	case slices.Contains(t.Figures, head):
		return figureColumn
	case slices.Contains(t.Ranges, head):
		return rangeColumn
	case slices.Contains(t.Typed, head):
		return typedColumn
	}
	for _, row := range t.Rows {
		if column < len(row) {
			if f := figuresIn(row[column]); f.alone && f.unit != "" {
				return rangeColumn
			}
		}
	}
	return plainColumn
}

func (k rowColumn) heads(head string) []string {
	switch k.kind {
	case figureColumn:
		return []string{head, head + ", unit", head + ", note"}
	case rangeColumn:
		return []string{head, head + ", value", head + ", lower", head + ", upper", head + ", unit"}
	}
	return []string{head}
}

func (k rowColumn) cells(text string, s Separation) []string {
	f := figuresIn(text)
	said := Cell(plainText(text))
	switch {
	case k.kind <= typedColumn && text == none:
		return []string{""}
	case k.kind == typedColumn:
		return []string{Cell(text)}
	case k.kind == figureColumn && text == none:
		return []string{"", "", ""}
	case k.kind == figureColumn && f.alone && f.value != "":
		return []string{s.Number(f.value), f.unit, Cell(plainText(f.rest))}
	case k.kind == figureColumn && f.alone && f.lower == "":
		return []string{s.Number(f.upper), f.unit, Cell(plainText(f.rest))}
	case k.kind == figureColumn && f.alone && f.upper == "":
		return []string{s.Number(f.lower), f.unit, Cell(plainText(f.rest))}
	case k.kind == figureColumn:
		return []string{"", "", said}
	case k.kind == rangeColumn:
		if text == none {
			said = ""
		}
		return []string{said, s.Number(f.value), s.Number(f.lower), s.Number(f.upper), f.unit}
	case f.alone && f.unit == "" && f.value != "":
		return []string{s.Number(f.value)}
	}
	return []string{said}
}
