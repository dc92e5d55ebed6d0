package words

import (
	"math"
	"strconv"
	"strings"
)

// Marks that numbers for people are set with.
const (
	thin  = "\u202f" // narrow no-break space, before a unit and between groups of digits
	minus = "\u2212" // true minus sign
	none  = "–"      // stands for a figure that does not exist
)

// Fixed writes a number with this many decimals, a true minus sign, and groups
// of three digits from ten thousand on. Zero has no sign.
func Fixed(x float64, decimals int) string {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return none
	}
	digits := strconv.FormatFloat(math.Abs(x), 'f', decimals, 64)
	whole, fraction, point := strings.Cut(digits, ".")
	s := grouped(whole)
	if point {
		s += "." + fraction
	}
	if x < 0 && strings.Trim(digits, "0.") != "" {
		s = minus + s
	}
	return s
}

// grouped sets digits apart in threes when there are five or more.
func grouped(whole string) string {
	if len(whole) < 5 {
		return whole
	}
	var b strings.Builder
	for i, c := range whole {
		if i > 0 && (len(whole)-i)%3 == 0 {
			b.WriteString(thin)
		}
		b.WriteRune(c)
	}
	return b.String()
}

// Trimmed writes a number with at most this many decimals, without zeros at the
// end: for figures that were typed in.
func Trimmed(x float64, decimals int) string {
	s := Fixed(x, decimals)
	if !strings.Contains(s, ".") {
		return s
	}
	s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	if s == minus+"0" {
		return "0"
	}
	return s
}

// Full writes a number with every digit that it has, for figures that were typed
// in and are shown to be compared.
func Full(x float64) string {
	exact := Exact(x)
	if strings.Contains(exact, "e") {
		return strings.ReplaceAll(exact, "-", minus)
	}
	_, fraction, _ := strings.Cut(exact, ".")
	return Fixed(x, len(fraction))
}

// Unit puts a unit behind a number that is already written.
func Unit(number, unit string) string {
	if unit == "" {
		return number
	}
	return number + thin + unit
}

// Exact is the loss-free form: the shortest digits that read back as the same
// number, as JSON writes it. Only the sign of zero is lost.
func Exact(x float64) string {
	switch abs := math.Abs(x); {
	case x == 0:
		return "0"
	case abs < 1e-6 || abs >= 1e21:
		s := strconv.FormatFloat(x, 'e', -1, 64)
		return strings.Replace(s, "e-0", "e-", 1)
	}
	return strconv.FormatFloat(x, 'f', -1, 64)
}

// apart gives the least number of decimals, at least from, with which two
// different numbers look different. Equal ones keep from.
func apart(a, b float64, from int) int {
	const most = 9
	for d := from; d <= most; d++ {
		if Fixed(a, d) != Fixed(b, d) {
			return d
		}
	}
	return from
}

// significant gives the decimals that show this many significant digits, at
// least from and at most 6.
func significant(x float64, digits, from int) int {
	if x = math.Abs(x); x == 0 || math.IsNaN(x) || math.IsInf(x, 0) {
		return from
	}
	return min(max(from, digits-1-int(math.Floor(math.Log10(x)))), 6)
}

// ReadAs says as what a typed figure is read that may be meant in two ways.
func (say Printer) ReadAs(x float64) string { return "read as " + Exact(x) }
