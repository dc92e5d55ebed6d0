package proving

import (
	"strconv"
	"strings"
)

// A decimal is the decimal sign of a file, once one was met.
type decimal struct {
	sign  byte // . or ,; 0 while none was met
	fixed bool // the comma separates the columns
}

// number reads a number: sign, digits, one decimal sign, exponent. wrong says what is wrong
// with its decimal sign; ok is false for what is no number at all.
func (d *decimal) number(text string) (x float64, ok bool, wrong string) {
	if strings.Contains(text, "−") {
		text = strings.ReplaceAll(text, "−", "-")
	}
	at, ok := scan(text)
	if !ok {
		return 0, false, ""
	}
	if at >= 0 {
		sign := text[at]
		switch {
		case sign == ',' && d.fixed:
			return 0, true, "the comma separates the columns of this file, so a decimal point is needed"
		case d.sign == 0:
			d.sign = sign
		case d.sign != sign && sign == ',':
			return 0, true, "a decimal point stands elsewhere in this file, and one sign is needed throughout"
		case d.sign != sign:
			return 0, true, "a decimal comma stands elsewhere in this file, and one sign is needed throughout"
		}
		if sign == ',' {
			text = text[:at] + "." + text[at+1:]
		}
	}
	x, _ = strconv.ParseFloat(text, 64) // out of range gives ±Inf, which no range allows
	if x == 0 {
		x = 0 // minus zero is zero
	}
	return x, true, ""
}

// scan tells whether a text has the shape of a number, and where its decimal sign stands, -1
// for none.
func scan(s string) (sign int, ok bool) {
	i, digits := 0, 0
	sign = -1
	if i < len(s) && (s[i] == '+' || s[i] == '-') {
		i++
	}
	for ; i < len(s); i++ {
		if c := s[i]; c >= '0' && c <= '9' {
			digits++
		} else if sign < 0 && (c == '.' || c == ',') {
			sign = i
		} else {
			break
		}
	}
	if digits == 0 {
		return sign, false
	}
	if i == len(s) {
		return sign, true
	}
	if s[i] != 'e' && s[i] != 'E' {
		return sign, false
	}
	if i++; i < len(s) && (s[i] == '+' || s[i] == '-') {
		i++
	}
	if i == len(s) {
		return sign, false
	}
	for ; i < len(s); i++ {
		if s[i] < '0' || s[i] > '9' {
			return sign, false
		}
	}
	return sign, true
}

// clock reads a clock time, 14:05 or 14:05:30, as seconds from midnight.
func clock(text string) (float64, bool) {
	parts := strings.Split(text, ":")
	if len(parts) != 2 && len(parts) != 3 {
		return 0, false
	}
	seconds := 0
	for i, p := range parts {
		if len(p) != 2 && !(i == 0 && len(p) == 1) {
			return 0, false
		}
		x, err := strconv.ParseUint(p, 10, 8)
		if err != nil || i == 0 && x > 23 || x > 59 {
			return 0, false
		}
		seconds = 60*seconds + int(x)
	}
	if len(parts) == 2 {
		seconds *= 60
	}
	return float64(seconds), true
}

// lamp reads the state of a signal.
func lamp(word string) (on, ok bool) {
	switch strings.ToLower(word) {
	case "on", "1", "true", "yes":
		return true, true
	case "off", "0", "false", "no":
		return false, true
	}
	return false, false
}
