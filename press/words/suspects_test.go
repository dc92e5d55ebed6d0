package words

import (
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// hints are words in what is said of a pair, and the row of the catalogue that
// they speak of.
var hints = map[string]string{
	"a chip": press.RowChip, "chip?": press.RowChip, "second insert": press.RowTwoInserts, "tight": press.RowTight, "tight?": press.RowTight,
	"off its seat": press.RowGap, "worn nest": press.RowNestWorn, "nest worn": press.RowNestWorn, "is there an insert": press.RowMissing, "test the arrival input": press.RowArrivalStuckOff,
}

// No hint names a fault that the plan's own catalogue shows with other lamps. Over
// 300 variations of the example: parts, window, sizes of the faults. Derived: from
// the rows of the result alone.
func TestHintsFollowTheCatalogue(t *testing.T) {
	rng := rand.New(rand.NewPCG(4, 2))
	num := func(low, high float64) string { return strconv.FormatFloat(low+(high-low)*rng.Float64(), 'f', 3, 64) }
	told, named := 0, map[string]bool{}
	for n := range 300 {
		c := changes{"faults.chip": num(0, 0.3), "faults.gap": num(0, 0.3), "faults.nest_wear": num(0, 0.3)}
		if n%2 == 0 {
			c["window.push_stroke"], c["window.zone_start"] = num(7.3, 8.6), num(114.6, 115.2)
			c["window.zone_end"] = num(115.21, 115.6)
		}
		if n%3 == 0 { // a low insert: the second one is met in the push
			c["window.approach_end"] = num(60, 100)
			c["window.push_stroke"] = num(15, 55)
		}
		if n%5 == 0 { // what is missing is not missed: some lamps mean too short alone
			c["parts[1].insert"], c["parts[2].insert"] = "false", "true"
		}
		p := example(t, c)
		r := press.Evaluate(p)
		if r.Verdict == nil {
			continue
		}
		said := map[Pair][]string{}
		for _, q := range PairTexts(p, r) {
			said[q.Pair] = append(said[q.Pair], q.Do, CardCheck(q))
		}
		for _, x := range Reactions(p, r) {
			require.NotEmpty(t, x.Checks)
			require.Len(t, x.Asked, len(x.Checks))
			said[x.Pair] = append(said[x.Pair], x.Checks...)
		}
		for on, list := range said {
			for _, text := range list {
				for hint, name := range hints {
					row, ok := catalogued(r, name)
					if !ok || !strings.Contains(strings.ToLower(text), hint) {
						continue
					}
					told++
					named[name] = true
					assert.True(t, shows(row, on), "plan %d: %q is said of %s, but %s is %s (%v, %v)", n, text, on, name, row.Verdict, row.Arrival, row.Zone)
				}
			}
		}
		if t.Failed() {
			return
		}
	}
	assert.Greater(t, told, 1000)
	assert.Len(t, named, 7, "every kind of hint came up: %v", named)
}

// The example's second insert is met in the approach: no lamps belong to it, and
// the card says so.
func TestTwoInsertsMetEarly(t *testing.T) {
	p := example(t, nil)
	r := press.Evaluate(p)
	row, ok := catalogued(r, press.RowTwoInserts)
	require.True(t, ok)
	require.Equal(t, press.EarlyContact, row.Verdict)
	for _, x := range Reactions(p, r) {
		for _, c := range x.Checks {
			assert.NotContains(t, c, "second insert")
		}
	}
	assert.Contains(t, CardUnseen(p, r), "two inserts")
	assert.Equal(t, "Chip? Tilted? Tight?", CardCheck(PairTexts(p, r)[1]))
}
