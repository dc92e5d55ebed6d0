package words

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// TestOneIn: a small share is said so that one can picture it. By hand.
func TestOneIn(t *testing.T) {
	for _, c := range []struct {
		share        float64
		words, table string
	}{
		{0.417, "41.7 % of the cases", "41.7 %"},
		{0.00007, "about 1 of 14 000 cases", "1 in 14 000"},
		{0.004, "about 1 of 250 cases", "1 in 250"},
		{1e-9, "fewer than 1 of 1 000 000 cases", "< 0.0001 %"},
		{0, "no case", "0 %"},
		{0.99992, "all but about 1 of 13 000 cases", "99.992 %"}, // 12 500, to two digits
		{1, "every case, as far as can be computed", "100 %"},
	} {
		assert.Equal(t, c.words, plain(say.OneIn(c.share)), c.share)
		assert.Equal(t, c.table, plain(Rarely(c.share)), c.share)
	}
}
