package proving

import (
	"slices"
	"strings"
)

// ReadTyped takes a table of text apart, as it was typed: every line behind the head is a
// row, whether it can be read or not, so that what is refused can be mended where it stands.
// It is nil where no kind of study is named, or nothing can be taken apart; why stands in the
// lines.
func ReadTyped(data []byte) (*Typed, Lines) {
	study, lines := ReadCSV(data)
	if !slices.Contains(Kinds, study.Kind) || study.Kind != Event && len(lines.Columns) == 0 {
		return nil, lines
	}
	out := &Typed{Kind: study.Kind}
	for _, c := range lines.Columns {
		name := c.Head
		if c.Field != nil {
			name = c.Field.Name
			if c.Unit != "" && c.Unit != c.Field.Unit {
				name += " [" + c.Unit + "]"
			}
		}
		out.Columns = append(out.Columns, name)
	}
	taken := map[int]bool{}
	for _, n := range lines.Rows {
		taken[n] = true
	}
	for _, r := range lines.Refused {
		taken[r.Line] = true
	}
	separator := byte(0)
	if lines.Separator != "" {
		separator = lines.Separator[0]
	}
	text, one, head := strings.TrimPrefix(string(data), "\ufeff"), "", false
	for n := 1; text != ""; n++ {
		one, text = cutLine(text)
		switch {
		case taken[n]:
			out.Rows = append(out.Rows, rowOf(one, separator, len(out.Columns)))
		case !head && strings.HasPrefix(one, "#"):
			out.entry(one)
		case !blank(one) && !strings.HasPrefix(one, "#"):
			head = true
		}
	}
	return out, lines
}

// entry takes over what a line before the head says of the study.
func (t *Typed) entry(line string) {
	name, text, found := strings.Cut(line[1:], ":")
	if name = trim(name); !found || plainName(name) == "kind" || plainName(name) == "format" {
		return
	}
	plain, unit, _ := withUnit(name)
	if f := find(tables[t.Kind].heads, plain); f != nil {
		plain = f.Name
		if unit == f.Unit {
			unit = ""
		}
	}
	if unit != "" {
		plain += " [" + unit + "]"
	}
	t.Heads = append(t.Heads, Head{plain, trim(text)})
}

// rowOf is a line in as many cells as there are columns. What cannot be taken apart stands
// whole in the first; cells beyond the last column stand behind the last one.
func rowOf(line string, separator byte, columns int) []string {
	out := make([]string, columns)
	cells, _, wrong := split(line, separator, nil)
	if wrong != "" {
		out[0] = line
		return out
	}
	for i, c := range cells {
		switch {
		case i < columns:
			out[i] = c.text
		case c.text != "":
			out[columns-1] += " " + c.text
		}
	}
	return out
}
