package proving

import (
	"bytes"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"github.com/go-json-experiment/json/jsontext"

	"ramplan/press"
	"ramplan/press/strict"
)

// noteEmpty remembers that a text was given as empty: that is not the same document as one
// in which it is absent.
func (s *Study) noteEmpty(path string) {
	if s.empty == nil {
		s.empty = map[string]bool{}
	}
	s.empty[path] = true
}

// JSON gives the study as a document, with the entries that were given and no others: an
// entry a line, and a push a line.
func (s *Study) JSON() []byte {
	t := tables[s.Kind]
	return append(s.write(readable, t.heads, t.columns), '\n')
}

// Canonical gives the study, as given and without defaults, in the canonical form of
// RFC 8785.
func (s *Study) Canonical() []byte {
	t := sorted[s.Kind]
	return s.write(canonical, t.heads, t.columns)
}

// Digest names the study: "sha256:" and the SHA-256 of its canonical form.
func (s *Study) Digest() string { return strict.Digest(s.Canonical()) }

// sorted are the tables with their entries as the canonical form has them, by their names.
var sorted = func() map[string]table {
	out := map[string]table{}
	byName := func(a, b *Field) int { return strings.Compare(a.Name, b.Name) }
	for kind, t := range tables {
		out[kind] = table{slices.SortedFunc(slices.Values(t.heads), byName), slices.SortedFunc(slices.Values(t.columns), byName)}
	}
	return out
}()

// A layout is what stands between the parts of a document.
type layout struct{ entry, row, cell, colon, lastRow, end string }

var (
	readable  = layout{"\n  ", "\n    ", " ", ": ", "\n  ", "\n"}
	canonical = layout{colon: ":"}
)

// write writes the entries and columns in this order; the format stands where the order of
// names has it, or first.
func (s *Study) write(l layout, heads, columns []*Field) []byte {
	b := make([]byte, 1, 400+120*len(s.Rows))
	b[0] = '{'
	key := func(name string) {
		if b[len(b)-1] != '{' {
			b = append(b, ',')
		}
		b = appendKey(append(b, l.entry...), name, l)
	}
	first := slices.IndexFunc(heads, func(f *Field) bool { return f.Name > "format" })
	if l == readable {
		first = 0
	}
	for i, f := range heads {
		if i == first {
			key("format")
			b = append(b, `"`+Format+`"`...)
		}
		switch {
		case f.Kind == press.Rows && len(s.Rows) > 0:
			key(f.Name)
			b = s.appendRows(b, l, columns)
		case f.Kind != press.Rows && s.has(f, nil, head):
			key(f.Name)
			b = appendValue(b, f.at(s, nil))
		}
	}
	return append(append(b, l.end...), '}')
}

func (s *Study) appendRows(b []byte, l layout, columns []*Field) []byte {
	b = append(b, '[')
	for i := range s.Rows {
		if i > 0 {
			b = append(b, ',')
		}
		b = append(append(b, l.row...), '{')
		for _, f := range columns {
			r := &s.Rows[i]
			if !s.has(f, r, i) {
				continue
			}
			if b[len(b)-1] != '{' {
				b = append(append(b, ','), l.cell...)
			}
			b = appendValue(appendKey(b, f.Name, l), f.at(s, r))
		}
		b = append(b, '}')
	}
	return append(append(b, l.lastRow...), ']')
}

// has tells whether the field was given, be it as an empty text.
func (s *Study) has(f *Field, r *Row, row int) bool {
	switch v := f.at(s, r).(type) {
	case **float64:
		return *v != nil
	case **bool:
		return *v != nil
	case *string:
		return *v != "" || s.empty != nil && s.empty[at(row, f.Name)]
	}
	return false
}

func appendKey(b []byte, name string, l layout) []byte {
	return append(append(append(append(b, '"'), name...), '"'), l.colon...)
}

// appendValue writes what stands at a field that was given.
func appendValue(b []byte, at any) []byte {
	switch v := at.(type) {
	case **float64:
		return appendNumber(b, **v)
	case **bool:
		return strconv.AppendBool(b, **v)
	}
	text := *at.(*string)
	if !utf8.ValidString(text) {
		text = strings.ToValidUTF8(text, "\uFFFD")
	}
	b, err := jsontext.AppendQuote(b, text)
	if err != nil {
		panic("proving: a text that is UTF-8 cannot be quoted: " + err.Error())
	}
	return b
}

// appendNumber writes a number as ECMAScript does, which RFC 8785 asks for.
func appendNumber(b []byte, x float64) []byte {
	size := math.Abs(x)
	switch {
	case x == 0:
		return append(b, '0')
	case size >= 1e-6 && size < 1e21:
		return strconv.AppendFloat(b, x, 'f', -1, 64)
	}
	from := len(b)
	b = strconv.AppendFloat(b, x, 'e', -1, 64)
	if i := bytes.LastIndexAny(b[from:], "+-"); i > 0 && b[from+i+1] == '0' { // e-07 is e-7
		b = append(b[:from+i+1], b[from+i+2:]...)
	}
	return b
}
