package words

import (
	"slices"
	"strings"
)

// RowsFile writes tables as one file of rows for other programs, an empty line
// between two of them. Every row says of which table and of which plan it is.
func RowsFile(tables []Table, id Identity, s Separation) []byte {
	var rows [][]string
	for _, whole := range tables {
		for _, t := range whole.Parts() {
			if len(rows) > 0 {
				rows = append(rows, nil)
			}
			rows = append(rows, t.rows(id, s)...)
		}
	}
	return s.File(rows)
}

// rows are those of one table, the names of the columns first; columns of boxes are
// left out. Where limits of
// several kinds stand in one cell, the row is repeated with each of them. A table without rows says why in one.
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
	for _, c := range t.Filed {
		head = append(head, c.kind().heads(Cell(c.Head))...)
	}
	start := func() []string {
		var out []string
		for _, cell := range id.cells(t.Title) {
			out = append(out, Cell(plainText(cell)))
		}
		return out
	}
	out := [][]string{head}
	for i, row := range t.Rows {
		var said [][][]string // by column, what it says, in cells
		for _, k := range columns {
			if k.at < len(row) {
				said = append(said, k.all(row[k.at], s))
			}
		}
		for _, c := range t.Filed {
			said = append(said, c.kind().all(c.Cells[i], s))
		}
		most := 1
		for _, things := range said {
			most = max(most, len(things))
		}
		for n := range most {
			line := start()
			for _, things := range said {
				line = append(line, things[min(n, len(things)-1)]...)
			}
			out = append(out, line)
		}
	}
	if len(t.Rows) == 0 {
		line := append(start(), s.text(t.Lacking))
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
	bareColumn                     // a figure whose unit has a column of its own, and its sign
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
	case slices.Contains(t.Bare, head):
		return bareColumn
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
	case bareColumn:
		return []string{head, head + ", note"}
	case figureColumn:
		return []string{head, head + ", unit", head + ", note"}
	case rangeColumn:
		return []string{head, head + ", value", head + ", lower", head + ", upper", head + ", unit"}
	}
	return []string{head}
}

// all are the cells of what a text says: of each thing that it says in figures, where
// these are several, or of the whole.
func (k rowColumn) all(text string, s Separation) [][]string {
	if k.kind != rangeColumn {
		return [][]string{k.cells(text, text, s)}
	}
	var telling []string
	for _, part := range strings.Split(text, "; ") {
		if figuresIn(part).any() {
			telling = append(telling, part)
		}
	}
	switch len(telling) {
	case 0:
		return [][]string{k.cells(text, text, s)}
	case 1:
		return [][]string{k.cells(text, telling[0], s)}
	}
	var out [][]string
	for _, part := range telling {
		out = append(out, k.cells(part, part, s))
	}
	return out
}

// cells are those of a text with the figures of a part of it.
func (k rowColumn) cells(text, part string, s Separation) []string {
	f := figuresIn(part)
	said := Cell(s.text(text))
	switch {
	case k.kind <= typedColumn && text == none:
		return []string{""}
	case k.kind == typedColumn:
		return []string{Cell(text)}
	case k.kind == bareColumn && text == none:
		return []string{"", ""}
	case k.kind == bareColumn && f.alone && f.unit == "" && f.one() != "":
		return []string{s.Number(f.one()), Cell(s.text(f.rest))}
	case k.kind == bareColumn:
		return []string{said, ""}
	case k.kind == figureColumn && text == none:
		return []string{"", "", ""}
	case k.kind == figureColumn && oneOf.MatchString(text):
		return []string{s.Number(percentOf(text)), "%", said}
	case k.kind == figureColumn && f.alone && f.one() != "":
		return []string{s.Number(f.one()), f.unit, Cell(s.text(f.rest))}
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
