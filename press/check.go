package press

import (
	"fmt"
	"reflect"
	"slices"
	"strings"
	"unicode/utf8"
)

// check reads a document tree into a plan and tells every fault. The plan is
// nil where there is one.
func check(doc *node) (*Plan, Problems) {
	c := &checker{plan: &Plan{doc: doc}}
	if k := doc.at("joint.kind"); k != nil && k.shape == text && (k.text == Touch || k.text == Measured || k.text == Interference) {
		c.kind = k.text
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
func (c *checker) value(s *schema, n *node, v reflect.Value, path string) {
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

func (c *checker) object(s *schema, n *node, v reflect.Value, path string) {
	if n.shape != object {
		c.add(path, CodeType, "found %s; an object is needed", n.found())
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
	for _, key := range n.keys {
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
		if member := n.get(kid.name); member != nil && member.shape != absent && kid.applies(c.kind) {
			c.value(kid, member, v.FieldByIndex(kid.index), at)
		} else {
			c.missing(kid, v.FieldByIndex(kid.index), at)
		}
	}
}

// key refuses a key that the object does not have.
func (c *checker) key(s *schema, key, path string) {
	at := join(path, key)
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

func (c *checker) rows(s *schema, n *node, v reflect.Value, path string) {
	if n.shape != array {
		c.add(path, CodeType, "found %s; a list is needed", n.found())
		return
	}
	f := s.field
	if len(n.items) < f.MinRows || len(n.items) > f.MaxRows {
		c.add(path, CodeRows, "found %s; %s", count(len(n.items), "row"), f.rowsAllowed())
		if len(n.items) > f.MaxRows {
			return
		}
	}
	v.Set(reflect.MakeSlice(v.Type(), len(n.items), len(n.items)))
	for i, item := range n.items {
		c.value(s.row, item, v.Index(i), fmt.Sprintf("%s[%d]", path, i))
	}
}

func (c *checker) tuple(s *schema, n *node, v reflect.Value, path string) {
	if n.shape != array {
		c.add(path, CodeType, "found %s; a list of %d numbers is needed", n.found(), len(s.kids))
		return
	}
	if v.Kind() == reflect.Pointer {
		v.Set(reflect.New(v.Type().Elem()))
		v = v.Elem()
	}
	if len(n.items) > len(s.kids) {
		c.add(path, CodeRows, "found %s; a list of %d numbers is needed", count(len(n.items), "entry"), len(s.kids))
	}
	for i, kid := range s.kids {
		at := path + kid.name
		if i >= len(n.items) || n.items[i].shape == absent {
			c.add(at, CodeRequired, "not given; %s", kid.field.Allowed())
			continue
		}
		c.value(kid, n.items[i], v.Index(i), at)
	}
}

func (c *checker) leaf(f *Field, n *node, v reflect.Value, path string) {
	wrong := func() { c.add(path, CodeType, "found %s; %s", n.found(), f.Allowed()) }
	switch f.Kind {
	case Number:
		if n.shape != number {
			wrong()
		} else if !(n.num >= -Largest && n.num <= Largest) {
			c.add(path, CodeRange, "found %s; no number may be larger than 1e9 in size", n.found())
		} else if !f.within(n.num) {
			c.add(path, CodeRange, "found %s; %s", n.found(), f.Allowed())
		} else {
			setFloat(v, n.num)
		}
	case Flag:
		if n.shape != boolean {
			wrong()
			return
		}
		v.SetBool(n.flag)
	case Choice:
		if n.shape != text {
			wrong()
		} else if !slices.Contains(f.Choices, n.text) {
			c.add(path, CodeChoice, "found %s; %s", n.found(), f.Allowed())
		} else {
			v.SetString(n.text)
		}
	case Text:
		switch runes := utf8.RuneCountInString(n.text); {
		case n.shape != text:
			wrong()
		case runes > f.MaxRunes:
			c.add(path, CodeLength, "found %d characters; %s", runes, f.Allowed())
		case f.Required && strings.TrimSpace(n.text) == "":
			c.add(path, CodeRequired, "empty; %s", f.Allowed())
		default:
			v.SetString(n.text)
		}
	}
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
