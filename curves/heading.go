package curves

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
)

// A Table is what was read from two columns of text.
type Table struct {
	Points     []Point
	Heading    string // the line that names both columns; empty where none does
	ForceFirst bool   // the heading names the force before the setting, and the columns were read so
}

// column is what a heading calls a column.
type column int

const (
	unnamed column = iota
	settings
	forces
)

// unitNames are told before words: "force limit, %" is a setting.
var unitNames = map[string]column{"%": settings, "percent": settings, "n": forces, "newton": forces, "newtons": forces}

var columnNames = map[string]column{
	"setting": settings, "settings": settings, "current": settings, "currents": settings,
	"force": forces, "forces": forces, "push": forces,
}

// otherUnits are units of force that figures are never converted from.
var otherUnits = []string{"kN", "daN", "kgf", "lbf", "lb"}

// heading says whether no field begins like a number.
func heading(fields []string) bool {
	for _, f := range fields {
		f = strings.TrimLeft(f, "+-.,")
		if f != "" && f[0] >= '0' && f[0] <= '9' {
			return false
		}
	}
	return true
}

// named takes the names of both columns from a heading, where it gives both.
func (t *Table) named(line string, fields []string) {
	first, second := unnamed, unnamed
	if len(fields) == 2 {
		first, second = nameOf(fields[0]), nameOf(fields[1])
	} else {
		// Blanks part the words, not the columns: what is named first stands first.
		first, second = inOrder(wordsOf(fields), unitNames)
		if second == unnamed {
			first, second = inOrder(wordsOf(fields), columnNames)
		}
	}
	if first == unnamed || second == unnamed || first == second {
		return
	}
	t.Heading, t.ForceFirst = shorten(strings.TrimSpace(line)), first == forces
}

// nameOf tells what one field of a heading names, if it is one thing.
func nameOf(field string) column {
	words := wordsOf([]string{field})
	for _, names := range []map[string]column{unitNames, columnNames} {
		if first, second := inOrder(words, names); first != unnamed && second == unnamed {
			return first
		}
	}
	return unnamed
}

// inOrder gives the first name among some words, and the first other one.
func inOrder(words []string, names map[string]column) (first, second column) {
	for _, w := range words {
		switch c := names[w]; {
		case c == unnamed:
		case first == unnamed:
			first = c
		case c != first && second == unnamed:
			second = c
		}
	}
	return first, second
}

// wordsOf takes the words and the percent signs out of fields, in small letters.
func wordsOf(fields []string) []string {
	text := strings.ReplaceAll(strings.ToLower(strings.Join(fields, " ")), "%", " % ")
	return strings.FieldsFunc(text, func(r rune) bool { return r != '%' && !unicode.IsLetter(r) })
}

// otherUnit says which unit a heading gives that figures are not read in.
func otherUnit(fields []string) string {
	words := wordsOf(fields)
	for _, unit := range otherUnits {
		if slices.Contains(words, strings.ToLower(unit)) {
			return fmt.Sprintf("the heading gives the unit %q: settings in %%, forces in newtons", unit)
		}
	}
	return ""
}

// Falling tells whether the settings fall from line to line, all the way: a
// curve that was written down from its end.
func (t Table) Falling() bool {
	for i := 1; i < len(t.Points); i++ {
		if !(t.Points[i].Setting < t.Points[i-1].Setting) {
			return false
		}
	}
	return len(t.Points) > 1
}
