package fit

import (
	"fmt"
	"slices"
	"strings"
)

// Letters that the classes may have, in the order of the standard.
var (
	holeLetters  = []string{"F", "G", "H", "JS", "K", "M", "N", "P", "R", "S", "T", "U"}
	shaftLetters = []string{"f", "g", "h", "js", "k", "m", "n", "p", "r", "s", "t", "u", "x"}
)

const (
	lowestGrade, highestGrade = 5, 8
	MaxDiameter               = 500.0 // mm, the largest that the tables cover
)

// Code returns the limits of a fit given as hole and shaft class, "H7/s6".
//
// Arguments: code, hole class first, case matters; diameter, mm, nominal.
// Result: µm, deviations from the nominal diameter.
// Range: diameters above 0 up to 500 mm, grades 5 to 8, holes F, G, H, JS,
// K, M, N, P, R, S, T, U, shafts f, g, h, js, k, m, n, p, r, s, t, u, x; t and T
// are defined above 24 mm only (ISO 286-1). Anything else is an error that says what is
// allowed.
// Special cases: see [Hole].
// Source: ISO 286-1, tables as given in public transcriptions (the standard
// was not at hand).
func Code(code string, diameter float64) (hole, shaft Limits, err error) {
	holeClass, shaftClass, ok := strings.Cut(code, "/")
	if !ok || strings.Contains(shaftClass, "/") {
		return Limits{}, Limits{}, fmt.Errorf("fit: code %q is not a hole class, a slash and a shaft class, such as H7/s6", code)
	}
	if hole, err = Hole(holeClass, diameter); err != nil {
		return Limits{}, Limits{}, err
	}
	if shaft, err = Shaft(shaftClass, diameter); err != nil {
		return Limits{}, Limits{}, err
	}
	return hole, shaft, nil
}

// Hole returns the limits of a hole of a tolerance class such as "H7".
//
//	F, G: EI = −es of f, g;  H: EI = 0;  JS: ±IT/2;  else ES = −ei of the shaft of that letter, plus Δ
//	for K, M, N up to grade 8 and P to U up to grade 7;  ES − EI = IT
//
// Arguments: class, capital letter and grade; diameter, mm, nominal.
// Result: µm, EI and ES.
// Range: as for [Code].
// Special cases: M6 above 250 up to 315 mm has ES = −9, N up to 3 mm has
// ES = −4. JS is not rounded to whole µm.
// Source: ISO 286-1, tables as given in public transcriptions (the standard
// was not at hand).
func Hole(class string, diameter float64) (Limits, error) {
	c, err := parseClass(class, holeLetters)
	if err != nil {
		return Limits{}, err
	}
	size, err := sizeOf(diameter)
	if err != nil {
		return Limits{}, err
	}
	it := size.grade(c.grade)
	switch c.letter {
	case "H":
		return Limits{Low: 0, High: it}, nil
	case "JS":
		return Limits{Low: -it / 2, High: it / 2}, nil
	}
	if es, ok := size.clearance(strings.ToLower(c.letter)); ok {
		return Limits{Low: -es, High: -es + it}, nil
	}
	ei, defined := size.deviation(strings.ToLower(c.letter))
	if !defined {
		return Limits{}, undefined(class, diameter)
	}
	es := -ei + size.delta(c)
	if c.letter == "M" && c.grade == 6 && diameter > 250 && diameter <= 315 {
		es = -9
	}
	return Limits{Low: es - it, High: es}, nil
}

// Shaft returns the limits of a shaft of a tolerance class such as "s6".
//
//	f, g: es from the table;  h: es = 0;  js: ±IT/2;  k to x: ei from the table;  es − ei = IT
//
// Arguments: class, small letter and grade; diameter, mm, nominal.
// Result: µm, ei and es.
// Range: as for [Code].
// Special cases: k has ei = 0 above grade 7. js is not rounded to whole µm.
// Source: ISO 286-1, tables as given in public transcriptions (the standard
// was not at hand).
func Shaft(class string, diameter float64) (Limits, error) {
	c, err := parseClass(class, shaftLetters)
	if err != nil {
		return Limits{}, err
	}
	size, err := sizeOf(diameter)
	if err != nil {
		return Limits{}, err
	}
	it := size.grade(c.grade)
	switch c.letter {
	case "h":
		return Limits{Low: -it, High: 0}, nil
	case "js":
		return Limits{Low: -it / 2, High: it / 2}, nil
	}
	if es, ok := size.clearance(c.letter); ok {
		return Limits{Low: es - it, High: es}, nil
	}
	ei, defined := size.deviation(c.letter)
	if !defined {
		return Limits{}, undefined(class, diameter)
	}
	if c.letter == "k" && c.grade > 7 {
		ei = 0
	}
	return Limits{Low: ei, High: ei + it}, nil
}

// class is a tolerance class taken apart.
type class struct {
	letter string
	grade  int
}

// parseClass takes a class apart and checks its letter and grade.
func parseClass(text string, letters []string) (class, error) {
	kind, other := "hole", shaftLetters
	if letters[0] == "f" {
		kind, other = "shaft", holeLetters
	}
	i := strings.IndexFunc(text, func(r rune) bool { return r >= '0' && r <= '9' })
	if i <= 0 {
		return class{}, fmt.Errorf("fit: %s class %q is not a letter and a grade", kind, text)
	}
	letter, digits := text[:i], text[i:]
	if !slices.Contains(letters, letter) {
		hint := ""
		if slices.Contains(other, letter) {
			hint = "; the hole class comes first, in capital letters, the shaft class second, in small ones"
		}
		return class{}, fmt.Errorf("fit: %s letter %q of class %q is not one of %s%s",
			kind, letter, text, strings.Join(letters, ", "), hint)
	}
	if len(digits) != 1 || digits[0] < '0'+lowestGrade || digits[0] > '0'+highestGrade {
		return class{}, fmt.Errorf("fit: grade %q of %s class %q is not %d to %d",
			digits, kind, text, lowestGrade, highestGrade)
	}
	return class{letter: letter, grade: int(digits[0] - '0')}, nil
}

// undefined is the error of a class that the standard leaves empty at a
// diameter: only t and T do that among the allowed letters.
func undefined(class string, diameter float64) error {
	return fmt.Errorf("fit: class %q is not defined at diameter %v mm, only above %v mm", class, diameter, tAbove)
}
