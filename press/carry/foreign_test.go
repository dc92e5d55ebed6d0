package carry

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
)

// TestForeign tells a file that is no plan at all from one that is a faulty plan,
// or a picture that may hold one (derived).
func TestForeign(t *testing.T) {
	for text, foreign := range map[string]bool{
		"":                          true,
		"a letter":                  true,
		`{"format": "something/1"}`: true,
		`[1, 2]`:                    true,
		"<html><body>":              false, // looked into, and nothing is found
		"\xEF\xBB\xBF \n{\"format\": \"ramplan.plan/1\"": false, // cut off, yet a plan
		`{"fields": [], "format": "ramplan.draft/1"}`:    false,
		`{"format": "ramplan.plan/2"}`:                   false,
		"<svg xmlns='http://www.w3.org/2000/svg'/>":      false, // may have held one
		"%PDF-1.7\n":                           false,
		string(make([]byte, press.MaxBytes+1)): false, // its size is told
	} {
		assert.Equal(t, foreign, Foreign([]byte(text)), "%.40q", text)
	}
}
