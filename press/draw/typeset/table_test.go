package typeset

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"pgregory.net/rapid"
)

// TestStretches: rows that stand beside each other are all there, in order, no
// stretch is higher than the room, and those of the last page are about even.
func TestStretches(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var rows []Row
		for i := range rapid.IntRange(0, 60).Draw(t, "rows") {
			rows = append(rows, Row{Height: rapid.Float64Range(5, 40).Draw(t, "height"), Same: i})
		}
		abreast, room := rapid.IntRange(1, 3).Draw(t, "abreast"), rapid.Float64Range(40, 900).Draw(t, "room")
		at := 0
		for rest := rows; len(rest) > 0; {
			var shown [][]Row
			var high float64
			shown, high, rest = Stretches(rest, abreast, room)
			if high > room+0.1 || len(shown) > abreast || len(shown) == 0 {
				t.Fatalf("%d stretches, %v high", len(shown), high)
			}
			all := 0.0
			for _, s := range shown {
				deep := 0.0
				for _, r := range s {
					if r.Same != at {
						t.Fatalf("row %d stands where %d should", r.Same, at)
					}
					at++
					deep += r.Height
				}
				all += deep
			}
			if len(rest) == 0 && high > all/float64(abreast)+60 {
				t.Fatalf("a last page of %v is %v high", all, high)
			}
		}
		if at != len(rows) {
			t.Fatalf("%d of %d rows", at, len(rows))
		}
	})
	shown, high, rest := Stretches(nil, 2, 100)
	assert.Empty(t, shown)
	assert.Zero(t, high)
	assert.Empty(t, rest)
}
