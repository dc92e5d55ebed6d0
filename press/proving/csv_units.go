package proving

import "strings"

// units are what a column may be written in, by the unit that is computed in, with the
// factor that makes the one of the other. 25.4 mm are an inch and 4.4482216152605 N a
// pound-force by definition.
var units = map[string]map[string]float64{
	"mm":   {"mm": 1, "µm": 0.001, "um": 0.001, "in": 25.4},
	"N":    {"N": 1, "kN": 1000, "lbf": 4.4482216152605},
	"%":    {"%": 1},
	"s":    {"s": 1, "ms": 0.001},
	"mm/s": {"mm/s": 1, "in/s": 25.4},
	"d":    {"d": 1},
}

// unitsOf lists what a field may be written in, for a message.
var unitsOf = map[string]string{
	"mm": "mm, µm, um or in", "N": "N, kN or lbf", "%": "%", "s": "s or ms", "mm/s": "mm/s or in/s", "d": "d",
}

// withUnit takes a unit in brackets off a name: "force [kN]" is force and kN. Without
// brackets there is no unit.
func withUnit(head string) (name, unit string, bracket bool) {
	head = strings.TrimSpace(head)
	for _, pair := range []string{"[]", "()"} {
		open := strings.IndexByte(head, pair[0])
		if open >= 0 && strings.HasSuffix(head, pair[1:]) {
			return strings.TrimSpace(head[:open]), strings.TrimSpace(head[open+1 : len(head)-1]), true
		}
	}
	return head, "", false
}

// plainName writes a name as the document has it: small letters, and _ for blanks and
// hyphens.
func plainName(name string) string {
	return strings.Map(func(r rune) rune {
		if r == ' ' || r == '-' || r == '\t' || r == '\u00a0' {
			return '_'
		}
		return r
	}, strings.ToLower(name))
}

// find gives the field that a name means, by its own name or another one.
func find(fields []*Field, name string) *Field {
	name = plainName(name)
	for _, f := range fields {
		if f.Name == name {
			return f
		}
		for _, also := range f.Also {
			if also == name {
				return f
			}
		}
	}
	return nil
}

// factor is by what the numbers of a field are multiplied when they are written in a unit;
// false where the unit does not fit.
func (f *Field) factor(unit string, bracket bool) (float64, bool) {
	if !bracket {
		return 1, true
	}
	x, fits := units[f.Unit][strings.ReplaceAll(unit, "μ", "µ")]
	return x, fits
}
