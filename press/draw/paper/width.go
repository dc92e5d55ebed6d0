package paper

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// A Width is how wide a drawing is to be on paper, mm; 0 is that of the drawing.
type Width float64

// A NamedWidth is a width by the name of what people put drawings into.
type NamedWidth struct {
	Name string
	MM   Width
}

// Widths are the widths that have names.
var Widths = []NamedWidth{
	{"column", 84}, // of a text in two columns
	{"half", 120},  // half a landscape page
	{"page", 180},  // a portrait page between its margins
	{"slide", 254},
}

// Widths in mm that can be asked for.
const (
	leastWidth = 60
	mostWidth  = 1000
)

// ParseWidth reads a width: one of the names, or a number of mm.
func ParseWidth(s string) (Width, error) {
	var names []string
	for _, w := range Widths {
		if w.Name == s {
			return w.MM, nil
		}
		names = append(names, w.Name)
	}
	mm, err := strconv.ParseFloat(strings.TrimSpace(strings.TrimSuffix(s, "mm")), 64)
	if err != nil || math.IsNaN(mm) || mm < leastWidth || mm > mostWidth {
		return 0, fmt.Errorf("draw: no width is called %q; there are %s, or a number of mm from %d to %d", s, strings.Join(names, ", "), leastWidth, mostWidth)
	}
	return Width(mm), nil
}
