package words

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// What a spreadsheet takes for the beginning of a formula is common practice, no
// source.
func TestCell(t *testing.T) {
	for text, want := range map[string]string{
		"":            "",
		"Ada":         "Ada",
		"on / off":    "on / off",
		"=1+1":        "'=1+1",
		"+7":          "'+7",
		"@x":          "'@x",
		"\t=1":        "'\t'=1",
		"\r=1":        "'\r'=1",
		" =1":         " '=1",
		"＝1+1":        "'＝1+1",
		"'=1+1":       "'=1+1",
		"a;=1+1":      "a;'=1+1", // a cell of its own for who ends cells at semicolons
		"a; \"=1+1":   "a; \"'=1+1",
		"a,@x|-b\n+c": "a,'@x|'-b\n'+c",
		"a, -0.5; -1": "a, -0.5; -1",
		"a;-1+A1":     "a;'-1+A1",
		"-7":          "-7",
		"-0.15":       "-0.15",
		"-":           "'-",
		"-A1":         "'-A1",
		"-1+A1":       "'-1+A1", // begins as a number, counts as a formula
		"-2*SUM(A:A)": "'-2*SUM(A:A)",
	} {
		assert.Equal(t, want, Cell(text), "%q", text)
	}
}
