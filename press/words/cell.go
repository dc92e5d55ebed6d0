package words

import (
	"strconv"
	"strings"
	"unicode/utf8"
)

// Cell writes a text as a cell of a table so that no spreadsheet takes it for a
// formula: what begins as one gets an apostrophe in front, also behind a mark at
// which some program ends a cell, whatever separates the cells here. Numbers below
// zero stay numbers; what only begins as one does not.
func Cell(text string) string {
	var b strings.Builder
	if text != "" && strings.ContainsAny(text[:1], "\t\r") {
		b.WriteByte('\'') // what some programs skip before they look for a formula
	}
	for text != "" {
		end := strings.IndexAny(text, separators)
		if end < 0 {
			end = len(text)
		}
		b.WriteString(harmless(text[:end]))
		if end < len(text) {
			b.WriteByte(text[end])
			end++
		}
		text = text[end:]
	}
	return b.String()
}

// separators end a cell in one program or another.
const separators = ",;|\t\r\n"

// harmless is a piece of a cell in which nothing begins a formula.
func harmless(piece string) string {
	start := len(piece) - len(strings.TrimLeft(piece, " \u00a0\u202f\"'"))
	rest := piece[start:]
	first, _ := utf8.DecodeRuneInString(rest)
	if rest == "" || !strings.ContainsRune("=+-@＝＋－＠", first) || strings.HasPrefix(piece, "'") {
		return piece
	}
	if _, err := strconv.ParseFloat(strings.TrimSpace(rest), 64); err == nil && rest[0] == '-' {
		return piece
	}
	return piece[:start] + "'" + rest
}
