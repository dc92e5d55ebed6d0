package drafts

import "strings"

// fewestDigits of a digest are those that paper carries.
const fewestDigits = 12

// TypedDigest reads the first digits of a digest as somebody types them from paper:
// in capitals, in groups, with an O for a zero or an l for a one. It tells whether
// the text is that, as twelve digits or more are needed.
func TypedDigest(text string) (digits string, ok bool) {
	digits, ok = hexDigits(text)
	return digits, ok && len(digits) >= fewestDigits && len(digits) <= 64
}

// TooFewDigits tells whether a text is the beginning of a digest, and too short to be
// looked for: six digits at least, so that a word such as decade is none.
func TooFewDigits(text string) bool {
	digits, ok := hexDigits(text)
	return ok && len(digits) >= 6 && len(digits) < fewestDigits
}

func hexDigits(text string) (digits string, ok bool) {
	text = strings.TrimPrefix(strings.ToLower(strings.TrimSpace(text)), "sha256")
	var b strings.Builder
	for _, c := range text {
		switch {
		case c >= '0' && c <= '9', c >= 'a' && c <= 'f':
			b.WriteRune(c)
		case c == 'o':
			b.WriteByte('0')
		case c == 'l', c == 'i':
			b.WriteByte('1')
		case strings.ContainsRune(" :-.\u00a0\u2009\u202f…", c):
		default:
			return "", false
		}
	}
	return b.String(), true
}
