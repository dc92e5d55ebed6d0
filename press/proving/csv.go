package proving

import (
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"ramplan/press"
	"ramplan/press/strict"
)

// ReadCSV reads one study from a table of text: lines that begin with # set entries of the
// study, the first other line is the head, each line behind it is a push. The study holds
// the pushes with which nothing is wrong; it can be relied on where the lines are
// [Lines.Sound], and is then the same, digest for digest, as the one of JSON.
func ReadCSV(data []byte) (*Study, Lines) {
	t := &tableReader{study: &Study{Format: Format}, set: map[*Field]bool{}}
	t.read(data)
	slices.SortStableFunc(t.lines.Faults, func(a, b Fault) int { return a.Line - b.Line })
	return t.study, t.lines
}

// A tableReader reads one table.
type tableReader struct {
	study   *Study
	lines   Lines
	kind    table
	decimal decimal
	padded  bool            // every line has separators for the longest one
	set     map[*Field]bool // entries of the study that were given, right or wrong
	node    strict.Node     // the cell in hand

	rows    []Row
	at      []Refused // of each row: where it stands, and its faults
	given   []given
	sound   []given
	places  []int // of each column: its place in the table of the kind, -1 where it has none
	absent  given // columns that the head lacks, and that were missed there
	between []cell
}

func (t *tableReader) fault(line int, column, message string) {
	t.lines.Faults = append(t.lines.Faults, Fault{line, column, message})
}

func (t *tableReader) read(data []byte) {
	if len(data) > press.MaxBytes {
		t.fault(1, "", "found "+strconv.Itoa(len(data))+" bytes; at most "+strconv.Itoa(press.MaxBytes)+" (4 MiB) are read")
		return
	}
	text := strings.TrimPrefix(string(data), "\ufeff")
	if strings.HasPrefix(text, "\xff\xfe") || strings.HasPrefix(text, "\xfe\xff") {
		t.fault(1, "", "found UTF-16; save the table as UTF-8")
		return
	}
	if strings.HasPrefix(strings.TrimSpace(text), "{") {
		t.fault(1, "", "found JSON; a table is read here, and a study in JSON where the file is not named .csv")
		t.keep("", text, 0)
		return
	}
	var remarks []Refused
	line, head := 0, ""
	for text != "" && head == "" {
		line++
		head, text = cutLine(text)
		switch {
		case strings.HasPrefix(strings.TrimLeft(head, " \t"), "#"):
			remarks = append(remarks, Refused{Line: line, Text: strings.TrimLeft(head, " \t")})
			head = ""
		case strings.HasPrefix(head, `"#`) && inQuotes(head) != "":
			remarks = append(remarks, Refused{Line: line, Text: inQuotes(head), Cells: []string{head}})
			head = ""
		case trim(strings.Trim(head, separators)) == "":
			head = ""
		}
	}
	separator := separatorOf(head)
	if separator != 0 {
		t.lines.Separator = string(separator)
	}
	t.decimal.fixed = separator == ','
	t.entries(remarks, max(line, 1))
	switch {
	case t.study.Kind == Event && head == "":
	case t.study.Kind == Event:
		t.fault(line, "", "found a row; an event has none")
		t.keep(head, text, line)
	case head == "":
		t.fault(max(line, 1), "", "found no head; a line with the names of the columns is needed, and a line for each push behind it")
	case t.head(head, separator, line):
		t.body(text, separator, line)
		t.together()
	default:
		t.keep("", text, line)
	}
	t.lines.Comma = t.decimal.sign == ','
}

func blank(line string) bool { return strings.TrimSpace(line) == "" }

// separators are what a spreadsheet fills lines up with: it saves every line with as many of
// them as the longest has. Such a file is known by its kind, whose line ends with them: then
// they are no part of an entry, and a line of them alone is a blank one. An entry that holds
// one stands in quotes.
const separators = " \t,;"

// inQuotes gives a line that is one quoted cell and nothing but separators behind it.
func inQuotes(line string) string {
	c, rest, wrong := oneCell(strings.TrimRight(line, separators), 0)
	if wrong != "" || rest != "" || !c.quoted {
		return ""
	}
	return c.text
}

