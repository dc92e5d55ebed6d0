package drill

import (
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// codes are invented.
var codes = []Code{
	{Role: Technician, Passed: true, Revision: "B", Digest: "3f2a91c07b4d", Right: 17, Items: 20, Needed: 16, Seed: 1_000_003, Took: 412 * time.Second, Day: "2026-11-28", Who: "A. Weber"},
	{Role: Setter, OverTime: true, Grave: true, Digest: "000000000000", Right: 3, Items: 20, Needed: 16, Seed: 1_000_000, Took: 3 * time.Hour, Day: "2026-01-02", Who: "Δημήτρης Lang-Ovid"},
	{Level: 4, Revision: "AA", Digest: "ffffffffffff", Right: 12, Items: 18, Seed: 1_000_007, Took: 90 * time.Second, Day: "2027-12-31", Who: "4711"},
}

func asciiLower(s string) string {
	return strings.Map(func(r rune) rune {
		if r >= 'A' && r <= 'Z' {
			r += 'a' - 'A'
		}
		return r
	}, s)
}

func TestCodes(t *testing.T) {
	for _, c := range codes {
		got, err := ParseCode(c.String())
		require.NoError(t, err, c.String())
		assert.Equal(t, c, got)
		// Blanks, the kind of dash and small letters (of ASCII) do not matter.
		text := c.String()
		loose := asciiLower(strings.Replace(strings.Replace(text, "-", " – ", 3), "/", " / ", 1))
		got, err = ParseCode("  " + loose + " ")
		require.NoError(t, err, loose)
		c.Who, got.Who = asciiUpper(c.Who), asciiUpper(got.Who)
		assert.Equal(t, c, got)
	}
	// By hand: the sum of "A B" with the weight 31: (65·31 + 32)·31 + 66 = 63523, less 6 · 9973.
	assert.Equal(t, "3685", checkFigure("A B"))
}

// No single wrong character, and no exchange of two neighbours, is taken for another
// record. Derived: the check is a sum modulo a prime with a weight that is not 0 or 1.
func TestMistypedCodes(t *testing.T) {
	tried := 0
	for _, c := range codes {
		right := []rune(c.String())
		try := func(r []rune) {
			wrong := string(r)
			if strings.EqualFold(wrong, string(right)) || strings.Join(strings.Fields(wrong), " ") == string(right) {
				return
			}
			tried++
			got, err := ParseCode(wrong)
			if err == nil && asciiUpper(got.String()) != asciiUpper(string(right)) {
				t.Errorf("%s was taken, in place of %s", wrong, string(right))
			}
		}
		for i := range right {
			for _, other := range "0123456789ABCDEFGSTP-/ x" {
				r := append([]rune{}, right...)
				r[i] = other
				try(r)
			}
			try(append(append([]rune{}, right[:i]...), right[i+1:]...))
			if i > 0 {
				r := append([]rune{}, right...)
				r[i], r[i-1] = r[i-1], r[i]
				try(r)
			}
		}
	}
	assert.Greater(t, tried, 4000)
	for _, text := range []string{"", "hello", "E-P", codes[0].String()[:40]} {
		_, err := ParseCode(text)
		assert.ErrorIs(t, err, ErrNoCode, text)
	}
}

// What cannot be is refused although its check figure fits: a pass below the mark, more
// right than asked, a day that no month has.
func TestImpossibleCodes(t *testing.T) {
	for _, change := range []func(*Code){
		func(c *Code) { c.Right = 15 },
		func(c *Code) { c.Right = 21 },
		func(c *Code) { c.Items, c.Right, c.Needed = 0, 0, 0 },
		func(c *Code) { c.Day = "2026-02-30" },
		func(c *Code) { c.Passed = false },
	} {
		c := codes[0]
		change(&c)
		_, err := ParseCode(c.String())
		assert.ErrorIs(t, err, ErrCodeSense, c.String())
	}
}
