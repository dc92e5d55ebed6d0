package web

import (
	"net/http"
	"slices"
	"strconv"
	"strings"

	"ramplan/press/proving"
	"ramplan/web/page"
	proofview "ramplan/web/view/proving"
)

// A studyForm is a form of the pages of studies.
type studyForm struct {
	do      string
	version int64
	window  string
	text    string // a table, or a block of cells
	file    *postedFile
	from    int // row that the table begins with, from 0
	count   int // rows that it had when it was sent
	columns []string
	take    []string // entries that are to be adopted
	heads   []proving.Head
	cells   []formCell
	other   map[string]string
}

type formCell struct {
	row, column int
	text        string
}

// readStudyForm reads the form of a request, whichever way it was sent.
func readStudyForm(r *http.Request) (*studyForm, error) {
	inputs, file, err := readInputs(r)
	if err != nil {
		return nil, err
	}
	f := &studyForm{file: file, other: map[string]string{}}
	for _, in := range inputs {
		value := strings.ReplaceAll(in.value, "\r\n", "\n")
		switch in.name {
		case page.NameDo:
			f.do = value
		case page.NameVersion:
			f.version, _ = strconv.ParseInt(value, 10, 64)
		case page.NameWindow:
			f.window = value
		case page.NameText:
			f.text = value
		case page.NameFrom:
			f.from, _ = strconv.Atoi(value)
		case page.NameCount:
			f.count, _ = strconv.Atoi(value)
		case page.NameColumns:
			f.columns = strings.Split(value, "|")
		case page.NameTake:
			f.take = append(f.take, value)
		default:
			f.entry(in.name, value)
		}
	}
	return f, nil
}

func (f *studyForm) entry(name, value string) {
	if head, ok := strings.CutPrefix(name, proofview.HeadName("")); ok {
		f.heads = append(f.heads, proving.Head{Name: head, Text: value})
		return
	}
	if row, column, ok := cellOf(name); ok {
		f.cells = append(f.cells, formCell{row, column, value})
		return
	}
	f.other[name] = value
}

// cellOf tells which cell an input is of.
func cellOf(name string) (row, column int, ok bool) {
	rest, ok := strings.CutPrefix(name, "rows[")
	if !ok {
		return 0, 0, false
	}
	a, b, ok := strings.Cut(rest, "].")
	if !ok {
		return 0, 0, false
	}
	row, err1 := strconv.Atoi(a)
	column, err2 := strconv.Atoi(b)
	return row, column, err1 == nil && err2 == nil && row >= 0 && row <= 2*proving.MostTypedRows && column >= 0 && column < 40
}

// table is the text that was sent, typed or as a file.
func (f *studyForm) table() string {
	if f.file != nil && len(f.file.data) > 0 {
		return string(f.file.data)
	}
	return f.text
}

func (f *studyForm) fileName() string {
	if f.file != nil {
		return f.file.name
	}
	return sayProof.PastedText()
}

// into puts what was typed in place of what stands: the head, and the rows of the leaf.
func (f *studyForm) into(stands *proving.Typed) *proving.Typed {
	out := &proving.Typed{Kind: stands.Kind, Columns: slices.Clone(stands.Columns)}
	if f.heads == nil && f.columns == nil {
		return stands
	}
	asked := map[string]bool{}
	for _, h := range f.heads {
		asked[h.Name] = true
		out.SetHead(h.Name, h.Text)
	}
	for _, h := range stands.Heads {
		if !asked[h.Name] {
			out.SetHead(h.Name, h.Text)
		}
	}
	if len(f.columns) > 0 && f.columns[0] != "" {
		out.Columns = f.columns
	}
	first := min(max(0, f.from), len(stands.Rows))
	end := min(first+max(0, f.count), len(stands.Rows))
	rows := make([][]string, 0, len(f.cells))
	for _, c := range f.cells {
		at := c.row - first
		if at < 0 || c.column >= len(out.Columns) {
			continue
		}
		for at >= len(rows) {
			rows = append(rows, make([]string, len(out.Columns)))
		}
		rows[at][c.column] = c.text
	}
	out.Rows = slices.Concat(stands.Rows[:first], rows, stands.Rows[end:])
	proofview.Tidy(out)
	return out
}
