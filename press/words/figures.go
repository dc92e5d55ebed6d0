package words

import (
	"regexp"
	"strings"
)

// A figured cell is the text of one cell of a table, taken apart for other programs:
// numbers as they write them, and the unit apart.
type figured struct {
	value, lower, upper, unit string
	rest                      string // what the cell says beside one figure; of "about" and the like too
	alone                     bool   // the cell is nothing but one figure, or one range or limit
}

const (
	aNumber = `[−-]?(?:\d{1,3}(?:\x{202f}\d{3})+|\d+)(?:\.\d+)?`
	aUnit   = `\x{202f}([^\s\d,;:()“”.][^\s,;:()“”]*)`
)

var (
	measure = regexp.MustCompile(`(` + aNumber + `)(?: to (` + aNumber + `))?(?:` + aUnit + `)`)
	lone    = regexp.MustCompile(`^(` + aNumber + `)(?: to (` + aNumber + `))?$`)
	twice   = regexp.MustCompile(`(` + aNumber + `)` + aUnit + ` to (` + aNumber + `)` + aUnit)
	signed  = regexp.MustCompile(`^([<>])\x{202f}?(` + aNumber + `)$`)
	usual   = regexp.MustCompile(`^(.*\x{202f}[^,;]*), typically (` + aNumber + `)\x{202f}(\S+)$`)
	digits  = regexp.MustCompile(`\d`)
	// A limit that is denied is one of the other side, and is asked for first.
	notUnder = regexp.MustCompile(`\b(?:not|no|never) (?:under|below|less than|shorter than)\s*$`)
	notOver  = regexp.MustCompile(`\b(?:not|no|never) (?:over|above|more than|taller than|longer than)\s*$`)
	fromHere = regexp.MustCompile(`(?:at least|more than|over|>)\s*$`)
	upToHere = regexp.MustCompile(`(?:at most|less than|under|<)\s*$`)
	orMore   = regexp.MustCompile(`^,? (?:or taller|or longer|or more|or higher|no shorter|no less)\b`)
	orLess   = regexp.MustCompile(`^,? (?:or shorter|or less|or lower|no taller|no longer|no more)\b`)
	relation = regexp.MustCompile(`^(?:about|at least|at most|no less than|no more than|not over|not under|more than|less than|over|under|or taller|or shorter|or more|or less|no taller|no shorter|[<>, ]|[†‡§¶‖])*$`)
)

// figuresIn takes a cell apart. Where it says several things, in figures of several
// kinds, there is nothing to take.
func figuresIn(cell string) figured {
	given := cell
	cell = twice.ReplaceAllStringFunc(cell, func(s string) string { // a range that says its unit twice
		if m := twice.FindStringSubmatch(s); m[2] == m[4] {
			return m[1] + " to " + m[3] + thin + m[4]
		}
		return s
	})
	if m := lone.FindStringSubmatch(cell); m != nil {
		return figured{alone: true}.with(m[1], m[2])
	}
	if m := signed.FindStringSubmatch(cell); m != nil {
		f := figured{rest: m[1], alone: true}
		if m[1] == "<" {
			f.upper = plainNumber(m[2])
		} else {
			f.lower = plainNumber(m[2])
		}
		return f
	}
	if m := usual.FindStringSubmatch(cell); m != nil { // a range, and what is typical in it
		if f := figuresIn(m[1]); f.lower != "" && f.upper != "" && f.value == "" && f.unit == m[3] {
			f.value, f.alone = plainNumber(m[2]), false
			return f
		}
	}
	all := measure.FindAllStringSubmatchIndex(cell, -1)
	if len(all) == 0 || len(all) > 2 {
		return figured{rest: given}
	}
	f, around, last := figured{}, "", 0
	for _, m := range all {
		from, to, unit := cell[m[2]:m[3]], "", cell[m[6]:m[7]]
		if m[4] >= 0 {
			to = cell[m[4]:m[5]]
		}
		before, after := strings.ReplaceAll(cell[last:m[0]], thin, " "), cell[m[1]:]
		around, last = around+before, m[1]
		if f.unit != "" && f.unit != unit {
			return figured{rest: given}
		}
		f.unit = unit
		switch {
		case to != "" && len(all) > 1:
			return figured{rest: given}
		case notUnder.MatchString(before):
			f.lower = plainNumber(from)
		case notOver.MatchString(before):
			f.upper = plainNumber(from)
		case fromHere.MatchString(before), orMore.MatchString(after):
			f.lower = plainNumber(from)
		case upToHere.MatchString(before), orLess.MatchString(after):
			f.upper = plainNumber(from)
		case len(all) > 1:
			return figured{rest: given}
		default:
			f = f.with(from, to)
		}
	}
	around += cell[last:]
	if len(all) > 1 && (f.lower == "" || f.upper == "") || digits.MatchString(around) {
		return figured{rest: given}
	}
	f.rest = strings.TrimSpace(around)
	f.alone = relation.MatchString(around)
	return f
}

// any tells whether there is a figure at all.
func (f figured) any() bool { return f.value+f.lower+f.upper != "" }

// one is the figure where there is but one, a limit too; empty for a range.
func (f figured) one() string {
	if f.lower != "" && f.upper != "" {
		return ""
	}
	return f.value + f.lower + f.upper
}

// with puts one figure, or the two of a range, into their places.
func (f figured) with(from, to string) figured {
	if to == "" {
		f.value = plainNumber(from)
		return f
	}
	f.lower, f.upper = plainNumber(from), plainNumber(to)
	return f
}

// plainNumber writes a number for people as programs read it.
func plainNumber(s string) string {
	return strings.ReplaceAll(strings.ReplaceAll(s, thin, ""), minus, "-")
}

var groupedDigits = regexp.MustCompile(`\d{1,3}(?:\x{202f}\d{3})+`)

// plainText writes a text for people without the blanks and signs that programs do
// not know.
func plainText(s string) string {
	s = groupedDigits.ReplaceAllStringFunc(s, plainNumber)
	return strings.NewReplacer(thin, " ", "\u00a0", " ", minus, "-").Replace(s)
}

// measured finds figures with their unit in a text, several before one unit too.
var measured = regexp.MustCompile(aNumber + `(?:(?: to | and |, | or | ± )` + aNumber + `)*` + aUnit)

// text writes a text for people as [plainText] does, and the figures in it with this
// decimal mark: those that have a unit, so that nothing that was typed is another text.
func (s Separation) text(text string) string {
	return plainText(measured.ReplaceAllStringFunc(text, func(m string) string {
		number := strings.LastIndex(m, thin)
		return s.Number(m[:number]) + m[number:]
	}))
}

// Plain writes a figure for people as other programs read it, and nothing where there
// is none.
func Plain(figure string) string {
	if figure == none {
		return ""
	}
	return plainText(figure)
}
