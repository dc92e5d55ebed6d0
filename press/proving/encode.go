package proving

import (
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
	b := append([]byte(nil), "{\n  \"format\": \""+Format+"\""...)
	t := tables[s.Kind]
	for _, f := range t.heads {
		if f.Kind == press.Rows {
			b = s.appendRows(b, t.columns)
			continue
		}
		if v := s.valueAt(f, nil, f.Path); v != nil {
			b = append(b, ",\n  \""+f.Name+"\": "...)
			b = appendJSON(b, v)
		}
	}
	return append(b, "\n}\n"...)
}

func (s *Study) appendRows(b []byte, columns []*Field) []byte {
	if len(s.Rows) == 0 {
		return b
	}
	b = append(b, ",\n  \"rows\": ["...)
	for i := range s.Rows {
		if i > 0 {
			b = append(b, ',')
		}
		b = append(b, "\n    {"...)
		first := true
		for _, f := range columns {
			v := s.valueAt(f, &s.Rows[i], "")
			if v == nil && s.empty != nil {
				v = s.valueAt(f, &s.Rows[i], "rows["+strconv.Itoa(i)+"]."+f.Name)
			}
			if v == nil {
				continue
			}
			if !first {
				b = append(b, ", "...)
			}
			first = false
			b = append(b, "\""+f.Name+"\": "...)
			b = appendJSON(b, v)
		}
		b = append(b, '}')
	}
	return append(b, "\n  ]"...)
}

// valueAt is what was given for a field: its value, an empty text that was given as one, or
// nil.
func (s *Study) valueAt(f *Field, r *Row, path string) any {
	v := f.value(s, r)
	if v == nil && s.empty[path] {
		return ""
	}
	return v
}

// Canonical gives the study, as given and without defaults, in the canonical form of
// RFC 8785.
func (s *Study) Canonical() []byte {
	v := jsontext.Value(s.JSON())
	if err := v.Canonicalize(); err != nil {
		panic("proving: a study has no canonical form: " + err.Error())
	}
	return v
}

// Digest names the study: "sha256:" and the SHA-256 of its canonical form.
func (s *Study) Digest() string { return strict.Digest(s.Canonical()) }

func appendJSON(b []byte, v any) []byte {
	switch v := v.(type) {
	case float64:
		return append(b, strict.PlainNumber(v)...)
	case bool:
		return strconv.AppendBool(b, v)
	}
	text := v.(string)
	if !utf8.ValidString(text) {
		text = strings.ToValidUTF8(text, "\uFFFD")
	}
	b, err := jsontext.AppendQuote(b, text)
	if err != nil {
		panic("proving: a text that is UTF-8 cannot be quoted: " + err.Error())
	}
	return b
}
