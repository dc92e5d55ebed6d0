package press

import (
	"strconv"
	"strings"
)

// shape is the JSON kind of a node.
type shape int

const (
	object shape = iota
	array
	number
	text
	boolean
	null
	absent // the placeholder of an entry that was not given
)

// A node is one value of a document as it was given, key order kept.
type node struct {
	shape shape
	text  string  // a text, or a number as it was written
	num   float64 // a number; ±Inf when it is too large for one
	flag  bool    // a boolean
	keys  []string
	items []*node        // of an array, or beside keys
	where map[string]int // of the keys, once there are many
}

// manyKeys is from how many on a table finds keys faster than looking at each.
const manyKeys = 16

// get returns the member of an object with this key, or nil.
func (n *node) get(key string) *node {
	if n == nil || n.shape != object {
		return nil
	}
	if n.where != nil {
		if i, there := n.where[key]; there {
			return n.items[i]
		}
		return nil
	}
	for i, k := range n.keys {
		if k == key {
			return n.items[i]
		}
	}
	return nil
}

// set puts a member at the end of an object that has none of this key.
func (n *node) set(key string, member *node) {
	switch {
	case n.where != nil:
		n.where[key] = len(n.keys)
	case len(n.keys) == manyKeys:
		n.where = make(map[string]int, 4*manyKeys)
		for i, k := range n.keys {
			n.where[k] = i
		}
		n.where[key] = len(n.keys)
	}
	n.keys = append(n.keys, key)
	n.items = append(n.items, member)
}

// at returns the node at a path such as parts[1].plus, or nil.
func (n *node) at(path string) *node {
	var t trail
	for _, s := range t.split(path) {
		switch {
		case n == nil:
			return nil
		case s.index >= 0:
			if n.shape != array || s.index >= len(n.items) {
				return nil
			}
			n = n.items[s.index]
		default:
			n = n.get(s.name)
		}
	}
	return n
}

// found describes a node for a message.
func (n *node) found() string {
	switch n.shape {
	case object:
		return "an object"
	case array:
		return "a list"
	case number:
		return clip(n.text, 40)
	case boolean:
		return strconv.FormatBool(n.flag)
	case null:
		return "null"
	case absent:
		return "nothing"
	}
	return strconv.Quote(clip(n.text, 40))
}

// clip shortens a text to so many code points.
func clip(s string, most int) string {
	for i := range s {
		if most == 0 {
			return s[:i] + "…"
		}
		most--
	}
	return s
}

// step is one part of a path: a name, or the number of a row.
type step struct {
	name  string
	index int // -1 for a name
}

// A trail has room for the steps of a path, so that taking one apart needs no memory of
// its own.
type trail [6]step

// split takes a path apart. A malformed index gives a step whose name holds the
// bracket, which no field has.
func (t *trail) split(path string) []step {
	steps := t[:0]
	for path != "" {
		if path[0] == '[' {
			digits, rest, ok := strings.Cut(path[1:], "]")
			i, err := strconv.Atoi(digits)
			if !ok || err != nil || i < 0 || digits[0] == '+' || (len(digits) > 1 && digits[0] == '0') {
				return append(steps, step{name: path, index: -1})
			}
			steps = append(steps, step{index: i})
			path = strings.TrimPrefix(rest, ".")
			continue
		}
		end := strings.IndexAny(path, ".[")
		if end < 0 {
			return append(steps, step{name: path, index: -1})
		}
		steps = append(steps, step{name: path[:end], index: -1})
		path = strings.TrimPrefix(path[end:], ".")
	}
	return steps
}

// plainNumber writes a number without loss, and without an exponent where that
// reads well.
func plainNumber(v float64) string {
	if v != 0 && v < 1e-6 && v > -1e-6 {
		return strconv.FormatFloat(v, 'e', -1, 64)
	}
	return strconv.FormatFloat(v, 'f', -1, 64)
}
