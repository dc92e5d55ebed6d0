package draw

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw/drawtest"
	"ramplan/press/words"
)

// TestCardShowsTheFirstLook: with a probe the card has the lamps of the first look as rows,
// each with what is done, before the pairs of the second; with one look it has none. Every
// row that the reaction plan has is on it.
func TestCardShowsTheFirstLook(t *testing.T) {
	data, err := os.ReadFile("../../static/examples/pivot-bush.json")
	require.NoError(t, err)
	p, ps := press.Decode(data)
	require.Empty(t, ps)
	r := press.Evaluate(p)
	for _, revision := range []string{"", "B"} {
		d := NewCardOf(p, r, words.IdentityOf(p, r, revision, ""), Options{})
		labelsApart(t, d, "card with two looks")
	}
	c := layCard(p, r, words.IdentityOf(p, r, "", ""), ownChecks(p, r), CardCapitals, 0)
	require.Len(t, c.first.rows, 3)
	seen := map[words.Pair]string{}
	y := c.first.top
	for _, row := range c.first.rows {
		assert.Greater(t, row.top, y)
		y = row.top
		assert.LessOrEqual(t, len(row.body.Lines), 2)
		for _, arrival := range []string{words.OnOff(true), words.OnOff(false)} {
			if row.text.Arrival == "" || row.text.Arrival == arrival {
				seen[words.Pair{Arrival: arrival == words.OnOff(true), Zone: row.text.Zone == words.OnOff(true)}] = row.text.Verdict
			}
		}
	}
	assert.Less(t, y, c.whenTop)
	require.Len(t, seen, 4, "every pair of lamps has a row")
	for on, verdict := range seen {
		assert.Equal(t, say.AtFirstLook(p, r, on, words.One).GoesOn, verdict == "GO ON", on.String())
	}
	text := strings.Join(cardTexts(NewCard(p, r, Options{})), "|")
	for _, part := range []string{words.CardFirstHead, "GO ON", "REFUSED", "either", "The press follows by itself. Keep out.", "Second look, at the end of the push"} {
		assert.Contains(t, text, part)
	}
	plain := drawtest.Example(t, nil)
	assert.NotContains(t, strings.Join(cardTexts(NewCard(plain, press.Evaluate(plain), Options{})), "|"), "GO ON")
}
