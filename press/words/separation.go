package words

import (
	"bytes"
	"encoding/csv"
	"slices"
	"strings"
	"unicode/utf8"
)

// A Separation is how rows go into a file: what stands between cells, and what
// between the whole and the fraction of a number.
type Separation struct {
	Name, Label string
	between     rune
	point       string
}

// Separations are all of them, the usual one first. A spreadsheet takes the one of
// its user's country.
var Separations = []Separation{
	{"comma", "commas and decimal point", ',', "."},
	{"semicolon", "semicolons and decimal comma", ';', ","},
}

// SeparationNames lists the names of all.
func SeparationNames() []string {
	var out []string
	for _, s := range Separations {
		out = append(out, s.Name)
	}
	return out
}

// SeparationOf gives one by its name, the usual one for an empty name; false for an
// unknown one.
func SeparationOf(name string) (Separation, bool) {
	i := slices.IndexFunc(Separations, func(s Separation) bool { return s.Name == name || name == "" })
	return Separations[max(i, 0)], i >= 0
}

// Number writes a plain number with this decimal mark.
func (s Separation) Number(plain string) string { return strings.ReplaceAll(plain, ".", s.point) }

// File writes rows as RFC 4180 has it, an empty row as an empty line. Where there is
// more than ASCII, the file begins with the mark by which spreadsheets know UTF-8.
func (s Separation) File(rows [][]string) []byte {
	var b bytes.Buffer
	out := csv.NewWriter(&b) // a buffer takes everything
	out.UseCRLF, out.Comma = true, s.between
	for _, row := range rows {
		if len(row) == 0 {
			out.Flush()
			b.WriteString("\r\n")
			continue
		}
		_ = out.Write(row)
	}
	out.Flush()
	if bytes.ContainsFunc(b.Bytes(), func(c rune) bool { return c >= utf8.RuneSelf }) {
		return append([]byte("\uFEFF"), b.Bytes()...)
	}
	return b.Bytes()
}

// Tabbed writes rows as text to be pasted: a line a row, tabs between cells, no cell
// a formula and nothing empty at the end of a line.
func Tabbed(rows [][]string) string {
	var b strings.Builder
	for _, row := range rows {
		var cells []string
		for _, cell := range row {
			cells = append(cells, Cell(strings.Join(strings.FieldsFunc(cell, func(c rune) bool { return c == '\t' || c == '\n' || c == '\r' }), " ")))
		}
		b.WriteString(strings.TrimRight(strings.Join(cells, "\t"), "\t") + "\n")
	}
	return b.String()
}
