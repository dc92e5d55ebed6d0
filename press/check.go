package press

import (
	"fmt"
	"reflect"
	"slices"
	"strings"
	"unicode/utf8"

	"ramplan/press/strict"
)

// check reads a document tree into a plan and tells every fault. The plan is
// nil where there is one.
func check(doc *strict.Node) (*Plan, Problems) {
	c := &checker{plan: &Plan{doc: doc}}
	if k := doc.At("joint.kind"); k != nil && k.Shape == strict.Text && (k.Text == Touch || k.Text == Measured || k.Text == Interference) {
		c.kind = k.Text
	}
	c.object(root, doc, reflect.ValueOf(c.plan).Elem(), "")
	c.relations()
	if len(c.problems) > 0 {
		return nil, c.problems
	}
	return c.plan, nil
}

// checker walks the document along the schema.
type checker struct {
	plan     *Plan
	kind     string // of the joint, or of the step in hand; empty while it is not known
	problems Problems
}

func (c *checker) add(path, code, format string, args ...any) {
	c.problems = append(c.problems, Problem{Path: path, Code: code, Message: fmt.Sprintf(format, args...)})
}

// value reads one given node into v.
func (c *checker) value(s *schema, n *strict.Node, v reflect.Value, path string) {
	switch {
	case s.isRows():
		c.rows(s, n, v, path)
	case s.isTuple():
		c.tuple(s, n, v, path)
	case s.isObject():
		c.object(s, n, v, path)
	default:
		c.leaf(s.field, n, v, path)
	}
}

func (c *checker) object(s *schema, n *strict.Node, v reflect.Value, path string) {
	if n.Shape != strict.Object {
		c.add(path, CodeType, "found %s; an object is needed", n.Found())
		return
	}
	if v.Kind() == reflect.Pointer {
		v.Set(reflect.New(v.Type().Elem()))
		v = v.Elem()
	}
	if kind, has := s.own(n); has {
		outer := c.kind
		defer func() { c.kind = outer }()
		c.kind = kind
	}
	for _, key := range n.Keys {
		c.key(s, key, path)
	}
	for _, kid := range s.kids {
		if kid.format {
			continue
		}
		at := kid.name
		if path != "" {
			at = path + "." + kid.name
		}
		if member := n.Get(kid.name); member != nil && member.Shape != strict.Absent && kid.applies(c.kind) {
			c.value(kid, member, v.FieldByIndex(kid.index), at)
		} else {
			c.missing(kid, v.FieldByIndex(kid.index), at)
		}
	}
}

// key refuses a key that the object does not have.
func (c *checker) key(s *schema, key, path string) {
	at := strict.Join(path, key)
	i, known := s.names[key]
	switch {
	case known && s.kids[i].applies(c.kind):
	case known:
		noun := "joint"
		if s.kids[i].stepped() {
			noun = "step"
		}
		c.add(at, CodeUnknown, "no such field for a %s of kind %s", noun, c.kind)
	default:
		for _, kid := range s.kids {
			if strings.EqualFold(kid.name, key) {
				c.add(at, CodeCase, "no such field; it is written %s", kid.name)
				return
			}
		}
		c.add(at, CodeUnknown, "no such field")
	}
}

// missing fills in defaults for an entry that was not given, or says that it is
// needed. A container that was not given stands for its entries.
func (c *checker) missing(s *schema, v reflect.Value, path string) {
	switch {
	case s.kinds != nil && !(c.kind != "" && s.applies(c.kind)):
		// Whether the joint has this entry is not known, or it has not.
	case s.isRows():
		if s.field.Required {
			c.add(path, CodeRequired, "not given; %s", s.field.rowsAllowed())
		}
	case v.Kind() == reflect.Pointer && !s.isLeaf():
		// A section or a pair that may be absent as a whole.
	case s.isTuple():
		for i, kid := range s.kids {
			if d, ok := kid.field.Default.(float64); ok {
				v.Index(i).SetFloat(d)
			}
		}
	case s.isObject():
		for _, kid := range s.kids {
			c.missing(kid, v.FieldByIndex(kid.index), path+"."+kid.name)
		}
	case s.field.Required:
		c.add(path, CodeRequired, "not given; %s", s.field.Allowed())
	default:
		s.field.fill(v)
	}
}

