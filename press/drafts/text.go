package drafts

import (
	"fmt"
	"strings"
	"unicode"
)

// Most characters of a text that is kept beside a plan.
const (
	MostText  = 200
	MostNotes = 4000
)

// AtMost refuses a text that is longer.
func AtMost(n int) string { return fmt.Sprintf("at most %d characters are allowed", n) }

// Words are those of a text that can be searched for.
func Words(text string) []string {
	return strings.FieldsFunc(text, func(c rune) bool { return !unicode.IsLetter(c) && !unicode.IsDigit(c) && !unicode.IsMark(c) })
}
