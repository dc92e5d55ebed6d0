package curves

import (
	"fmt"
	"strings"
	"unicode"
)

// glue puts units up to the figures they belong to, so that the blank between
// them does not part columns: "10 % 95 N" becomes "10% 95N". It knows %, N and kN.
func glue(line string) string {
	for _, unit := range []string{"%", "N", "kN"} {
		for from := 0; ; {
			i := strings.Index(line[from:], unit)
			if i < 0 {
				break
			}
			i += from
			from = i + len(unit)
			before := strings.TrimRightFunc(line[:i], unicode.IsSpace)
			if before == "" || !strings.ContainsRune("0123456789.,", rune(before[len(before)-1])) || !ends(line[from:]) {
				continue
			}
			from -= i - len(before)
			line = before + line[i:]
		}
	}
	return line
}

// ends says whether a field may end before this rest of a line.
func ends(rest string) bool {
	return rest == "" || strings.IndexFunc(rest, func(r rune) bool { return unicode.IsSpace(r) || r == ';' || r == ',' }) == 0
}

// isUnit says whether a field is a word that may be a unit, without any digit.
func isUnit(field string) bool {
	return field != "" && strings.IndexFunc(field, isUnitRune) == 0 && !strings.ContainsAny(field, "0123456789")
}

func isUnitRune(r rune) bool { return r == '%' || unicode.IsLetter(r) }

// quantity reads one figure, which its unit may follow, % or N.
func quantity(field, unit string, decimalComma bool) (float64, string) {
	plain, given := field, ""
	if field != "" && field[0] >= '0' && field[0] <= '9' || strings.HasPrefix(field, "+") || strings.HasPrefix(field, "-") {
		plain = strings.TrimRightFunc(field, isUnitRune)
		given = field[len(plain):]
		plain = strings.TrimRightFunc(plain, unicode.IsSpace)
	}
	switch {
	case given == "" || strings.Trim(plain, "+-.,") == "":
		return number(field, decimalComma)
	case given == unit:
		return number(plain, decimalComma)
	case given == "%" || given == "N" || strings.EqualFold(given, "kN"):
		return 0, fmt.Sprintf("%q: settings in %%, forces in newtons", shorten(field))
	}
	return 0, fmt.Sprintf("%q is not a number; leave out the units", shorten(field))
}
