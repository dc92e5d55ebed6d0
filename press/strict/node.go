package strict

import (
	"strconv"
	"strings"
)

// Shape is the JSON kind of a node.
type Shape int

// The shapes of a node.
const (
	Object Shape = iota
	Array
	Number
	Text
	Boolean
	Null
	Absent // the placeholder of an entry that was not given
)

// A Node is one value of a document as it was given, key order kept.
type Node struct {
	Shape Shape
	Text  string  // a text, or a number as it was written
	Num   float64 // a number; ±Inf when it is too large for one
	Flag  bool    // a boolean
	Keys  []string
	Items []*Node        // of an array, or beside keys
	where map[string]int // of the keys, once there are many
}

// manyKeys is from how many on a table finds keys faster than looking at each.
const manyKeys = 16

// Get returns the member of an object with this key, or nil.
func (n *Node) Get(key string) *Node {
	if n == nil || n.Shape != Object {
		return nil
	}
	if n.where != nil {
		if i, there := n.where[key]; there {
			return n.Items[i]
		}
		return nil
	}
	for i, k := range n.Keys {
		if k == key {
			return n.Items[i]
		}
	}
	return nil
}

// Set puts a member at the end of an object that has none of this key.
func (n *Node) Set(key string, member *Node) {
	switch {
	case n.where != nil:
		n.where[key] = len(n.Keys)
	case len(n.Keys) == manyKeys:
		n.where = make(map[string]int, 4*manyKeys)
		for i, k := range n.Keys {
			n.where[k] = i
		}
		n.where[key] = len(n.Keys)
	}
	n.Keys = append(n.Keys, key)
	n.Items = append(n.Items, member)
}

// At returns the node at a path such as parts[1].plus, or nil.
func (n *Node) At(path string) *Node {
	var t Trail
	for _, s := range t.Split(path) {
		switch {
		case n == nil:
			return nil
		case s.Index >= 0:
			if n.Shape != Array || s.Index >= len(n.Items) {
				return nil
			}
			n = n.Items[s.Index]
		default:
			n = n.Get(s.Name)
		}
	}
	return n
}

// Found describes a node for a message.
func (n *Node) Found() string {
	switch n.Shape {
	case Object:
		return "an object"
	case Array:
		return "a list"
	case Number:
		return Clip(n.Text, 40)
	case Boolean:
		return strconv.FormatBool(n.Flag)
	case Null:
		return "null"
	case Absent:
		return "nothing"
	}
	return strconv.Quote(Clip(n.Text, 40))
}

// Clip shortens a text to so many code points.
func Clip(s string, most int) string {
	for i := range s {
		if most == 0 {
			return s[:i] + "…"
		}
		most--
	}
	return s
}

// A Step is one part of a path: a name, or the number of a row.
type Step struct {
	Name  string
	Index int // -1 for a name
}

// A Trail has room for the steps of a path, so that taking one apart needs no memory of
// its own.
type Trail [6]Step

// Split takes a path apart. A malformed index gives a step whose name holds the
// bracket, which no field has.
func (t *Trail) Split(path string) []Step {
	steps := t[:0]
	for path != "" {
		if path[0] == '[' {
			digits, rest, ok := strings.Cut(path[1:], "]")
			i, err := strconv.Atoi(digits)
			if !ok || err != nil || i < 0 || digits[0] == '+' || (len(digits) > 1 && digits[0] == '0') {
				return append(steps, Step{Name: path, Index: -1})
			}
			steps = append(steps, Step{Index: i})
			path = strings.TrimPrefix(rest, ".")
			continue
		}
		end := strings.IndexAny(path, ".[")
		if end < 0 {
			return append(steps, Step{Name: path, Index: -1})
		}
		steps = append(steps, Step{Name: path[:end], Index: -1})
		path = strings.TrimPrefix(path[end:], ".")
	}
	return steps
}

// PlainNumber writes a number without loss, and without an exponent where that
// reads well.
func PlainNumber(v float64) string {
	if v != 0 && v < 1e-6 && v > -1e-6 {
		return strconv.FormatFloat(v, 'e', -1, 64)
	}
	return strconv.FormatFloat(v, 'f', -1, 64)
}
