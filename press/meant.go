package press

import (
	"math"
	"strings"

	"ramplan/press/strict"
)

// AsRead gives a typed text as the check reads it: a figure in plain digits and
// without its unit, a word of a choice and a fit code without blanks. A text that
// cannot be read stays as it was typed. given is false for one that counts as not
// given; a default that was typed counts as given.
func AsRead(path, typed string) (text string, given bool) {
	s := schemaAt(path)
	if s == nil {
		return typed, true
	}
	if s.blank(typed) {
		return "", false
	}
	switch n := s.typed(typed); n.Shape {
	case strict.Object:
		return "{}", true
	case strict.Array:
		return "[]", true
	case strict.Boolean:
		return strings.TrimSpace(typed), true
	case strict.Number:
		if math.IsInf(n.Num, 0) {
			return n.Text, true
		}
		return strict.PlainNumber(n.Num), true
	default:
		return n.Text, true
	}
}

// SameMeaning tells whether two typed texts of one entry are read as the same:
// 3,5 as 3.5 and as 3.5 kg.
func SameMeaning(path, a, b string) bool {
	x, xGiven := AsRead(path, a)
	y, yGiven := AsRead(path, b)
	return xGiven == yGiven && x == y
}

// schemaAt gives the place of the document at a path, or nil.
func schemaAt(path string) *schema {
	s := root
	var t strict.Trail
	for _, st := range t.Split(path) {
		if s = s.step(st); s == nil {
			return nil
		}
	}
	return s
}
