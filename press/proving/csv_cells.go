package proving

import "strings"

// A cell of a line, without its quotes.
type cell struct {
	text   string
	quoted bool
}

const (
	openQuote   = "a quote is opened and not closed on this line"
	behindQuote = "text stands behind a closed quote; the separator or the end of the line is needed there"
)

// split takes a line apart at the separator, 0 for none. Cells may be quoted as in
// RFC 4180, but end with the line; around others blanks do not count. wrong says what is
// wrong with a cell, and which one it is, from 0.
func split(line string, separator byte, into []cell) (cells []cell, at int, wrong string) {
	cells = into[:0]
	for {
		c, rest, why := oneCell(line, separator)
		if why != "" {
			return cells, len(cells), why
		}
		cells = append(cells, c)
		if rest == "" {
			return cells, 0, ""
		}
		line = rest[1:]
	}
}

// oneCell reads the first cell of a line; rest begins with the separator, or is empty.
func oneCell(line string, separator byte) (c cell, rest, wrong string) {
	start := 0
	for start < len(line) && isBlank(line[start], separator) {
		start++
	}
	if start == len(line) || line[start] != '"' {
		end := len(line)
		if separator != 0 {
			if i := strings.IndexByte(line[start:], separator); i >= 0 {
				end = start + i
			}
		}
		return cell{text: trim(line[start:end])}, line[end:], ""
	}
	var text strings.Builder
	for line = line[start+1:]; ; {
		i := strings.IndexByte(line, '"')
		if i < 0 {
			return cell{}, "", openQuote
		}
		text.WriteString(line[:i])
		if line = line[i+1:]; line == "" || line[0] != '"' {
			break
		}
		text.WriteByte('"')
		line = line[1:]
	}
	end := 0
	for end < len(line) && isBlank(line[end], separator) {
		end++
	}
	if end < len(line) && (separator == 0 || line[end] != separator) {
		return cell{}, "", behindQuote
	}
	return cell{text.String(), true}, line[end:], ""
}

func isBlank(c, separator byte) bool { return c != separator && (c == ' ' || c == '\t') }

func trim(s string) string { return strings.Trim(s, " \t\u00a0") }

// separatorOf is the first of tab, semicolon and comma that stands in a head outside quotes;
// 0 where none does.
func separatorOf(head string) byte {
	var plain strings.Builder
	for i, part := range strings.Split(head, `"`) {
		if i%2 == 0 {
			plain.WriteString(part)
		}
	}
	for _, c := range []byte("\t;,") {
		if strings.IndexByte(plain.String(), c) >= 0 {
			return c
		}
	}
	return 0
}

// cutLine takes the first line off a text; a line ends with LF, CRLF or CR.
func cutLine(text string) (line, rest string) {
	i := strings.IndexAny(text, "\r\n")
	if i < 0 {
		return text, ""
	}
	if strings.HasPrefix(text[i:], "\r\n") {
		return text[:i], text[i+2:]
	}
	return text[:i], text[i+1:]
}