// keep holds on to lines that cannot be read, so that nothing is lost.
func (t *tableReader) keep(first, text string, line int) {
	if first != "" {
		t.lines.Refused = append(t.lines.Refused, Refused{Line: line, Text: first})
	}
	for text != "" {
		line++
		if first, text = cutLine(text); !blank(first) && !strings.HasPrefix(first, "#") {
			t.lines.Refused = append(t.lines.Refused, Refused{Line: line, Text: first})
		}
	}
}

// entries reads the lines before the head that set entries of the study. last is the line
// at which one that is missing is named.
func (t *tableReader) entries(remarks []Refused, last int) {
	type entry struct {
		line       int
		name, text string
		quoted     bool
	}
	var all []entry
	for _, r := range remarks {
		if !utf8.ValidString(r.Text) {
			t.fault(r.Line, "", notUTF8)
			continue
		}
		if name, text, found := strings.Cut(r.Text[1:], ":"); found {
			all = append(all, entry{r.Line, trim(name), trim(text), r.Cells != nil})
		}
	}
	for _, e := range all { // the kind says what the others may be
		kind := strings.TrimRight(e.text, separators)
		if name, _, _ := withUnit(e.name); plainName(name) == "kind" && slices.Contains(Kinds, kind) {
			t.study.Kind, t.padded = kind, kind != e.text && !e.quoted
			break
		}
	}
	for i, e := range all {
		if t.padded && !e.quoted {
			all[i].text = strings.TrimRight(e.text, separators)
		}
	}
	t.kind = tables[t.study.Kind]
	heads := Heads(t.study.Kind)
	format := false
	for _, e := range all {
		name, unit, bracket := withUnit(e.name)
		f := find(heads, name)
		switch {
		case plainName(name) == "format" && format:
			t.fault(e.line, "format", twice)
		case plainName(name) == "format" && e.text == Format && !bracket:
			format = true
		case plainName(name) == "format":
			format = true
			t.fault(e.line, "format", "found "+strconv.Quote(strict.Clip(e.text, 40))+"; "+Format+" is needed")
		case f == nil:
			t.fault(e.line, shown(name), t.noEntry(name))
		case t.set[f]:
			t.fault(e.line, f.Name, twice)
		default:
			t.set[f] = true
			t.entry(f, e.line, unit, bracket, e.text)
		}
	}
	for _, f := range heads {
		if f.Required && !t.set[f] && (t.study.Kind != "" || f.For == nil) {
			t.fault(last, f.Name, "not given before the head, as # "+f.Name+": …; "+f.Allowed())
		}
	}
}

const (
	twice     = "given twice; only one is allowed"
	notUTF8   = "found bytes that are no UTF-8; save the table as UTF-8"
	lampWords = "on or off is needed, or 1 or 0, true or false, yes or no"
)

// shown is the name of a column or entry that does not exist, for a message.
func shown(name string) string {
	if name == "" {
		return `""`
	}
	return strict.Clip(strings.Map(func(r rune) rune {
		if r < ' ' || r == 0x7f {
			return '\uFFFD'
		}
		return r
	}, name), 40)
}

// noEntry says that no entry of the study has this name.
func (t *tableReader) noEntry(name string) string {
	if find(tables[""].heads, name) != nil && t.study.Kind != "" && plainName(name) != "rows" {
		return "no such entry in a study of kind " + t.study.Kind
	}
	return "no such entry; a remark before the head has no colon"
}

// entry reads what a line sets.
func (t *tableReader) entry(f *Field, line int, unit string, bracket bool, text string) {
	factor, fits := f.factor(unit, bracket)
	if !fits {
		t.fault(line, f.Name, misfit(f, unit))
		return
	}
	if text == "" {
		if f.Required {
			t.fault(line, f.Name, "empty; "+f.Allowed())
		}
		return
	}
	if why := t.value(f, text, unit, factor); why != "" {
		t.fault(line, f.Name, why)
		return
	}
	f.set(t.study, nil, &t.node)
}

