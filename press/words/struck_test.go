package words

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// allOf joins everything that a page says.
func allOf(t Table) string {
	s := t.Lead + "\n" + strings.Join(t.Notes, "\n")
	for _, row := range t.Rows {
		s += "\n" + strings.Join(row, "|")
	}
	return s
}

// TestNobodyIsSentToTryAStrike: no page invites to try what the approach strikes;
// the strike and what may be borne stand with it (derived: the example strikes with
// 4708 N, its parts bear 2900 N, impact and force of the result).
func TestNobodyIsSentToTryAStrike(t *testing.T) {
	p := decoded(t)
	r := press.Evaluate(p)
	for _, name := range PaperNames() {
		table, _ := Paper(name, p, r)
		for _, wrong := range []string{"Try it", "try it on"} {
			assert.NotContains(t, allOf(table), wrong, name)
		}
	}
	failures, _ := Paper("failures", p, r)
	assert.Contains(t, allOf(failures), "the approach strikes it with at least 4708\u202fN, where part and tool may bear 2900\u202fN. Do not try it;")
	assert.Contains(t, strings.Join(Unseen(p, r), "\n"), "Two inserts: the approach strikes them.")
	assert.NotContains(t, Phase(press.PhaseStruck).Meaning, "try")

	assert.Contains(t, allOf(failures), "|Not by the two signals alone: the reading rule finds it.|0\u202f%")

	gentle := decoded(t, `"max_force": 2900`, `"max_force": 5000`)
	g := press.Evaluate(gentle)
	require.True(t, struckTwice(g))
	assert.Empty(t, say.overStrike(g))
	failures, _ = Paper("failures", gentle, g)
	assert.Contains(t, allOf(failures), "the approach strikes it. Another check is needed.")
	assert.NotContains(t, allOf(failures), "Do not try it")
}
