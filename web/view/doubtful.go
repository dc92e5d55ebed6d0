package view

import (
	"regexp"
	"strconv"
	"strings"

	"ramplan/press"
	"ramplan/press/words"
)

// thousands matches a figure whose comma may be meant to part thousands: exactly
// three digits behind it, and no lone zero before it.
var thousands = regexp.MustCompile(`^[+−-]?[1-9][0-9]*,[0-9]{3}$`)

// readAs says as what a doubtful figure is read; empty for any other. A comma is
// a decimal comma, as everywhere in a draft.
func readAs(f *press.Field, text string) string {
	text = strings.TrimSpace(f.Bare(text))
	if f.Kind != press.Number || !thousands.MatchString(text) {
		return ""
	}
	x, err := strconv.ParseFloat(strings.NewReplacer(",", ".", "−", "-").Replace(text), 64)
	if err != nil {
		return ""
	}
	return "read as " + words.Exact(x)
}
