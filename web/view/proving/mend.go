package proving

import (
	"fmt"
	"slices"
	"strings"

	"ramplan/press"
	"ramplan/press/proving"
)

// FaultyRows counts the rows that cannot be read.
func FaultyRows(faults proving.TypedFaults) int {
	rows := map[int]bool{}
	for _, f := range faults {
		if f.Row > 0 {
			rows[f.Row] = true
		}
	}
	return len(rows)
}

// Untouched tells whether a row names a sample that was not pushed yet: nothing else stands in it.
func Untouched(t *proving.Typed, i int) bool {
	if t.Kind != proving.Samples || i < 0 || i >= len(t.Rows) || strings.TrimSpace(t.Cell(i, "sample")) == "" {
		return false
	}
	for j, name := range t.Columns {
		if bare(name) != "sample" && strings.TrimSpace(cellAt(t, i, j)) != "" {
			return false
		}
	}
	return true
}

// StillEmpty counts the rows that are not filled in yet.
func StillEmpty(t *proving.Typed) int {
	n := 0
	for i := range t.Rows {
		if Untouched(t, i) {
			n++
		}
	}
	return n
}

// Tidy takes off the blank rows behind the last one.
func Tidy(t *proving.Typed) {
	for n := len(t.Rows); n > 0 && t.Blank(n-1); n-- {
		t.Rows = t.Rows[:n-1]
	}
}

// copied is a typed study of its own, whose rows may be changed.
func copied(t *proving.Typed) *proving.Typed {
	out := &proving.Typed{Kind: t.Kind, Heads: slices.Clone(t.Heads), Columns: slices.Clone(t.Columns), Rows: make([][]string, len(t.Rows))}
	for i, row := range t.Rows {
		out.Rows[i] = slices.Clone(row)
	}
	return out
}

// WithColumn adds a column; nil where a study of its kind has none of this name.
func WithColumn(t *proving.Typed, name string) *proving.Typed {
	if !slices.Contains(columns[t.Kind], name) {
		return nil
	}
	out := copied(t)
	if slices.ContainsFunc(out.Columns, func(c string) bool { return bare(c) == name }) {
		return out
	}
	out.Columns = append(out.Columns, name)
	for i := range out.Rows {
		out.Rows[i] = widened(out.Rows[i], len(out.Columns))
	}
	return out
}

func widened(row []string, n int) []string {
	for len(row) < n {
		row = append(row, "")
	}
	return row
}

// WithoutRow takes a row out; the others move up. One that is not there takes nothing.
func WithoutRow(t *proving.Typed, row int) *proving.Typed {
	out := copied(t)
	if row >= 0 && row < len(out.Rows) {
		out.Rows = slices.Delete(out.Rows, row, row+1)
	}
	Tidy(out)
	return out
}

// WithBlock puts a block of cells, apart by tabs, into the table from a cell on, and tells how
// many rows it had. Cells beyond the last column go into no column: they are put behind the
// last cell of their row, so that they are seen.
func WithBlock(t *proving.Typed, row, column int, text string) (*proving.Typed, int) {
	out := copied(t)
	lines := strings.Split(strings.TrimRight(strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(text), "\n"), "\n")
	for i, line := range lines {
		at := row + i
		if at >= proving.MostTypedRows {
			break
		}
		for len(out.Rows) <= at {
			out.Rows = append(out.Rows, make([]string, len(out.Columns)))
		}
		out.Rows[at] = widened(out.Rows[at], len(out.Columns))
		for j, cell := range apart(line) {
			cell = strings.TrimSpace(cell)
			if k := column + j; k < len(out.Columns) {
				out.Rows[at][k] = cell
			} else if cell != "" {
				out.Rows[at][len(out.Columns)-1] = strings.TrimSpace(out.Rows[at][len(out.Columns)-1] + " " + cell)
			}
		}
	}
	Tidy(out)
	return out, len(lines)
}

// apart takes a pasted line into its cells: at tabs, else at semicolons.
func apart(line string) []string {
	if !strings.Contains(line, "\t") && strings.Contains(line, ";") {
		return strings.Split(line, ";")
	}
	return strings.Split(line, "\t")
}

// WithTable reads a table of text in behind the rows that are there. What it says of the study
// as a whole takes the place of what was typed. It is nil, with the reasons, where it is of
// another kind or cannot be read at all.
func WithTable(t *proving.Typed, text, file string) (*proving.Typed, int, []string) {
	if !strings.Contains(text, "kind:") && !strings.Contains(text, "kind :") {
		text = "# kind: " + t.Kind + "\n" + text // the study says it
	}
	read, lines := proving.ReadTyped([]byte(text))
	switch {
	case read == nil:
		return nil, 0, lines.Errors(file)
	case read.Kind != t.Kind:
		return nil, 0, []string{say.OtherKind(read.Kind, t.Kind)}
	}
	out := copied(t)
	for _, h := range read.Heads {
		out.SetHead(h.Name, h.Text)
	}
	if RowsOf(out) == 0 {
		out.Columns, out.Rows = read.Columns, read.Rows
		return out, len(read.Rows), nil
	}
	at := make([]int, len(read.Columns))
	for j, name := range read.Columns {
		i := slices.Index(out.Columns, name)
		if i < 0 {
			out.Columns = append(out.Columns, name)
			i = len(out.Columns) - 1
		}
		at[j] = i
	}
	for i := range out.Rows {
		out.Rows[i] = widened(out.Rows[i], len(out.Columns))
	}
	for _, row := range read.Rows {
		cells := make([]string, len(out.Columns))
		for j, cell := range row {
			if j < len(at) {
				cells[at[j]] = cell
			}
		}
		out.Rows = append(out.Rows, cells)
	}
	return out, len(read.Rows), nil
}

// Begun is a new study of a kind, with what is known before the first push; nil for no kind
// that has pushes.
func Begun(kind, day, letter string, r *press.Result) *proving.Typed {
	if len(columns[kind]) == 0 {
		return nil
	}
	t := proving.NewTyped(kind)
	t.SetHead("taken_at", day)
	if r == nil {
		return t
	}
	if name := strings.TrimSpace(r.Plan.Ram.Name); name != "" {
		t.SetHead("ram", name)
	}
	if letter != "" && (kind == proving.Samples || kind == proving.Trial) {
		t.SetHead("plan_digest", DigestStart(r))
	}
	if kind == proving.Samples {
		for range 3 {
			for _, x := range say.SamplesToShow(r) {
				t.Rows = append(t.Rows, []string{x.Name, "", "", "", "", ""})
			}
		}
	}
	return t
}

// DigestStart is the beginning of a plan's digest, as a sheet prints it.
func DigestStart(r *press.Result) string {
	d := r.PlanDigest()
	return fmt.Sprintf("%.*s", len("sha256:")+12, d)
}
