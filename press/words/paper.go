package words

import (
	"slices"

	"ramplan/press"
)

// A Table is one page beside the sheet: a title, what it is for, and rows of text.
// A column of boxes is filled in by hand; a row has nothing there.
type Table struct {
	say     Printer
	Name    string // as the command line and addresses write it
	Title   string
	Lead    string
	Columns []Column
	Rows    [][]string
	Notes   []string
	Over    string   // stands over the notes; empty where they need no heading
	Grouped bool     // leading cells that say the same as those above are one with them
	Abreast int      // how many stretches of rows stand beside each other on paper; 0 as 1
	Lacking string   // why there are no rows; empty with rows
	Then    []Table  // that belong to it and stand behind it, under its name
	Fill    []string // what is written in by hand over the rows: date, shift

	// Heads of columns that a file of rows has in several: of figures with a unit, of
	// ranges and limits; and of those that hold what was typed in, which are no numbers.
	Figures, Ranges, Typed []string

	// Heads of columns of figures whose unit stands in another column; and columns that
	// only a file of rows has, of ranges and limits that paper says in a sentence.
	Bare  []string
	Filed []FiledColumn
}

// A FiledColumn is a column of a file of rows, with a cell for each row of the table.
type FiledColumn struct {
	Head   string
	Figure bool // a figure, its unit and a note; else the text, a figure or limits, and the unit
	Blank  bool // nothing: to be filled in there
	Cells  []string
}

func (c FiledColumn) kind() rowColumn {
	if c.Figure {
		return rowColumn{kind: figureColumn}
	}
	if c.Blank {
		return rowColumn{kind: plainColumn}
	}
	return rowColumn{kind: rangeColumn}
}

// blankColumn is one that is filled in by the reader of the file.
func blankColumn(head string, rows int) FiledColumn {
	return FiledColumn{Head: head, Blank: true, Cells: make([]string, rows)}
}

// A Column of a table.
type Column struct {
	Head  string
	Share float64 // of the width, in relation to the others
	Box   bool    // to be filled in by hand
}

// papers are the pages beside the sheet, in the order in which they are printed.
var papers = []struct {
	name, title string
	make        func(Printer, *press.Plan, *press.Result) Table
}{
	{"faults", "Fault catalogue", Printer.faultTable},
	{"samples", "Limit samples", Printer.sampleTable},
	{"control", "Control-plan rows", Printer.controlTable},
	{"failures", "Failure-mode rows", Printer.failureTable},
	{"reactions", "Reaction plan", Printer.reactionTable},
	{"shift", "Shift check", Printer.shiftTable},
	{"reproving", reprovingTitle, Printer.reprovingTable},
	{"proving", "Set-up and proving", Printer.provingTable},
	{"setpoints", "Setpoint list", Printer.setpointTable},
	{stepsPaper, "Steps", Printer.stepTable},
	{SharesPaper, "Shares of all parts", Printer.sharesTable},
	{DaysPaper, daysTitle, Printer.daysTable},
	{"basis", "What the plan rests on", Printer.basisTable},
}

// PaperNames lists the pages beside the sheet.
func PaperNames() []string {
	var out []string
	for _, p := range papers {
		out = append(out, p.name)
	}
	return out
}

// PaperTitle is the title of a page by its name; empty for an unknown one.
func PaperTitle(name string) string {
	for _, p := range papers {
		if p.name == name {
			return p.title
		}
	}
	return ""
}

// Paper makes a page beside the sheet; false for an unknown name.
func (say Printer) Paper(name string, p *press.Plan, r *press.Result) (Table, bool) {
	for _, x := range papers {
		if x.name == name {
			t := x.make(say, p, r)
			t.say, t.Name, t.Title = say, x.name, x.title
			for i := range t.Then {
				t.Then[i].say, t.Then[i].Name = say, x.name
			}
			return t, true
		}
	}
	return Table{}, false
}

// Parts are the table alone, and those that stand behind it under its name.
func (t Table) Parts() []Table {
	out := append([]Table{t}, t.Then...)
	out[0].Then = nil
	return out
}

// Signed are the names of those who stand for what was issued.
type Signed struct{ Prepared, Checked, Approved string }

// SignedBy is the page with the names that the title block has, in place of what the
// entries of the plan say of them.
func (t Table) SignedBy(s Signed) Table {
	if t.Name != "basis" {
		return t
	}
	t.Rows = slices.Clone(t.Rows)
	for path, name := range map[string]string{"title.prepared_by": s.Prepared, "title.checked_by": s.Checked, "title.approved_by": s.Approved} {
		field, _ := press.FieldAt(path)
		for i, row := range t.Rows {
			if row[1] == field.Label && row[0] == t.say.placeOf(path) {
				t.Rows[i] = []string{row[0], row[1], orNone(name), row[3], "named at issue"}
			}
		}
	}
	return t
}

// lamps writes what both lamps show, or what is known instead.
func (say Printer) lamps(arrival, zone *bool) string {
	if arrival == nil || zone == nil {
		return "not known"
	}
	return Pair{*arrival, *zone}.String()
}

// row is the row of the fault catalogue with a name; nil where it has none.
func row(r *press.Result, name string) *press.FaultRow {
	for i := range r.Faults {
		if r.Faults[i].Name == name && !r.Faults[i].Own {
			return &r.Faults[i]
		}
	}
	return nil
}
