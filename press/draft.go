package press

import (
	"fmt"
	"strconv"
	"strings"
	"unicode/utf8"

	"ramplan/press/strict"
)

// DraftFormat is the name of the draft format.
const DraftFormat = "ramplan.draft/1"

// MaxEntries is the most entries that a draft may hold: 200 parts of ten
// fields, 500 curve points and the rest fit well inside.
const MaxEntries = 10000

// An Entry is the typed text of one field. The path of an empty container, such
// as window, has the text {} or [].
type Entry struct{ Path, Text string }

// A Draft is what the bench edits: the typed text of each field by its path, in
// order, right or wrong. An empty draft is a new plan. A number may be followed
// by the field's own unit, and a fit code may have blanks around its slash.
//
// An entry without text counts as not given, save for a text field, where it is
// an empty text that was given: so a plan keeps what it held.
type Draft struct{ Entries []Entry }

// Get returns the text at a path, and whether there is such an entry.
func (d *Draft) Get(path string) (string, bool) {
	for _, e := range d.Entries {
		if e.Path == path {
			return e.Text, true
		}
	}
	return "", false
}

// Set puts a text at a path, in place where the path has an entry.
func (d *Draft) Set(path, text string) {
	for i := range d.Entries {
		if d.Entries[i].Path == path {
			d.Entries[i].Text = text
			return
		}
	}
	d.Entries = append(d.Entries, Entry{path, text})
}

// Draft gives the plan as typed text. [Draft.Check] makes the same plan of it,
// digest for digest.
func (p *Plan) Draft() *Draft { return p.Document().Draft() }

func (d *Draft) add(path string, n *strict.Node) {
	switch n.Shape {
	case strict.Object:
		if len(n.Items) == 0 {
			d.Entries = append(d.Entries, Entry{path, "{}"})
		}
		for i, item := range n.Items {
			if path == "" && n.Keys[i] == "format" {
				continue
			}
			d.add(strict.Join(path, n.Keys[i]), item)
		}
	case strict.Array:
		if len(n.Items) == 0 {
			d.Entries = append(d.Entries, Entry{path, "[]"})
		}
		for i, item := range n.Items {
			d.add(path+"["+strconv.Itoa(i)+"]", item)
		}
	case strict.Boolean:
		d.Entries = append(d.Entries, Entry{path, strconv.FormatBool(n.Flag)})
	case strict.Number:
		d.Entries = append(d.Entries, Entry{path, strict.PlainNumber(n.Num)})
	default:
		d.Entries = append(d.Entries, Entry{path, n.Text})
	}
}

// Check makes a plan of the draft, or tells every fault.
func (d *Draft) Check() (*Plan, Problems) {
	doc := &strict.Node{Shape: strict.Object}
	doc.Set("format", &strict.Node{Shape: strict.Text, Text: Format})
	ps := d.build(doc)
	plan, more := check(doc)
	if ps = append(ps, more...); len(ps) > 0 {
		return nil, ps
	}
	return plan, nil
}

// build puts every entry into the tree.
func (d *Draft) build(doc *strict.Node) Problems {
	var ps Problems
	seen := make(map[string]bool, len(d.Entries))
	for _, e := range d.Entries {
		if seen[e.Path] {
			ps = append(ps, Problem{Path: e.Path, Code: CodeDuplicate, Message: "given twice; only one is allowed"})
			continue
		}
		seen[e.Path] = true
		if p := put(doc, e); p != nil {
			ps = append(ps, *p)
		}
	}
	return ps
}

// put places one entry, making the containers on the way as the schema has them.
func put(n *strict.Node, e Entry) *Problem {
	unknown := func() *Problem {
		return &Problem{Path: strict.Clip(e.Path, 80), Code: CodeUnknown, Message: "no such field"}
	}
	s := root
	var t strict.Trail
	steps := t.Split(e.Path)
	if len(steps) == 0 {
		return unknown()
	}
	for i, st := range steps {
		next := s.step(st)
		if next == nil {
			return unknown()
		}
		last := i == len(steps)-1
		if last && next.blank(e.Text) {
			return nil
		}
		inner, fits := child(n, st)
		if !fits {
			return unknown()
		}
		if inner == nil {
			inner = next.empty()
			if last {
				inner = next.typed(e.Text)
			}
			attach(n, st, inner, s)
		}
		n, s = inner, next
	}
	return nil
}

// child returns what stands at a step already; fits is false where the node is
// no container for such a step.
func child(n *strict.Node, st strict.Step) (child *strict.Node, fits bool) {
	if st.Index < 0 {
		return n.Get(st.Name), n.Shape == strict.Object
	}
	if n.Shape != strict.Array {
		return nil, false
	}
	if st.Index < len(n.Items) {
		return n.Items[st.Index], true
	}
	return nil, true
}