// misfit says that a field is not written in this unit.
func misfit(f *Field, unit string) string {
	found := "found the unit " + strconv.Quote(strict.Clip(unit, 40)) + "; "
	if fit := unitsOf[f.Unit]; fit != "" {
		return found + fit + " is needed"
	}
	return found + "this has no unit"
}

// value reads a text into the node in hand; why is what is wrong with it.
func (t *tableReader) value(f *Field, text, unit string, factor float64) (why string) {
	n := &t.node
	*n = strict.Node{Shape: strict.Text, Text: text}
	switch f.Kind {
	case press.Number:
		if f.Name == "time" && strings.Contains(text, ":") {
			x, ok := clock(text)
			if !ok {
				return "found " + n.Found() + "; a number in s or a clock time such as 14:05 or 14:05:30 is needed"
			}
			n.Shape, n.Num = strict.Number, x
			break
		}
		x, ok, wrong := t.decimal.number(text)
		if wrong != "" {
			return "found " + strict.Clip(text, 40) + "; " + wrong
		}
		if ok {
			n.Shape, n.Num = strict.Number, x*factor
			if factor != 1 {
				n.Text += " " + unit
			}
		}
	case press.Flag:
		on, ok := lamp(text)
		if !ok {
			return "found " + n.Found() + "; " + lampWords
		}
		n.Shape, n.Flag = strict.Boolean, on
	case press.Choice:
		if f.Name == "condition" {
			n.Text = strings.ToLower(text)
		}
	}
	if p := f.fault(n, ""); p != nil {
		return p.Message
	}
	return ""
}

// head reads the names of the columns; false where it cannot be taken apart.
func (t *tableReader) head(text string, separator byte, line int) bool {
	if !utf8.ValidString(text) {
		t.fault(line, "", notUTF8)
		return false
	}
	cells, at, wrong := split(text, separator, nil)
	if wrong != "" {
		t.fault(line, "column "+strconv.Itoa(at+1), wrong)
		return false
	}
	for len(cells) > 0 && cells[len(cells)-1].text == "" {
		cells = cells[:len(cells)-1]
	}
	have := map[*Field]bool{}
	for _, c := range cells {
		name, unit, bracket := withUnit(c.text)
		f := find(t.kind.columns, name)
		column := Column{Head: c.text, Field: f, Unit: unit, Factor: 1}
		place := -1
		switch {
		case f == nil:
			t.fault(line, shown(name), t.noColumn(name))
		case have[f]:
			t.fault(line, f.Name, twice)
		default:
			have[f] = true
			factor, fits := f.factor(unit, bracket)
			if !fits {
				t.fault(line, f.Name, misfit(f, unit))
			}
			column.Factor, place = factor, slices.Index(t.kind.columns, f)
		}
		t.lines.Columns = append(t.lines.Columns, column)
		t.places = append(t.places, place)
	}
	t.missing(have, line)
	return true
}

// noColumn says that no column has this name.
func (t *tableReader) noColumn(name string) string {
	if find(tables[""].columns, name) != nil {
		return "no such column in a study of kind " + t.study.Kind
	}
	return "no such column"
}

// missing names the columns that the head lacks.
func (t *tableReader) missing(have map[*Field]bool, line int) {
	if t.study.Kind == "" {
		return
	}
	has := func(name string) bool { return have[find(t.kind.columns, name)] }
	lacks := func(name, why string) {
		t.fault(line, name, why)
		t.absent |= 1 << slices.Index(t.kind.columns, find(t.kind.columns, name))
	}
	for _, f := range t.kind.columns {
		if f.Required && !have[f] {
			lacks(f.Name, "no such column; it is needed in a study of kind "+t.study.Kind)
		}
	}
	if t.study.Kind != Stiffness {
		return
	}
	if !has("setting") && !has("force") {
		lacks("setting", "no such column; a setting or a force is needed")
	}
	if !has("height") && !t.set[find(t.kind.heads, "height")] {
		lacks("height", "no such column; the height of the block is needed, in a column or in a line # height: … before the head")
	}
}
