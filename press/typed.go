package press

import (
	"regexp"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Bare takes the field's own unit off a figure that was typed with it, "120 mm",
// and leaves any other text as it is: with another unit it is no number.
func (f *Field) Bare(typed string) string {
	if f.Kind != Number || f.Unit == "" {
		return typed
	}
	figure, found := strings.CutSuffix(oneMicro(strings.TrimSpace(typed)), f.Unit)
	if !found {
		return typed
	}
	last, _ := utf8.DecodeLastRuneInString(figure)
	switch {
	case unicode.IsSpace(last):
	case !unicode.IsDigit(last) && last != '.':
		return typed // a prefix, such as kN, or nothing at all
	case unicode.IsDigit(rune(f.Unit[0])):
		return typed // where 11/K would end the figure nobody knows
	}
	return strings.TrimSpace(figure)
}

// oneMicro writes the sign of a millionth as the units of the fields have it:
// keyboards give the Greek letter as well, which looks the same.
func oneMicro(s string) string { return strings.ReplaceAll(s, "μ", "µ") }

// joined takes the blanks off a fit code: at its ends and around the slash.
func joined(code string) string {
	hole, shaft, found := strings.Cut(code, "/")
	if !found {
		return code
	}
	return strings.TrimSpace(hole) + "/" + strings.TrimSpace(shaft)
}

// maybeThousands matches a figure whose comma may be meant to part thousands: exactly
// three digits behind it, and no lone zero before it.
var maybeThousands = regexp.MustCompile(`^[+−-]?[1-9][0-9]*,[0-9]{3}$`)

// Doubtful tells whether a typed figure may be meant in two ways, and as what it is read:
// 1,200 as 1.2, because a comma is a decimal comma, as everywhere in a draft.
func (f *Field) Doubtful(typed string) (read float64, doubtful bool) {
	if f.Kind != Number {
		return 0, false
	}
	bare := strings.TrimSpace(f.Bare(typed))
	if !maybeThousands.MatchString(bare) {
		return 0, false
	}
	return TypedNumber(bare)
}
