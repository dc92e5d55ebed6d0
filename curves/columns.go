package curves

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"
)

// Limits of what [ReadColumns] takes.
const (
	MaxPoints     = 500  // points in one text
	MaxLines      = 5000 // lines in one text, comments and blanks included
	MaxLineLength = 1000 // bytes in one line
)

// LineError is one line of a text that could not be read.
type LineError struct {
	Line    int    // counted from 1
	Text    string // the line as found, shortened when long
	Message string // what is wrong with it
}

// Error gives the number of the line and what is wrong with it.
func (e LineError) Error() string {
	return fmt.Sprintf("curves: line %d: %s", e.Line, e.Message)
}

// ReadColumns reads points from two columns of text, setting in % and force
// in N, as pasted from a spreadsheet or a test report.
//
// The columns are separated by a tab, a semicolon, blanks or a comma. Where
// the separator is not a comma, a comma is a decimal comma: "10,5;200" and
// "10,5 200" are 10.5 % and 200 N, "10,5" alone is 10 % and 5 N. There are no
// thousands separators. A % behind the setting and an N behind the force are
// understood, other units are not. What follows a # is a comment; blank lines are left
// out.
//
// Lines before the first point with no field that begins like a number are
// headings. Where one names both columns, by unit (%, N) or by word (setting,
// current, force), the columns are read in its order; the last such line counts.
// Without one the setting stands first.
//
// Every bad line gives one LineError; the good lines are still returned. More
// than [MaxPoints] points, more than [MaxLines] lines or a line longer than
// [MaxLineLength] bytes is such an error, and beyond the first two nothing is
// read. Whether the points make a curve is for [New] to say.
func ReadColumns(text string) (Table, []LineError) {
	var table Table
	var faults []LineError
	text = strings.TrimPrefix(text, "\uFEFF")
	for n := 1; text != ""; n++ {
		line := cutLine(&text)
		fail := func(message string) {
			faults = append(faults, LineError{Line: n, Text: shorten(line), Message: message})
		}
		if n > MaxLines {
			fail(fmt.Sprintf("more than %d lines, the rest is not read", MaxLines))
			break
		}
		if len(line) > MaxLineLength {
			fail(fmt.Sprintf("the line is longer than %d bytes", MaxLineLength))
			continue
		}
		data, _, _ := strings.Cut(line, "#")
		fields, comma := split(glue(data))
		if len(fields) == 0 {
			continue
		}
		if len(table.Points) == 0 && heading(fields) {
			table.named(data, fields)
			if message := otherUnit(fields); message != "" {
				fail(message)
			}
			continue
		}
		p, message := parse(fields, comma, table.ForceFirst)
		if message != "" {
			fail(message)
			continue
		}
		if len(table.Points) == MaxPoints {
			fail(fmt.Sprintf("more than %d points, the rest is not read", MaxPoints))
			break
		}
		table.Points = append(table.Points, p)
	}
	return table, faults
}

// cutLine takes the first line off the text; CR LF, LF and CR end a line.
func cutLine(text *string) string {
	i := strings.IndexAny(*text, "\r\n")
	if i < 0 {
		line := *text
		*text = ""
		return line
	}
	line, rest := (*text)[:i], (*text)[i:]
	if !strings.HasPrefix(rest, "\r\n") {
		*text = rest[1:]
	} else {
		*text = rest[2:]
	}
	return line
}

// split cuts a line at its separator and trims the fields. comma says that
// the separator is a comma. Empty fields at the end are dropped.
func split(line string) (fields []string, comma bool) {
	switch blanks := strings.Fields(line); {
	case len(blanks) == 0:
		return nil, false
	case strings.ContainsRune(strings.TrimSpace(line), '\t'):
		fields = strings.Split(strings.TrimSpace(line), "\t")
	case strings.ContainsRune(line, ';'):
		fields = strings.Split(line, ";")
	case !strings.ContainsRune(line, ','), len(blanks) == 2 && !touches(blanks):
		return blanks, false
	default:
		comma = true
		fields = strings.Split(line, ",")
	}
	for i := range fields {
		fields[i] = strings.TrimSpace(fields[i])
	}
	for len(fields) > 0 && fields[len(fields)-1] == "" {
		fields = fields[:len(fields)-1]
	}
	return fields, comma
}

// touches says whether a comma stands at the gap between two fields.
func touches(pair []string) bool {
	return strings.HasSuffix(pair[0], ",") || strings.HasPrefix(pair[1], ",")
}

// parse reads the two fields of a line, or says what is wrong.
func parse(fields []string, comma, forceFirst bool) (Point, string) {
	if len(fields) != 2 {
		hint, columns := "", "columns"
		switch {
		case len(fields) == 1:
			columns = "column"
		case slices.ContainsFunc(fields, isUnit):
			hint = "; leave out the units"
		case comma && len(fields) > 2:
			hint = "; with decimal commas separate them by a semicolon or a tab"
		}
		return Point{}, fmt.Sprintf("%d %s, want 2: %s%s", len(fields), columns, order(forceFirst), hint)
	}
	if forceFirst {
		fields = []string{fields[1], fields[0]}
	}
	setting, message := quantity(fields[0], "%", !comma)
	if message != "" {
		return Point{}, "setting " + message
	}
	force, message := quantity(fields[1], "N", !comma)
	if message != "" {
		return Point{}, "force " + message
	}
	return Point{Setting: setting, Force: force}, ""
}

// order names the two columns as they stand.
func order(forceFirst bool) string {
	if forceFirst {
		return "force and setting"
	}
	return "setting and force"
}

// number reads one decimal number, with a point or, where allowed, a comma.
func number(field string, decimalComma bool) (float64, string) {
	plain := field
	if decimalComma {
		if strings.Contains(field, ",") && strings.Contains(field, ".") {
			return 0, fmt.Sprintf("%q has a point and a comma; write it without a thousands separator", shorten(field))
		}
		plain = strings.ReplaceAll(field, ",", ".")
	}
	if strings.Trim(plain, "0123456789+-.eE") != "" {
		return 0, fmt.Sprintf("%q is not a number", shorten(field))
	}
	v, err := strconv.ParseFloat(plain, 64)
	if math.IsInf(v, 0) {
		return 0, fmt.Sprintf("%q is too large", shorten(field))
	}
	if err != nil {
		return 0, fmt.Sprintf("%q is not a number", shorten(field))
	}
	return v, ""
}

// shorten keeps the first 80 characters of a line for display, in valid UTF-8.
func shorten(line string) string {
	const most = 80
	line = strings.ToValidUTF8(line, "\uFFFD")
	if utf8.RuneCountInString(line) <= most {
		return line
	}
	return string([]rune(line)[:most]) + "…"
}
