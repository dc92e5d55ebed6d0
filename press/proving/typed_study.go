package proving

import (
	"slices"
	"strconv"
	"strings"

	"ramplan/press"
)

// Study reads what was typed, by the rules by which a table is read ([ReadCSV]), but each
// cell with a decimal sign of its own. The study holds the rows in which nothing is wrong; it
// can be relied on where there is no fault.
func (t *Typed) Study() (*Study, TypedFaults) {
	r := typedReader{typed: t, table: tableReader{study: &Study{Format: Format, Kind: t.Kind}, kind: tables[t.Kind], set: map[*Field]bool{}}}
	if !slices.Contains(Kinds, t.Kind) {
		r.add(0, "kind", FieldOf("", "kind").Allowed())
		return r.table.study, r.faults
	}
	r.heads()
	r.rows()
	slices.SortStableFunc(r.faults, func(a, b TypedFault) int { return a.Row - b.Row })
	return r.table.study, r.faults
}

// FieldOf gives the field of an entry of the study, by a name that may be another one of it
// and may have its unit in brackets; nil where the kind has none.
func FieldOf(kind, name string) *Field {
	name, _, _ = withUnit(name)
	return find(tables[kind].heads, name)
}

// ColumnOf gives the field of a cell of a push, by the head of its column.
func ColumnOf(kind, head string) *Field {
	name, _, _ := withUnit(head)
	return find(tables[kind].columns, name)
}

// A typedReader reads one typed study.
type typedReader struct {
	typed  *Typed
	table  tableReader
	faults TypedFaults
	at     []int // of each row of the study, that of the table, from 1
}

func (r *typedReader) add(row int, field, message string) {
	r.faults = append(r.faults, TypedFault{row, field, message})
}

// heads reads the entries of the study.
func (r *typedReader) heads() {
	t := &r.table
	t.set[find(t.kind.heads, "kind")] = true
	for _, h := range r.typed.Heads {
		text := trim(strings.ReplaceAll(h.Text, "\r\n", "\n"))
		name, unit, bracket := withUnit(h.Name)
		f := find(t.kind.heads, name)
		factor := 1.0
		if f != nil {
			var fits bool
			if factor, fits = f.factor(unit, bracket); !fits {
				r.add(0, f.Name, misfit(f, unit))
				t.set[f] = true
				continue
			}
		}
		switch {
		case text == "" || f != nil && f.Kind == press.Rows:
		case f == nil:
			why, _, _ := strings.Cut(t.noEntry(name), ";") // what is said of remarks is about files
			r.add(0, shown(plainName(name)), why)
		case t.set[f]:
			r.add(0, f.Name, twice)
		default:
			t.set[f] = true
			t.decimal = decimal{}
			if why := t.value(f, text, unit, factor); why != "" {
				r.add(0, f.Name, why)
				continue
			}
			f.set(t.study, nil, &t.node)
		}
	}
	for _, f := range t.kind.heads {
		if f.Required && f.Kind != press.Rows && !t.set[f] {
			r.add(0, f.Name, "not given; "+f.Allowed())
		}
	}
}

// rows reads the table.
func (r *typedReader) rows() {
	t := &r.table
	places := r.columns()
	for i, cells := range r.typed.Rows {
		if r.typed.Blank(i) {
			continue
		}
		t.rows, t.given, t.sound, r.at = append(t.rows, Row{}), append(t.given, 0), append(t.sound, 0), append(r.at, i+1)
		row := len(t.rows) - 1
		for k, text := range cells {
			if text = trim(text); text == "" || k < len(places) && places[k] < 0 {
				continue
			}
			if k >= len(places) {
				r.add(i+1, "", "found more cells than columns")
				break
			}
			f, c := t.kind.columns[places[k]], t.lines.Columns[k]
			t.given[row] |= 1 << places[k]
			t.decimal = decimal{}
			if why := t.value(f, text, c.Unit, c.Factor); why != "" {
				r.add(i+1, f.Name, why)
				continue
			}
			f.set(t.study, &t.rows[row], &t.node)
			t.sound[row] |= 1 << places[k]
		}
	}
	switch n := len(t.rows); {
	case r.typed.Kind == Event && n > 0:
		r.add(r.at[0], "", "found a row; an event has none")
	case r.typed.Kind != Event && (n == 0 || n > MostRows):
		r.add(0, "rows", "found "+strconv.Itoa(n)+" rows; 1 to 10,000 are needed")
	}
	t.study.Rows = t.rows
	c := rules{study: t.study, kind: t.kind, given: t.given, sound: t.sound, height: t.set[named(t.kind.heads, "height")]}
	for _, s := range c.check() {
		if s.column.Kind == press.Flag {
			short, _, _ := strings.Cut(lampWords, ",")
			s.message = "not given; " + short
		}
		r.add(r.at[s.row], s.column.Name, s.message)
	}
	r.keepGood()
}

// columns gives the place of each column in the table of the kind, -1 where it has none.
func (r *typedReader) columns() []int {
	t := &r.table
	places := make([]int, len(r.typed.Columns))
	for k, head := range r.typed.Columns {
		name, unit, bracket := withUnit(head)
		f := find(t.kind.columns, name)
		column := Column{Head: head, Field: f, Unit: unit, Factor: 1}
		places[k] = -1
		switch {
		case f == nil:
			if r.filled(k) {
				r.add(0, shown(plainName(name)), t.noColumn(name))
			}
		case slices.ContainsFunc(t.lines.Columns, func(c Column) bool { return c.Field == f }):
			r.add(0, f.Name, twice)
		default:
			var fits bool
			if column.Factor, fits = f.factor(unit, bracket); !fits {
				r.add(0, f.Name, misfit(f, unit))
				break
			}
			places[k] = slices.Index(t.kind.columns, f)
		}
		t.lines.Columns = append(t.lines.Columns, column)
	}
	return places
}

// filled tells whether some row has a text in the column.
func (r *typedReader) filled(column int) bool {
	return slices.ContainsFunc(r.typed.Rows, func(cells []string) bool { return column < len(cells) && trim(cells[column]) != "" })
}

// keepGood leaves the rows in which nothing is wrong.
func (r *typedReader) keepGood() {
	s := r.table.study
	bad := map[int]bool{}
	for _, f := range r.faults {
		bad[f.Row] = true
	}
	var good []Row
	for i, row := range s.Rows {
		if !bad[r.at[i]] {
			good = append(good, row)
		}
	}
	s.Rows = good
}

// Typed gives a study as somebody would have typed it: loss-free, in the units of the document,
// with the columns in which some row has a cell.
func (s *Study) Typed() *Typed {
	t := &Typed{Kind: s.Kind}
	text := func(v any) string {
		if given, is := v.(string); is {
			return given
		}
		return plainText(v)
	}
	for _, f := range Heads(s.Kind) {
		if v := f.value(s, nil); v != nil && f.Name != "kind" {
			t.SetHead(f.Name, text(v))
		}
	}
	used := s.columns()
	for _, f := range used {
		t.Columns = append(t.Columns, f.Name)
	}
	for i := range s.Rows {
		row := make([]string, len(used))
		for k, f := range used {
			if v := f.value(s, &s.Rows[i]); v != nil {
				row[k] = text(v)
			}
		}
		t.Rows = append(t.Rows, row)
	}
	return t
}
