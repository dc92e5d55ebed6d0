package web

import (
	"net/http"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/net/html"
)

// picked gives, by the text of its row's head, the side that is picked.
func picked(group *html.Node) map[string]string {
	out := map[string]string{}
	for _, row := range elements(group, "tr") {
		for _, in := range elements(row, "input") {
			if has(in, "checked") {
				out[text(elements(row, "th")[0])] = attr(in, "value")
			}
		}
	}
	return out
}

// TestChoiceTellsWhoChangedWhat: what only one window changed is listed as such
// and picked already, also when the other window saved more than once, in the
// same field within a moment.
func TestChoiceTellsWhoChangedWhat(t *testing.T) {
	one := start(t)
	one.typeIn("motion.clearance", "0.9")
	one = one.press("recompute")
	two := one.get(benchPath)
	for _, nest := range []string{"141", "142"} {
		one.typeIn("station.nest", nest)
		one.typeIn("title.owner", "first window")
		one = one.press("recompute")
		require.Equal(t, http.StatusOK, one.status)
	}
	two.typeIn("title.owner", "second window")
	two.typeIn("title.number", "WS-299")
	two.typeIn("ram.moving_mass", "2,4 kg")
	two = two.press("recompute")
	require.Equal(t, http.StatusConflict, two.status)
	two = two.press("recompute") // asked again: it still starts from there
	require.Equal(t, http.StatusConflict, two.status)

	choice := two.press("choose")
	require.Equal(t, http.StatusOK, choice.status)
	var heads []string
	var sides []map[string]string
	for _, g := range elements(choice.byID("main"), "tbody") {
		heads = append(heads, text(elements(g, "th")[0]))
		sides = append(sides, picked(g))
	}
	assert.Equal(t, []string{"Changed in both windows", "Changed in this window only", "Changed in the other window only"}, heads)
	assert.Equal(t, []map[string]string{{"Title: legal owner": "mine"}, {"Title: number": "mine"}, {"Station: nest": "theirs"}}, sides)
	assert.Contains(t, plainSpaces(text(choice.byID("main"))), "Station: nest140 mm", "what both started from")

	one.typeIn("station.nest", "143")
	one.press("recompute")
	again := choice.send("/plans/1/choice", "picked", nil)
	assert.Contains(t, text(again.byID("main")), "changed once more")
	assert.Len(t, elements(again.byID("main"), "tbody"), 3, "who changed what is still known")

	for i, in := range again.inputs {
		if in.name == ":state" {
			again.inputs[i].value = "99"
		}
	}
	one.typeIn("station.nest", "144")
	one.get(benchPath).press("recompute")
	one = one.get(benchPath)
	one.typeIn("station.nest", "145")
	one.press("recompute")
	unknown := again.send("/plans/1/choice", "picked", nil)
	require.Len(t, elements(unknown.byID("main"), "tbody"), 1, "without what both started from, side by side")
}
