package drafts

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

func TestTypedDigest(t *testing.T) {
	for typed, want := range map[string]string{
		"3fa90b12cd7e":             "3fa90b12cd7e",
		" 3FA9 0B12 CD7E ":         "3fa90b12cd7e",
		"3fa9-0b12-cd7e":           "3fa90b12cd7e",
		"3fa9Ob l2cd7e":            "3fa90b12cd7e",
		"sha256:3fa90b12cd7e…":     "3fa90b12cd7e",
		"SHA256: 3fa90b12cd7e":     "3fa90b12cd7e",
		"3fa90b12cd7":              "", // eleven
		"":                         "",
		"bearing sleeve":           "",
		"WS-210 000000000000":      "",
		strings.Repeat("3fa9", 17): "", // more than a digest has
		strings.Repeat("3fa9", 16): strings.Repeat("3fa9", 16),
	} {
		got, ok := TypedDigest(typed)
		assert.Equal(t, want != "", ok, typed)
		if ok {
			assert.Equal(t, want, got, typed)
		}
	}
}
