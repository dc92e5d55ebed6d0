package view

import (
	"slices"
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/web/page"
)

// curveRows are the points of the curve.
const curveRows = "ram.curve.points"

// rowNouns name one row of each list.
var rowNouns = map[string]string{
	"parts":        "Part",
	curveRows:      "Point",
	"faults.other": "Fault",

	"quality.reactions": "Reaction",
	"controller.words":  "Word",
	"sequence.steps":    "Step",
}

// inLine tells whether a row of the list stands on one line: its entries are few
// and short.
func inLine(base string) bool { return base == curveRows || base == "faults.other" }

// RowName names one row of a list: Part 2.
func RowName(base string, row int) string { return rowNouns[base] + " " + strconv.Itoa(row+1) }

// rowOf takes the list and the number of the row out of a path.
func rowOf(path string) (base string, row int, ok bool) {
	base, rest, in := listOf(path)
	if !in {
		return "", 0, false
	}
	digits, _, closed := strings.Cut(rest, "]")
	n, err := strconv.Atoi(digits)
	return base, n, closed && err == nil && n >= 0 && strconv.Itoa(n) == digits
}

func rowPath(base string, row int) string { return base + "[" + strconv.Itoa(row) + "]" }

// hasRoom tells whether a path lies in rows that the schema can hold: anything
// further out is a path like any unknown one.
func hasRoom(path string) bool {
	base, row, ok := rowOf(path)
	if !ok {
		return !strings.Contains(general(path), "[]")
	}
	f, _ := press.FieldAt(base)
	return row < 2*f.MaxRows
}

// hasPlace tells whether the form has a place for the path.
func hasPlace(path string) bool {
	if _, ok := press.FieldAt(path); ok {
		return true
	}
	_, ok := containers[general(path)]
	return ok && hasRoom(path)
}

// rows makes the list of rows of one field.
func (f *form) rows(field *press.Field) *page.Rows {
	base := field.Path
	noun := strings.ToLower(rowNouns[base])
	out := &page.Rows{
		ID: anchor(base) + "-rows", Path: base, Label: field.Label, Help: field.Help, Messages: f.faults.At(base),
		Add: "add " + base, AddLabel: say.AddA(noun),
		Compact: inLine(base), Title: base != "parts", Explain: !inLine(base),
	}
	out.Starts, out.StartsSay = f.starts(base), say.StartFrom(f.count[base] > 0)
	if onlyMissing(f.faults, base) {
		out.Need, out.Messages = needOf(out.Messages), nil
	}
	f.places[base] = out.ID
	if base == curveRows {
		out.Paste, out.Curve, out.Doubts = f.pasteBox(), f.curve, f.doubts
	}
	out.Columns = slices.Clone(stated().heads[base])
	columns := columnsOf(base)
	n := f.count[base]
	for i := range n {
		out.Rows = append(out.Rows, f.row(base, i, n, columns))
	}
	if n >= 2*field.MaxRows {
		out.Add = ""
	}
	return out
}

// needOf says what is needed, as a sentence and without the fault that it is not
// given: an empty list is no worse than an empty field.
func needOf(messages []string) string {
	return sentence(strings.TrimPrefix(strings.Join(messages, "; "), "not given; "))
}

func (f *form) row(base string, i, n int, columns []*press.Field) page.Row {
	path := rowPath(base, i)
	name := RowName(base, i)
	spoken, which := strings.ToLower(name), " "+base+" "+strconv.Itoa(i)
	out := page.Row{
		ID: anchor(path), Number: name, Carrier: page.Hidden{Name: path, Value: emptyRow(base)}, Messages: f.faults.At(path),
		Remove: "remove" + which, RemoveAs: "Remove " + spoken,
		ActsAs: say.ButtonsOf(spoken), UpAs: "Move " + spoken + " up", DownAs: "Move " + spoken + " down",
		Fields: make([]page.Field, 0, len(columns)),
	}
	f.places[path] = out.ID
	if base == stepRows {
		out.Repeat, out.RepeatAs = "repeat"+which, "Copy "+spoken
		out.Doubts = f.zoneDoubt(i)
	}
	if i > 0 {
		out.Up = "up" + which
	}
	if i < n-1 {
		out.Down = "down" + which
	}
	for _, c := range columns {
		if !f.stepHas(c, i) {
			continue
		}
		field := f.field(c, press.RowPath(c.Path, i))
		if field.Missing { // there is no room under a row
			field.StandIn = "needed"
		}
		if inLine(base) {
			field.InRow = true
			field.Spoken = c.Label + ", " + spoken
			if field.ReadAs != "" { // it stands under the whole row
				field.ReadAs = strings.ToLower(c.Label) + " " + field.ReadAs
			}
		}
		out.Fields = append(out.Fields, field)
	}
	return out
}

// pasteBox is the place for two columns of text.
func (f *form) pasteBox() *page.Paste {
	if f.paste != nil {
		return f.paste
	}
	return &page.Paste{Do: DoPaste}
}

// DoPaste is the command that reads two columns into the curve.
const DoPaste = "paste ram.curve.points"
