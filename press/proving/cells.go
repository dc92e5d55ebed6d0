package proving

import (
	"ramplan/press"
	"ramplan/press/strict"
)

// fault tells what is wrong with a value that was given for the field; nil where the field
// takes it.
func (f *Field) fault(n *strict.Node, path string) *press.Problem {
	switch {
	case f.form == nil:
		return f.Field.Fault(n, path)
	case n.Shape != strict.Text:
		return &press.Problem{Path: path, Code: press.CodeType, Message: "found " + n.Found() + "; " + f.Allowed()}
	case !f.form(n.Text):
		return &press.Problem{Path: path, Code: press.CodeChoice, Message: "found " + n.Found() + "; " + f.Allowed()}
	}
	return nil
}

// set puts a value that the field takes where it belongs.
func (f *Field) set(s *Study, r *Row, n *strict.Node) {
	switch at := f.at(s, r).(type) {
	case **float64:
		x := n.Num
		*at = &x
	case **bool:
		b := n.Flag
		*at = &b
	case *string:
		*at = n.Text
	}
}

// value gives what stands at the field, or nil where nothing was given: a text that was
// given as empty is left to who knows of it.
func (f *Field) value(s *Study, r *Row) any {
	switch at := f.at(s, r).(type) {
	case **float64:
		if *at != nil {
			return **at
		}
	case **bool:
		if *at != nil {
			return **at
		}
	case *string:
		if *at != "" {
			return *at
		}
	}
	return nil
}
