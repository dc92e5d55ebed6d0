package strict

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"strconv"
	"strings"

	"github.com/go-json-experiment/json/jsontext"
)

// Limits of a document.
const (
	MaxBytes = 4 << 20 // of the text
	MaxDepth = 32      // of nesting, the document itself being depth 1
)

// Fatal tells whether the document is not what was asked for, so that checking
// its fields would only add noise.
func (ps Problems) Fatal() bool {
	for _, p := range ps {
		if p.Code == CodeFormat || p.Code == CodeNewer {
			return true
		}
	}
	return false
}

// Others are formats that are met where another one is asked for, and what is said of a
// document of each behind its name, such as "; open it in the bench".
type Others map[string]string

// Read reads JSON text into a tree and looks at its format. A nil tree means that the text
// could not be read to its end.
func Read(data []byte, format string, others Others) (*Node, Problems) {
	if len(data) > MaxBytes {
		return nil, Problems{{Code: CodeSize, Message: fmt.Sprintf("found %d bytes; at most %d (4 MiB) are read", len(data), MaxBytes)}}
	}
	data = bytes.TrimPrefix(data, []byte("\xef\xbb\xbf"))
	r := &reader{dec: jsontext.NewDecoder(bytes.NewReader(data), jsontext.AllowDuplicateNames(true)), data: data}
	doc := r.value()
	if r.fault == nil {
		if _, err := r.dec.ReadToken(); err == nil {
			r.stop(CodeSyntax, "found more text after the document; one JSON object is allowed")
		} else if !errors.Is(err, io.EOF) {
			r.syntax(err)
		}
	}
	if r.fault != nil {
		return nil, append(r.problems, *r.fault)
	}
	if doc.Shape != Object {
		return nil, Problems{{Code: CodeFormat, Message: "found " + doc.Found() + "; a JSON object with the format " + format + " is needed"}}
	}
	if p := formatFault(doc, format, others); p != nil {
		r.problems = append(r.problems, *p)
	}
	return doc, r.problems
}

// formatFault looks at the document's format entry.
func formatFault(doc *Node, want string, others Others) *Problem {
	got := doc.Get("format")
	switch {
	case got == nil:
		return &Problem{Path: "format", Code: CodeRequired, Message: "not given; " + strconv.Quote(want) + " is needed"}
	case got.Shape == Text && got.Text == want:
		return nil
	case got.Shape == Text && others[got.Text] != "":
		return &Problem{Path: "format", Code: CodeFormat, Message: "found " + got.Found() + others[got.Text]}
	case got.Shape == Text && newer(got.Text, want):
		return &Problem{Path: "format", Code: CodeNewer, Message: "found " + got.Found() + ", made by a newer version; this version reads " + want}
	}
	return &Problem{Path: "format", Code: CodeFormat, Message: "found " + got.Found() + "; " + strconv.Quote(want) + " is needed"}
}

// newer tells whether got names a later version of the format want.
func newer(got, want string) bool {
	name, ours, _ := strings.Cut(want, "/")
	other, theirs, _ := strings.Cut(got, "/")
	mine, err := strconv.ParseUint(ours, 10, 32)
	if err != nil {
		panic("strict: the format " + want + " has no number")
	}
	its, err := strconv.ParseUint(theirs, 10, 32)
	return other == name && err == nil && its > mine
}

// reader builds the tree and gathers the faults that do not stop it.
type reader struct {
	dec      *jsontext.Decoder
	data     []byte
	problems Problems
	fault    *Problem // what stopped the reading
	at       []Step   // where the value in hand stands
}

// path is where the value in hand stands. It is written when something is wrong there, and
// not for every value of a long document.
func (r *reader) path() string {
	path := ""
	for _, s := range r.at {
		if s.Index >= 0 {
			path += "[" + strconv.Itoa(s.Index) + "]"
		} else {
			path = Join(path, s.Name)
		}
	}
	return path
}

