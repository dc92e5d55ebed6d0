package training

import (
	"errors"
	"strings"
)

// MaxWho is the longest name or number of a person, in characters.
const MaxWho = 80

// ErrNobody refuses a record that does not say who was trained.
var ErrNobody = errors.New("training: a training record needs a name or number of at most 80 characters")

// PersonName gives a person's name as records keep it: blanks tidied. It is empty
// for one that no record takes.
func PersonName(typed string) string {
	s := strings.Join(strings.Fields(typed), " ")
	if len([]rune(s)) > MaxWho || strings.ContainsFunc(s, func(r rune) bool { return r < ' ' || r == 0x7f || r == '\uFFFD' }) {
		return ""
	}
	return s
}

// PersonKey is the same for names that are taken for one person's: it
// does not tell small letters of ASCII from capital ones.
func PersonKey(who string) string {
	return strings.Map(func(r rune) rune {
		if r >= 'A' && r <= 'Z' {
			r += 'a' - 'A'
		}
		return r
	}, PersonName(who))
}
