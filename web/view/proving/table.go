package proving

import (
	"slices"
	"strconv"
	"strings"

	"ramplan/press/proving"
	"ramplan/web/page"
)

// How many rows of a long study stand on one leaf, and how far the last leaf may grow before
// what is typed goes on on the next.
const (
	leafRows  = 200
	leafGrows = 400
	blankRows = 10 // behind the last row, to be typed into
	moreRows  = 40 // more of them, when they are asked for
)

// leastRows are the rows that a study of a kind begins with: as many as it needs.
var leastRows = map[string]int{proving.Master: 25, proving.Trial: 30}

// LeafOf gives the rows of a study that a leaf shows which begins at a row, from 0.
func LeafOf(from, total int) (first, end int) {
	if from < 0 || from > total {
		from = 0
	}
	if total-from <= leafGrows && (from > 0 || total <= leafRows) {
		return from, total
	}
	return from, min(from+leafRows, total)
}

// A tableOf is what the table of a study is made from.
type tableOf struct {
	typed  *proving.Typed
	faults proving.TypedFaults
	flags  map[int]string // what is said of a row that stands out, from 0
	here   string
	from   int
	open   bool // it is typed into
	more   bool // with more blank rows than usual
}

func (t tableOf) page() *page.StudyTable {
	first, end := LeafOf(t.from, len(t.typed.Rows))
	out := &page.StudyTable{Typed: t.open, From: strconv.Itoa(first), Count: strconv.Itoa(end - first), Names: strings.Join(t.typed.Columns, "|")}
	for _, name := range t.typed.Columns {
		out.Columns = append(out.Columns, t.column(name))
	}
	if t.open {
		for _, n := range columns[t.typed.Kind] {
			if !slices.ContainsFunc(t.typed.Columns, func(c string) bool { return bare(c) == n }) {
				out.More = append(out.More, page.Start{Do: "column " + n, Label: say.ColumnOf(t.typed.Kind, n).Label})
			}
		}
	}
	by := map[int]proving.TypedFaults{}
	elsewhere := 0
	empty := map[int]bool{}
	for _, f := range t.faults {
		if f.Row == 0 {
			continue
		}
		if Untouched(t.typed, f.Row-1) {
			empty[f.Row] = true
			continue
		}
		by[f.Row-1] = append(by[f.Row-1], f)
		if (f.Row-1 < first || f.Row-1 >= end) && elsewhere == 0 {
			elsewhere = f.Row
		}
	}
	until := end
	if t.open && end == len(t.typed.Rows) {
		until += blankRows
		if t.more {
			until += moreRows
		}
		until = max(until, first+leastRows[t.typed.Kind])
	}
	for i := first; i < until; i++ {
		out.Rows = append(out.Rows, t.row(i, by[i]))
	}
	if first > 0 || end < len(t.typed.Rows) {
		out.Shown = say.RowsShown(first+1, end, len(t.typed.Rows))
		if first > 0 {
			out.Before = leafAddress(t.here, max(0, first-leafRows))
		}
		if end < len(t.typed.Rows) {
			out.After = leafAddress(t.here, end)
		}
	} else if n := len(t.typed.Rows); n > 0 {
		out.Shown = say.RowCount(n)
	}
	if len(empty) > 0 && t.open {
		out.Empty = say.RowsStillEmpty(len(empty))
	}
	if len(by) > 0 {
		out.Faulty = say.FaultyRows(len(by))
		if elsewhere > 0 {
			out.FaultyAt = leafAddress(t.here, (elsewhere-1)/leafRows*leafRows) + "#r" + strconv.Itoa(elsewhere-1)
		}
	}
	return out
}

func leafAddress(here string, from int) string {
	if from == 0 {
		return here
	}
	return here + "?from=" + strconv.Itoa(from)
}

func (t tableOf) column(name string) page.StudyColumn {
	n := bare(name)
	f := say.ColumnOf(t.typed.Kind, n)
	out := page.StudyColumn{Name: n, Label: f.Label, Unit: f.Unit, Help: f.Help, Kind: kindOf(n)}
	if u := unitOf(name); u != "" {
		out.Unit = u
	}
	return out
}

// CellName is the name of a cell in a form: its row, from 0, and the place of its column.
func CellName(row, column int) string {
	return "rows[" + strconv.Itoa(row) + "]." + strconv.Itoa(column)
}

func (t tableOf) row(i int, faults proving.TypedFaults) page.StudyRow {
	number := strconv.Itoa(i + 1)
	out := page.StudyRow{ID: "r" + strconv.Itoa(i), Number: number, Flag: t.flags[i], Remove: "remove rows " + strconv.Itoa(i)}
	for j, name := range t.typed.Columns {
		n := bare(name)
		c := page.StudyCell{Name: CellName(i, j), Kind: kindOf(n)}
		if i < len(t.typed.Rows) && j < len(t.typed.Rows[i]) {
			c.Text = t.typed.Rows[i][j]
		}
		if t.open {
			c.Spoken = say.CellSpoken(say.ColumnOf(t.typed.Kind, n).Label, number)
		}
		for _, f := range faults {
			if f.Field == n {
				c.Wrong = true
				out.Faults = append(out.Faults, say.ColumnOf(t.typed.Kind, n).Label+": "+f.Message)
			}
		}
		out.Cells = append(out.Cells, c)
	}
	for _, f := range faults {
		if !slices.ContainsFunc(t.typed.Columns, func(c string) bool { return bare(c) == f.Field }) {
			text := f.Message
			if f.Field != "" {
				text = say.ColumnOf(t.typed.Kind, f.Field).Label + ": " + text
			}
			out.Faults = append(out.Faults, text)
		}
	}
	return out
}
