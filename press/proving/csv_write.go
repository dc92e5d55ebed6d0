package proving

import (
	"strings"

	"ramplan/press"
	"ramplan/press/strict"
)

// CSV gives the study as a table that [ReadCSV] reads back as the same one, digest for
// digest. What a table cannot hold is the exception: line breaks in a text become blanks,
// blanks at the ends of a text before the head are left out, and a text that was given as
// empty counts as not given.
func (s *Study) CSV() []byte {
	var b strings.Builder
	for _, f := range Heads(s.Kind) {
		v := f.value(s, nil)
		if v == nil {
			continue
		}
		b.WriteString("# " + withOwnUnit(f) + ": " + trim(plainText(v)) + "\n")
	}
	used := s.columns()
	for i, f := range used {
		if i > 0 {
			b.WriteByte(',')
		}
		b.WriteString(withOwnUnit(f))
	}
	if len(used) > 0 {
		b.WriteByte('\n')
	}
	for k := range s.Rows {
		for i, f := range used {
			if i > 0 {
				b.WriteByte(',')
			}
			if v := f.value(s, &s.Rows[k]); v != nil {
				b.WriteString(quoted(plainText(v), i == 0))
			}
		}
		b.WriteByte('\n')
	}
	return []byte(b.String())
}

// columns are those of which some row has a cell.
func (s *Study) columns() (used []*Field) {
	for _, f := range tables[s.Kind].columns {
		for k := range s.Rows {
			if f.value(s, &s.Rows[k]) != nil {
				used = append(used, f)
				break
			}
		}
	}
	return used
}

func withOwnUnit(f *Field) string {
	if f.Kind == press.Number && f.Unit != "" {
		return f.Name + " [" + f.Unit + "]"
	}
	return f.Name
}

// plainText writes a value on one line.
func plainText(v any) string {
	switch v := v.(type) {
	case float64:
		return strict.PlainNumber(v)
	case bool:
		if v {
			return "on"
		}
		return "off"
	}
	text := strings.ToValidUTF8(v.(string), "\uFFFD")
	return strings.NewReplacer("\r\n", " ", "\n", " ", "\r", " ").Replace(text)
}

// quoted puts quotes around a cell that would be read otherwise without them.
func quoted(text string, first bool) string {
	if !strings.ContainsAny(text, "\",") && text == trim(text) && !(first && strings.HasPrefix(text, "#")) {
		return text
	}
	return `"` + strings.ReplaceAll(text, `"`, `""`) + `"`
}
