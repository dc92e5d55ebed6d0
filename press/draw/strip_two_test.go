package draw

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
)

// TestAlike (derived by hand).
func TestAlike(t *testing.T) {
	for _, c := range []struct{ a, b, wantA, wantB press.Pair }{
		{press.Pair{10, 12}, press.Pair{10.5, 12.5}, press.Pair{10, 12.5}, press.Pair{10, 12.5}},
		{press.Pair{10, 12}, press.Pair{20, 21}, press.Pair{10, 12}, press.Pair{19.5, 21.5}},
		{press.Pair{10, 11}, press.Pair{10, 11}, press.Pair{10, 11}, press.Pair{10, 11}},
	} {
		a, b := alike(c.a, c.b)
		assert.Equal(t, c.wantA, a)
		assert.Equal(t, c.wantB, b)
	}
}
