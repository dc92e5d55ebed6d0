package proving

import (
	"fmt"
	"strings"
)

// A TypedFault is what could not be read of a typed study.
type TypedFault struct {
	Row     int    // of the table as typed, from 1, blank ones counted; 0: a field of the head
	Field   string // name of the column or the head without its unit; empty: the row, or the study, as a whole
	Message string // what was found; what is allowed
}

func (f TypedFault) String() string {
	switch {
	case f.Row == 0 && f.Field == "":
		return f.Message
	case f.Row == 0:
		return f.Field + ": " + f.Message
	case f.Field == "":
		return fmt.Sprintf("row %d: %s", f.Row, f.Message)
	}
	return fmt.Sprintf("row %d, %s: %s", f.Row, f.Field, f.Message)
}

// TypedFaults is everything that could not be read, head first, then row by row.
type TypedFaults []TypedFault

func (fs TypedFaults) Error() string {
	lines := make([]string, len(fs))
	for i, f := range fs {
		lines[i] = f.String()
	}
	return strings.Join(lines, "\n")
}

// At gives the messages at a row, from 1, and a field; row 0 is the head.
func (fs TypedFaults) At(row int, field string) []string {
	var out []string
	for _, f := range fs {
		if f.Row == row && f.Field == field {
			out = append(out, f.Message)
		}
	}
	return out
}
