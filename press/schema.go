package press

import (
	"fmt"
	"reflect"
	"slices"
	"strconv"
	"strings"

	"ramplan/press/strict"
)

// A schema is one place of the document: an object, a list of rows, a fixed
// list such as [low, high], or the entry of one field. It is made from the
// field table and from the Go types that hold a plan, once, at start.
type schema struct {
	name   string
	field  *Field         // of a leaf, and of rows
	names  map[string]int // of an object: where in kids
	kids   []*schema      // of an object, or of a fixed list
	row    *schema        // of rows
	index  []int          // where the value stands in the struct that holds the object
	format bool           // the document's own format entry
	kinds  []string       // kinds of joint, or of step, that have it; nil: all
}

// root is the schema of a plan.
var root = newSchema()

func newSchema() *schema {
	r := &schema{names: map[string]int{}}
	r.add(&schema{name: "format", format: true})
	for i := range Fields {
		f := &Fields[i]
		if f.Kind == Text && f.MaxRunes == 0 {
			f.MaxRunes = 200
		}
		r.insert(f)
	}
	r.bind(reflect.TypeFor[Plan]())
	return r
}

func (s *schema) add(kid *schema) *schema {
	s.names[kid.name] = len(s.kids)
	s.kids = append(s.kids, kid)
	return kid
}

// insert puts a field of the table where its path says.
func (s *schema) insert(f *Field) {
	for _, token := range tokens(f.Path) {
		switch {
		case token == "[]":
			if s.row == nil {
				s.row = &schema{}
			}
			s = s.row
		case token[0] == '[':
			member := &schema{name: token}
			s.kids = append(s.kids, member)
			s = member
		default:
			if s.names == nil {
				s.names = map[string]int{}
			}
			if i, known := s.names[token]; known {
				s = s.kids[i]
			} else {
				s = s.add(&schema{name: token, kinds: f.kinds()})
			}
		}
	}
	s.field, s.kinds = f, f.kinds()
}

// tokens takes a path of the table apart: ram.curve.points[][0] is ram, curve,
// points, [] and [0].
func tokens(path string) []string {
	return strings.FieldsFunc(strings.ReplaceAll(path, "[", ".["), func(r rune) bool { return r == '.' })
}

// kinds are the kinds of what the field belongs to, a joint or a step, that have it.
func (f *Field) kinds() []string {
	if f.Steps != nil {
		return f.Steps
	}
	return f.For
}

// bind finds, by JSON name, the struct field of every entry. A section behind a pointer
// may be absent as a whole.
func (s *schema) bind(t reflect.Type) {
	if t.Kind() == reflect.Pointer {
		t = t.Elem()
	}
	switch {
	case s.row != nil:
		s.row.bind(t.Elem())
	case s.isObject():
		for _, kid := range s.kids {
			if kid.format {
				continue
			}
			f, ok := byTag(t, kid.name)
			if !ok {
				panic(fmt.Sprintf("press: the field table has %q, %v has not", kid.name, t))
			}
			kid.index = f.Index
			kid.bind(f.Type)
		}
	}
}

func byTag(t reflect.Type, name string) (reflect.StructField, bool) {
	for _, f := range reflect.VisibleFields(t) {
		if f.Tag.Get("json") == name {
			return f, true
		}
	}
	return reflect.StructField{}, false
}

// What a schema is.
func (s *schema) isRows() bool   { return s.row != nil }
func (s *schema) isLeaf() bool   { return s.field != nil && s.row == nil }
func (s *schema) isTuple() bool  { return s.field == nil && s.names == nil && len(s.kids) > 0 }
func (s *schema) isObject() bool { return s.names != nil && s.field == nil }

// stepped tells whether the entry belongs to some kinds of step.
func (s *schema) stepped() bool {
	if s.isTuple() {
		return s.kids[0].stepped()
	}
	return s.field != nil && s.field.Steps != nil
}

// step goes one step down, or returns nil where there is no such place.
func (s *schema) step(st strict.Step) *schema {
	switch {
	case s.isRows():
		if st.Index >= 0 && st.Index < 2*s.field.MaxRows {
			return s.row
		}
	case s.isTuple():
		if st.Index >= 0 && st.Index < len(s.kids) {
			return s.kids[st.Index]
		}
	case s.isObject() && st.Index < 0:
		if i, ok := s.names[st.Name]; ok && !s.kids[i].format {
			return s.kids[i]
		}
	}
	return nil
}

// empty makes a container with nothing in it, or the placeholder of an entry
// that was not given.
func (s *schema) empty() *strict.Node {
	switch {
	case s.isObject():
		return &strict.Node{Shape: strict.Object}
	case s.isLeaf():
		return &strict.Node{Shape: strict.Absent}
	}
	return &strict.Node{Shape: strict.Array}
}

// blank tells whether this typed text means that nothing was given.
func (s *schema) blank(typed string) bool {
	return !(s.isLeaf() && s.field.Kind == Text) && strings.TrimSpace(typed) == ""
}

// typed makes a node of typed Text: of the field's own kind where the text can
// be read as such, else a text, which the check refuses in its own words.
func (s *schema) typed(typed string) *strict.Node {
	typed = valid(typed)
	trimmed := strings.TrimSpace(typed)
	if !s.isLeaf() {
		if e := s.empty(); (trimmed == "{}" && e.Shape == strict.Object) || (trimmed == "[]" && e.Shape == strict.Array) {
			return e
		}
		return &strict.Node{Shape: strict.Text, Text: typed}
	}
	switch s.field.Kind {
	case Number:
		if digits, ok := typedNumber(s.field.Bare(typed)); ok {
			return strict.NewNumber(digits)
		}
	case Flag:
		if trimmed == "true" || trimmed == "false" {
			return &strict.Node{Shape: strict.Boolean, Flag: trimmed == "true"}
		}
	case Choice:
		return &strict.Node{Shape: strict.Text, Text: trimmed}
	case Text:
		if s.field.Path == "joint.fit" {
			return &strict.Node{Shape: strict.Text, Text: joined(typed)}
		}
	}
	return &strict.Node{Shape: strict.Text, Text: typed}
}

// own is the kind of what an object describes, a joint or a step, where its entries go by
// one: empty where it is not known.
func (s *schema) own(n *strict.Node) (kind string, has bool) {
	i, has := s.names["kind"]
	if !has {
		return "", false
	}
	if k := n.Get("kind"); k != nil && k.Shape == strict.Text && slices.Contains(s.kids[i].field.Choices, k.Text) {
		kind = k.Text
	}
	return kind, true
}

// applies tells whether this kind of joint or step has the entry. An unknown kind has
// all.
func (s *schema) applies(kind string) bool {
	return s.kinds == nil || kind == "" || slices.Contains(s.kinds, kind)
}

// FieldAt returns the field of the table that a path of a document belongs to:
// parts[3].plus is parts[].plus.
func FieldAt(path string) (*Field, bool) {
	s := schemaAt(path)
	if s == nil {
		return nil, false
	}
	return s.field, s.field != nil
}

// RowPath puts a row's number into a path of the table: parts[].plus and 3 give
// parts[3].plus.
func RowPath(path string, row int) string {
	return strings.Replace(path, "[]", "["+strconv.Itoa(row)+"]", 1)
}
