package strict

import (
	"strconv"
	"strings"
)

// A Problem is one fault of an entry: where it stands, what kind it is, what
// was found and what is allowed. A form shows it beside the field, the command
// line prints it on a line of its own; both show the same words.
type Problem struct {
	Path    string `json:"path"`    // such as parts[1].plus; empty for the document as a whole
	Code    string `json:"code"`    // one of the Code constants
	Message string `json:"message"` // what was found; what is allowed
}

// The kinds of fault.
const (
	CodeSyntax    = "syntax"        // the text cannot be read at all
	CodeSize      = "size"          // more than the allowed bytes
	CodeDepth     = "depth"         // nested too deeply
	CodeFormat    = "format"        // not the document that was asked for
	CodeNewer     = "newer"         // a document of a later format
	CodeUnknown   = "unknown-key"   // no such field
	CodeCase      = "key-case"      // right letters, wrong case
	CodeDuplicate = "duplicate-key" // given twice
	CodeType      = "wrong-type"    // a number where text belongs, and the like
	CodeRequired  = "required"      // not given
	CodeRange     = "out-of-range"  // outside the allowed range
	CodeLength    = "too-long"      // text longer than allowed
	CodeRows      = "row-count"     // too few or too many rows
	CodeChoice    = "not-a-choice"  // none of the listed words
	CodeOrder     = "wrong-order"   // two entries contradict each other in size
	CodeConflict  = "conflict"      // two entries exclude or require each other
	CodeClass     = "unknown-class" // a tolerance class that is not defined there
	CodeMore      = "more"          // how many faults are not listed
)

// MostListed is how many faults of a document are listed one by one.
const MostListed = 200

// String gives the fault on one line, path first.
func (p Problem) String() string {
	if p.Path == "" {
		return p.Message
	}
	return p.Path + ": " + p.Message
}

// Problems is every fault of one document, in the order of the document.
type Problems []Problem

// Listed are the faults as they are told of a document: no more than somebody could
// read, and the number of the others.
func (ps Problems) Listed() Problems {
	if more := len(ps) - MostListed; more > 0 {
		return append(ps[:MostListed:MostListed], Problem{Code: CodeMore, Message: "and " + Count(more, "more fault")})
	}
	return ps
}

// Error joins the faults, one a line.
func (ps Problems) Error() string {
	lines := make([]string, len(ps))
	for i, p := range ps {
		lines[i] = p.String()
	}
	return strings.Join(lines, "\n")
}

// At returns the messages of the faults at exactly this path.
func (ps Problems) At(path string) []string {
	var out []string
	for _, p := range ps {
		if p.Path == path {
			out = append(out, p.Message)
		}
	}
	return out
}

// Has tells whether some fault stands at this path or below it.
func (ps Problems) Has(path string) bool {
	for _, p := range ps {
		if Below(p.Path, path) {
			return true
		}
	}
	return false
}

// Below tells whether path is at, or inside, the container at root.
func Below(path, root string) bool {
	rest, ok := strings.CutPrefix(path, root)
	return ok && (rest == "" || rest[0] == '.' || rest[0] == '[')
}

// Count writes a number with its noun.
func Count(n int, noun string) string {
	switch {
	case n == 1:
		return "1 " + noun
	case strings.HasSuffix(noun, "y"):
		return strconv.Itoa(n) + " " + strings.TrimSuffix(noun, "y") + "ies"
	}
	return strconv.Itoa(n) + " " + noun + "s"
}
