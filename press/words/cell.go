package words

import (
	"strconv"
	"strings"
)

// Cell writes a text as a cell of a table of comma-separated values so that no
// spreadsheet takes it for a formula: what begins as one gets an apostrophe in
// front. Numbers below zero stay numbers; what only begins as one does not.
func Cell(text string) string {
	if text == "" || !strings.ContainsRune("=+-@\t\r", rune(text[0])) {
		return text
	}
	if _, err := strconv.ParseFloat(text, 64); err == nil && text[0] == '-' {
		return text
	}
	return "'" + text
}
