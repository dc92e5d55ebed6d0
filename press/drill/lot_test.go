package drill

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/words"
	"ramplan/static"
)

// TestOnlyANewLotIsMeasuredAsOne: where a check of a new lot may be chosen, a new lot came,
// and no tool was changed.
func TestOnlyANewLotIsMeasuredAsOne(t *testing.T) {
	p, faults := press.Decode(static.Example())
	require.Empty(t, faults)
	r := press.Evaluate(p)
	d, err := New(words.Printer{}, p, r, words.Reactions(p, r))
	require.NoError(t, err)
	rng, met := rand.New(rand.NewPCG(7, 7)), 0
	for _, x := range d.list {
		for _, pair := range d.say.PairTexts(p, r) {
			if pair.Pair != x.Pair {
				continue
			}
			for step := range x.Asked {
				for range 20 {
					e := d.react(rng, pair, x, step)
					for _, c := range e.Choices {
						if words.OfNewLot(c.Text) && x.Situation == words.Change {
							met++
							assert.Contains(t, e.Facts, d.say.NewLot())
						}
					}
				}
			}
		}
	}
	assert.Positive(t, met)
}