func (r *reader) stop(code, message string) {
	r.fault = &Problem{Code: code, Message: message}
}

// syntax reports an error of the text with its line and column.
func (r *reader) syntax(err error) {
	at := r.dec.InputOffset()
	var se *jsontext.SyntacticError
	why := err.Error()
	if errors.As(err, &se) {
		at = se.ByteOffset
		if se.Err != nil {
			why = se.Err.Error()
		}
	}
	at = min(at, int64(len(r.data)))
	before := r.data[:at]
	line := 1 + bytes.Count(before, []byte("\n"))
	column := 1 + len([]rune(string(before[bytes.LastIndexByte(before, '\n')+1:])))
	if errors.Is(err, io.ErrUnexpectedEOF) || errors.Is(err, io.EOF) {
		why = "the text ends too early"
	}
	r.stop(CodeSyntax, fmt.Sprintf("not JSON at line %d, column %d: %s", line, column, why))
}

// value reads one value. It returns nil after a fault that stops the reading.
func (r *reader) value() *Node {
	tok, err := r.dec.ReadToken()
	if err != nil {
		r.syntax(err)
		return nil
	}
	switch tok.Kind() {
	case '{', '[':
		if r.dec.StackDepth() > MaxDepth {
			r.stop(CodeDepth, fmt.Sprintf("nested deeper than %d at %s", MaxDepth, PathOr(r.path(), "the document")))
			return nil
		}
		if tok.Kind() == '{' {
			return r.object()
		}
		return r.array()
	case '"':
		return &Node{Shape: Text, Text: tok.String()}
	case '0':
		return NewNumber(tok.String())
	case 't', 'f':
		return &Node{Shape: Boolean, Flag: tok.Bool()}
	}
	return &Node{Shape: Null}
}

func (r *reader) object() *Node {
	n := &Node{Shape: Object}
	for r.dec.PeekKind() != '}' {
		tok, err := r.dec.ReadToken()
		if err != nil {
			r.syntax(err)
			return nil
		}
		key := tok.String()
		r.at = append(r.at, Step{Name: key, Index: -1})
		member := r.value()
		if r.fault != nil {
			return nil
		}
		if n.Get(key) != nil {
			r.problems = append(r.problems, Problem{Path: r.path(), Code: CodeDuplicate, Message: "given twice; only one is allowed"})
		} else {
			n.Set(key, member)
		}
		r.at = r.at[:len(r.at)-1]
	}
	return r.close(n)
}

func (r *reader) array() *Node {
	n := &Node{Shape: Array}
	for r.dec.PeekKind() != ']' {
		r.at = append(r.at, Step{Index: len(n.Items)})
		item := r.value()
		r.at = r.at[:len(r.at)-1]
		if r.fault != nil {
			return nil
		}
		n.Items = append(n.Items, item)
	}
	return r.close(n)
}

func (r *reader) close(n *Node) *Node {
	if _, err := r.dec.ReadToken(); err != nil {
		r.syntax(err)
		return nil
	}
	return n
}

// NewNumber makes a number node from JSON text.
func NewNumber(s string) *Node {
	v, _ := strconv.ParseFloat(s, 64) // out of range gives ±Inf, which no range allows
	if v == 0 {
		v = 0 // minus zero is zero
	}
	return &Node{Shape: Number, Text: s, Num: v}
}

// Join puts a key behind a path. Keys that are no plain word are quoted, so that
// a message never shows control characters or a misleading path.
func Join(path, key string) string {
	if !plainWord(key) {
		key = strconv.Quote(Clip(key, 40))
	}
	if path == "" {
		return key
	}
	return path + "." + key
}

func plainWord(s string) bool {
	for _, c := range s {
		if c != '_' && (c < '0' || c > '9') && (c < 'a' || c > 'z') && (c < 'A' || c > 'Z') {
			return false
		}
	}
	return s != "" && len(s) <= 60
}

func PathOr(path, other string) string {
	if path == "" {
		return other
	}
	return path
}
