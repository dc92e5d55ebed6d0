package proving

import (
	"slices"
	"strings"

	"github.com/go-json-experiment/json"
)

// TypedFormat names the document of a study as it was typed.
const TypedFormat = "ramplan.typed/1"

// Bounds of what is typed: beyond them nothing is kept, as no study could have it.
const (
	MostTypedBytes = 4 << 20 // of all texts
	MostTypedRows  = 2 * MostRows
)

// A Typed study is the texts of a page's fields and cells as they were typed. It is kept
// whether it can be read or not; [Typed.Study] reads it. Names of heads and columns are those
// of the study, a unit may follow in square brackets ("reading [in]"), as in a CSV file.
type Typed struct {
	Kind    string     // one of Kinds
	Heads   []Head     // in the order of the page; what is not there was not given
	Columns []string   // of Rows
	Rows    [][]string // a text for each column; a row of blanks alone is no row of the study
}

// A Head is a field of the study as a whole.
type Head struct {
	Name string `json:"name"` // such as "height", "height [in]"
	Text string `json:"text"`
}

// columnsOf are the columns that a new table of a kind begins with.
var columnsOf = map[string][]string{
	LoadCell:  {"setting", "force", "condition", "speed", "remark"},
	Stiffness: {"setting", "force", "reading", "remark"},
	Master:    {"reading", "remark"},
	Restart:   {"start", "reading", "condition", "remark"},
	Trial:     {"reading", "arrival", "zone", "height", "remark"},
	Samples:   {"sample", "height", "arrival", "zone", "reading", "remark"},
	Event:     nil,
}

// NewTyped gives an empty table of a kind, with the columns that most stations need.
func NewTyped(kind string) *Typed {
	return &Typed{Kind: kind, Columns: slices.Clone(columnsOf[kind])}
}

// means tells whether two names mean the same, whatever their units.
func means(one, other string) bool {
	one, _, _ = withUnit(one)
	other, _, _ = withUnit(other)
	return plainName(one) == plainName(other)
}

// Head gives the text of a field, by its name without a unit; empty where it was not given.
func (t *Typed) Head(name string) string {
	for _, h := range t.Heads {
		if means(h.Name, name) {
			return h.Text
		}
	}
	return ""
}

// SetHead types a field, with or without a unit in its name. An empty text takes it away.
func (t *Typed) SetHead(name, text string) {
	at := slices.IndexFunc(t.Heads, func(h Head) bool { return means(h.Name, name) })
	switch {
	case at < 0 && text != "":
		t.Heads = append(t.Heads, Head{name, text})
	case at >= 0 && text != "":
		t.Heads[at] = Head{name, text}
	case at >= 0:
		t.Heads = slices.Delete(t.Heads, at, at+1)
	}
}

// Cell gives the text of a cell by its row, from 0, and the name of its column without a
// unit; empty where there is none.
func (t *Typed) Cell(row int, column string) string {
	at := slices.IndexFunc(t.Columns, func(c string) bool { return means(c, column) })
	if at < 0 || row < 0 || row >= len(t.Rows) || at >= len(t.Rows[row]) {
		return ""
	}
	return t.Rows[row][at]
}

// Blank tells whether a row, from 0, has no text at all.
func (t *Typed) Blank(row int) bool {
	return !slices.ContainsFunc(t.Rows[row], func(s string) bool { return strings.TrimSpace(s) != "" })
}

// Same tells whether two were typed the same.
func (t *Typed) Same(u *Typed) bool {
	return t.Kind == u.Kind && slices.Equal(t.Heads, u.Heads) && slices.Equal(t.Columns, u.Columns) &&
		slices.EqualFunc(t.Rows, u.Rows, slices.Equal[[]string])
}

// typedDocument is a typed study as it is stored.
type typedDocument struct {
	Format  string     `json:"format"`
	Kind    string     `json:"kind"`
	Heads   []Head     `json:"heads"`
	Columns []string   `json:"columns"`
	Rows    [][]string `json:"rows"`
}

// Encode gives the document of what was typed, loss-free.
func (t *Typed) Encode() []byte {
	// Texts of a browser are UTF-8; what is none is kept with a mark in its place.
	clean := typedDocument{Format: TypedFormat, Kind: valid(t.Kind), Columns: valids(t.Columns)}
	for _, h := range t.Heads {
		clean.Heads = append(clean.Heads, Head{valid(h.Name), valid(h.Text)})
	}
	for _, row := range t.Rows {
		clean.Rows = append(clean.Rows, valids(row))
	}
	body, err := json.Marshal(clean)
	if err != nil {
		panic("proving: a typed study cannot be written: " + err.Error())
	}
	return body
}

func valid(s string) string { return strings.ToValidUTF8(s, "\uFFFD") }

func valids(of []string) []string {
	out := make([]string, len(of))
	for i, s := range of {
		out[i] = valid(s)
	}
	return out
}

// DecodeTyped reads what [Typed.Encode] wrote; false where it is no such document.
func DecodeTyped(body []byte) (*Typed, bool) {
	var d typedDocument
	if json.Unmarshal(body, &d, json.RejectUnknownMembers(true)) != nil || d.Format != TypedFormat || !slices.Contains(Kinds, d.Kind) {
		return nil, false
	}
	return &Typed{d.Kind, d.Heads, d.Columns, d.Rows}, true
}