func (c *checker) rows(s *schema, n *strict.Node, v reflect.Value, path string) {
	if n.Shape != strict.Array {
		c.add(path, CodeType, "found %s; a list is needed", n.Found())
		return
	}
	f := s.field
	if len(n.Items) < f.MinRows || len(n.Items) > f.MaxRows {
		c.add(path, CodeRows, "found %s; %s", strict.Count(len(n.Items), "row"), f.rowsAllowed())
		if len(n.Items) > f.MaxRows {
			return
		}
	}
	v.Set(reflect.MakeSlice(v.Type(), len(n.Items), len(n.Items)))
	for i, item := range n.Items {
		c.value(s.row, item, v.Index(i), fmt.Sprintf("%s[%d]", path, i))
	}
}

func (c *checker) tuple(s *schema, n *strict.Node, v reflect.Value, path string) {
	if n.Shape != strict.Array {
		c.add(path, CodeType, "found %s; a list of %d numbers is needed", n.Found(), len(s.kids))
		return
	}
	if v.Kind() == reflect.Pointer {
		v.Set(reflect.New(v.Type().Elem()))
		v = v.Elem()
	}
	if len(n.Items) > len(s.kids) {
		c.add(path, CodeRows, "found %s; a list of %d numbers is needed", strict.Count(len(n.Items), "entry"), len(s.kids))
	}
	for i, kid := range s.kids {
		at := path + kid.name
		if i >= len(n.Items) || n.Items[i].Shape == strict.Absent {
			c.add(at, CodeRequired, "not given; %s", kid.field.Allowed())
			continue
		}
		c.value(kid, n.Items[i], v.Index(i), at)
	}
}

func (c *checker) leaf(f *Field, n *strict.Node, v reflect.Value, path string) {
	if p := f.Fault(n, path); p != nil {
		c.problems = append(c.problems, *p)
		return
	}
	switch f.Kind {
	case Number:
		setFloat(v, n.Num)
	case Flag:
		v.SetBool(n.Flag)
	case Choice, Text:
		v.SetString(n.Text)
	}
}

// Fault tells what is wrong with a value that was given for the field, at this path of its
// document; nil where the field takes it.
func (f *Field) Fault(n *strict.Node, path string) *Problem {
	fault := func(code, found, allowed string) *Problem {
		return &Problem{Path: path, Code: code, Message: found + "; " + allowed}
	}
	found := func() string { return "found " + n.Found() }
	switch {
	case n.Shape != f.Kind.shape():
		return fault(CodeType, found(), f.Allowed())
	case f.Kind == Number && !(n.Num >= -Largest && n.Num <= Largest):
		return fault(CodeRange, found(), "no number may be larger than 1e9 in size")
	case f.Kind == Number && !f.within(n.Num):
		return fault(CodeRange, found(), f.Allowed())
	case f.Kind == Choice && !slices.Contains(f.Choices, n.Text):
		return fault(CodeChoice, found(), f.Allowed())
	case f.Kind != Text:
		return nil
	}
	switch runes := utf8.RuneCountInString(n.Text); {
	case runes > f.MaxRunes:
		return fault(CodeLength, fmt.Sprintf("found %d characters", runes), f.Allowed())
	case f.Required && strings.TrimSpace(n.Text) == "":
		return fault(CodeRequired, "empty", f.Allowed())
	}
	return nil
}

// shape is what a document holds where such an entry is.
func (k Kind) shape() strict.Shape {
	switch k {
	case Number:
		return strict.Number
	case Flag:
		return strict.Boolean
	case Rows:
		return strict.Array
	}
	return strict.Text
}

// fill puts the field's default into v.
func (f *Field) fill(v reflect.Value) {
	switch d := f.Default.(type) {
	case float64:
		setFloat(v, d)
	case string:
		v.SetString(d)
	case bool:
		v.SetBool(d)
	}
}

func setFloat(v reflect.Value, x float64) {
	if v.Kind() == reflect.Pointer {
		v.Set(reflect.ValueOf(&x))
		return
	}
	v.SetFloat(x)
}