// attach puts a new child at a step. Rows that were jumped over become empty.
func attach(n *strict.Node, st strict.Step, child *strict.Node, s *schema) {
	if st.Index < 0 {
		n.Set(st.Name, child)
		return
	}
	for len(n.Items) < st.Index {
		n.Items = append(n.Items, s.step(strict.Step{Index: len(n.Items)}).empty())
	}
	n.Items = append(n.Items, child)
}

// TypedNumber reads a number that was typed outside a plan, such as a reading, in
// the same way as an entry of a draft.
func TypedNumber(s string) (float64, bool) {
	text, ok := typedNumber(s)
	if !ok {
		return 0, false
	}
	v, err := strconv.ParseFloat(text, 64)
	return v, err == nil && v >= -Largest && v <= Largest
}

// typedNumber reads a number as people type it: blanks around it, a decimal
// comma and a true minus sign are understood.
func typedNumber(s string) (string, bool) {
	s = strings.TrimSpace(s)
	s = strings.ReplaceAll(s, "−", "-")
	if !strings.Contains(s, ".") {
		s = strings.Replace(s, ",", ".", 1)
	}
	digits := false
	for _, c := range s {
		switch {
		case c >= '0' && c <= '9':
			digits = true
		case !strings.ContainsRune("+-.eE", c):
			return "", false
		}
	}
	if !digits {
		return "", false
	}
	v, err := strconv.ParseFloat(s, 64)
	if err != nil && v == 0 {
		return "", false
	}
	if v > Largest || v < -Largest {
		return s, true // kept as typed: the range check names it
	}
	return strict.PlainNumber(v), true
}

// DecodeDraft reads a draft file. It checks only that it is one; what is typed
// in it may be anything.
func DecodeDraft(data []byte) (*Draft, Problems) {
	doc, ps := readDocument(data, DraftFormat)
	if len(ps) > 0 {
		return nil, ps.Listed()
	}
	for i, key := range doc.Keys {
		if key != "format" && key != "fields" {
			ps = append(ps, Problem{Path: strict.Join("", key), Code: CodeUnknown, Message: "no such entry; a draft has format and fields"})
		} else if key == "fields" && doc.Items[i].Shape != strict.Array {
			ps = append(ps, Problem{Path: key, Code: CodeType, Message: "found " + doc.Items[i].Found() + "; a list of [path, text] is needed"})
		}
	}
	fields := doc.Get("fields")
	if fields == nil {
		ps = append(ps, Problem{Path: "fields", Code: CodeRequired, Message: "not given; a list of [path, text] is needed"})
	}
	if len(ps) > 0 {
		return nil, ps.Listed()
	}
	if len(fields.Items) > MaxEntries {
		return nil, Problems{{Path: "fields", Code: CodeRows, Message: fmt.Sprintf("found %d entries; at most %d are allowed", len(fields.Items), MaxEntries)}}
	}
	d := &Draft{Entries: make([]Entry, 0, len(fields.Items))}
	for i, f := range fields.Items {
		if f.Shape != strict.Array || len(f.Items) != 2 || f.Items[0].Shape != strict.Text || f.Items[1].Shape != strict.Text {
			ps = append(ps, Problem{Path: fmt.Sprintf("fields[%d]", i), Code: CodeType, Message: "found " + f.Found() + "; [path, text] is needed, both texts"})
			continue
		}
		d.Entries = append(d.Entries, Entry{f.Items[0].Text, f.Items[1].Text})
	}
	if len(ps) > 0 {
		return nil, ps.Listed()
	}
	return d, nil
}

// Encode writes the draft as a file.
func (d *Draft) Encode() []byte {
	fields := &strict.Node{Shape: strict.Array}
	for _, e := range d.Entries {
		pair := &strict.Node{Shape: strict.Array}
		pair.Items = []*strict.Node{{Shape: strict.Text, Text: valid(e.Path)}, {Shape: strict.Text, Text: valid(e.Text)}}
		fields.Items = append(fields.Items, pair)
	}
	doc := &strict.Node{Shape: strict.Object}
	doc.Set("format", &strict.Node{Shape: strict.Text, Text: DraftFormat})
	doc.Set("fields", fields)
	return doc.JSON()
}

// valid replaces bytes that are no UTF-8, which a browser may send.
func valid(s string) string {
	if utf8.ValidString(s) {
		return s
	}
	return strings.ToValidUTF8(s, "\uFFFD")
}
