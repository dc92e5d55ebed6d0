package proving

import (
	"fmt"
	"strconv"
	"strings"
)

// A Fault is one thing that is wrong with a line of a table.
type Fault struct {
	Line    int    // from 1
	Column  string // the entry or column; empty where none can be named
	Message string // what was found; what is allowed
}

// String gives the fault on one line: the line's number, the column, what was found.
func (f Fault) String() string {
	if f.Column == "" {
		return strconv.Itoa(f.Line) + ": " + f.Message
	}
	return fmt.Sprintf("%d: %s: %s", f.Line, f.Column, f.Message)
}

// A Refused line holds a push that cannot be taken as it stands.
type Refused struct {
	Line   int
	Text   string   // as it stands in the file
	Cells  []string // taken apart as the head asks, as far as that goes
	Faults []Fault
}

// A Column is one column of a table, as its head names it.
type Column struct {
	Head   string  // as it stands in the file
	Field  *Field  // nil where there is no such column
	Unit   string  // as it stands in the file; empty where it names none
	Factor float64 // by which its numbers are multiplied; 0 where the unit does not fit
}

// Lines tells what became of the lines of a table that was read: which held a push, which
// were refused, and every fault.
type Lines struct {
	Faults    []Fault // in the order of the lines
	Rows      []int   // the line of each row of the study
	Refused   []Refused
	Remarks   []int // lines behind the head that begin with #: they are skipped
	Columns   []Column
	Separator string // of the columns; empty where there is one column
	Comma     bool   // the decimal sign is a comma
}

// Sound tells whether nothing is wrong with any line.
func (l Lines) Sound() bool { return len(l.Faults) == 0 }

// Errors are the faults as FILE:LINE: column: what was found, one each; the file is named
// without its folders.
func (l Lines) Errors(file string) []string {
	if i := strings.LastIndexAny(file, `/\`); i >= 0 {
		file = file[i+1:]
	}
	out := make([]string, len(l.Faults))
	for i, f := range l.Faults {
		out[i] = file + ":" + f.String()
	}
	return out
}
