package press

import (
	"math"
	"strconv"
	"strings"

	"ramplan/press/strict"
)

// within tells whether the field allows this number.
func (f *Field) within(x float64) bool {
	if !(x >= -Largest && x <= Largest) || f.Whole && x != math.Trunc(x) {
		return false
	}
	if f.Low != nil && (x < f.Low.Value || f.Low.Open && x == f.Low.Value) {
		return false
	}
	return f.High == nil || x < f.High.Value || !f.High.Open && x == f.High.Value
}

// Allowed says in one sentence what the field takes, such as "a number of mm,
// more than 0".
func (f *Field) Allowed() string {
	switch f.Kind {
	case Text:
		s := "a text of at most " + strconv.Itoa(f.MaxRunes) + " characters is needed"
		if f.Required {
			s = "a text of 1 to " + strconv.Itoa(f.MaxRunes) + " characters is needed"
		}
		return s
	case Choice:
		return "one of " + strings.Join(f.Choices, ", ") + " is needed"
	case Flag:
		return "true or false is needed"
	case Rows:
		return f.rowsAllowed()
	}
	s := "a number"
	if f.Whole {
		s = "a whole number"
	}
	if f.Unit != "" {
		s += " in " + f.Unit
	}
	if r := f.Range(); r != "" {
		s += ", " + r + ","
	}
	return s + " is needed"
}

// Range says which numbers the field takes, such as "more than 0", without the
// unit; empty where any number will do.
func (f *Field) Range() string {
	if f.Kind != Number || f.Low == nil {
		return ""
	}
	low := strict.PlainNumber(f.Low.Value)
	switch {
	case f.High == nil && f.Low.Open:
		return "more than " + low
	case f.High == nil:
		return low + " or more"
	}
	high := strict.PlainNumber(f.High.Value)
	switch {
	case f.Low.Open && f.High.Open:
		return "more than " + low + ", less than " + high
	case f.Low.Open:
		return "more than " + low + ", at most " + high
	case f.High.Open:
		return low + " or more, less than " + high
	}
	return low + " to " + high
}

func (f *Field) rowsAllowed() string {
	return "a list of " + strconv.Itoa(f.MinRows) + " to " + strconv.Itoa(f.MaxRows) + " rows is needed"
}
