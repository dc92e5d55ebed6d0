package web

import (
	"net/http"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// plainSpaces writes a text with plain single spaces.
func plainSpaces(s string) string {
	return strings.Join(strings.Fields(strings.NewReplacer("\u202f", " ", "\u00a0", " ").Replace(s)), " ")
}

// TestRamSaysWhatChanged: the note of a newer ram tells what it would change here,
// by what the entries mean, and nothing where that is nothing.
func TestRamSaysWhatChanged(t *testing.T) {
	s := start(t)
	putOnShelf(s, "Ram 2")
	s.get("/plans/1/ram").send("/plans/1/ram", "take 1", nil)
	other := s.send("/plans", "example", nil)
	other.typeIn("ram.moving_mass", "2,4 kg")
	other.typeIn("ram.stroke", "198")
	other.typeIn("ram.curve.points[0][1]", "399,5")
	require.Equal(t, http.StatusOK, other.press("recompute").status)
	one := s.get("/rams/1")
	one.say("ram.plan", "2")
	one.send("/rams/1", "anew", nil)

	held := s.get(benchPath)
	told := plainSpaces(text(held.byID("ramnews")))
	assert.Contains(t, told, "Ram: stroke was 150 mm → is 198 mm")
	assert.Contains(t, told, "Curve 1 point changed")
	assert.NotContains(t, told, "moving mass", "2,4 kg is 2.4")
	assert.NotContains(t, told, "opied as")
	held.typeIn("ram.stroke", "198,0")
	held.typeIn("ram.curve.points[0][1]", "399.5")
	assert.Contains(t, text(held.press("recompute").byID("ramnews")), "What it holds now is what this plan holds.")
	assert.Contains(t, text(s.get(benchPath).byID("f-ram-shelf_name")), "No longer follow the shelf's ram")

	figures := plainSpaces(text(s.get("/rams/1").byID("ramfigures")))
	assert.Contains(t, figures, "Moving mass2.4 kg", "as read")
	assert.Contains(t, figures, "399.5")
	assert.Contains(t, figures, "Figures are changed in a plan")
}

// TestPlansToTakeFiguresFrom: plans of one name are told apart.
func TestPlansToTakeFiguresFrom(t *testing.T) {
	s := start(t)
	putOnShelf(s, "Ram 2")
	issued(s.get("/plans/1/revisions"), "1", signing("First issue"))
	s.send("/plans", "example", nil)
	var labels []string
	for _, o := range elements(s.get("/rams/1").byID("anew"), "option") {
		labels = append(labels, text(o))
	}
	require.Len(t, labels, 2)
	assert.Regexp(t, `^WS-210, nothing issued, changed \d{4}-\d\d-\d\d \d\d:\d\d: .`, labels[0])
	assert.Regexp(t, `^WS-210, revision A, changed \d{4}-`, labels[1])
}

// TestEarlierFigures: after figures were taken anew, what was said of the earlier
// ones is marked as such.
func TestEarlierFigures(t *testing.T) {
	s := start(t)
	putOnShelf(s, "Ram 2")
	one := s.get("/rams/1")
	one.say("ram.plan", "1")
	anew := one.send("/rams/1", "anew", nil)
	assert.Contains(t, text(anew.byID("main")), "was said of the earlier figures: look at it")
	for _, id := range []string{"shelf-source-n", "shelf-measured-n", "shelf-method-n"} {
		assert.Contains(t, text(anew.byID(id)), "Said of the earlier figures.", id)
	}
	assert.NotContains(t, text(anew.byID("shelf-notes-n")), "earlier figures")
	saved := anew.send("/rams/1", "save", nil)
	assert.NotContains(t, text(saved.byID("main")), "earlier figures")
	for _, path := range []string{"source", "measured", "method"} {
		saved.say("shelf."+path, "")
	}
	saved.say("ram.plan", "1")
	bare := saved.send("/rams/1", "anew", nil)
	assert.Contains(t, text(bare.byID("main")), "The figures were taken anew.")
	assert.NotContains(t, text(bare.byID("main")), "earlier figures", "nothing was said of them")
}
