package view

import (
	"fmt"
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
	for i := range press.Fields {
		f := &press.Fields[i]
		if f.Kind != press.Rows {
			continue
		}
		if rest, in := strings.CutPrefix(path, f.Path+"["); in {
			digits, _, closed := strings.Cut(rest, "]")
			n, err := strconv.Atoi(digits)
			return f.Path, n, closed && err == nil && n >= 0 && strconv.Itoa(n) == digits
		}
	}
	return "", 0, false
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
	out.Starts = f.starts(base)
	if onlyMissing(f.faults, base) {
		out.Need, out.Messages = needOf(out.Messages), nil
	}
	f.places[base] = out.ID
	if base == curveRows {
		out.Paste, out.Curve, out.Doubts = f.pasteBox(), f.curve, f.doubts
	}
	columns := columnsOf(base)
	for _, c := range columns {
		help := c.Help
		if d, ok := c.Default.(string); ok && c.Kind == press.Choice {
			help += say.InBracketsWhileNothingIs(c.Path, d)
		}
		out.Columns = append(out.Columns, page.Column{Label: c.Label, Unit: c.Unit, Help: help, Word: entryLink(c)})
	}
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

func columnsOf(base string) []*press.Field {
	var out []*press.Field
	for i := range press.Fields {
		if strings.HasPrefix(press.Fields[i].Path, base+"[]") {
			out = append(out, &press.Fields[i])
		}
	}
	return out
}

func (f *form) row(base string, i, n int, columns []*press.Field) page.Row {
	path := rowPath(base, i)
	name := RowName(base, i)
	out := page.Row{
		ID: anchor(path), Number: name, Carrier: page.Hidden{Name: path, Value: emptyRow(base)}, Messages: f.faults.At(path),
		Remove: fmt.Sprintf("remove %s %d", base, i), RemoveAs: "Remove " + strings.ToLower(name),
		ActsAs: say.ButtonsOf(strings.ToLower(name)), UpAs: "Move " + strings.ToLower(name) + " up", DownAs: "Move " + strings.ToLower(name) + " down",
	}
	f.places[path] = out.ID
	if base == stepRows {
		out.Repeat, out.RepeatAs = fmt.Sprintf("repeat %s %d", base, i), "Copy "+strings.ToLower(name)
	}
	if i > 0 {
		out.Up = fmt.Sprintf("up %s %d", base, i)
	}
	if i < n-1 {
		out.Down = fmt.Sprintf("down %s %d", base, i)
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
			field.Spoken = c.Label + ", " + strings.ToLower(name)
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
