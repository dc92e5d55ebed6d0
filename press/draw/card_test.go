package draw

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
	"ramplan/press/draw/drawtest/grey"
	"ramplan/press/draw/typeset"
	"ramplan/press/words"
)

// TestCards: no label of a card touches another or leaves the paper, for every
// kind of plan and random ones; the words keep to their height.
func TestCards(t *testing.T) {
	look := func(name string, p *press.Plan) {
		r := press.Evaluate(p)
		for _, revision := range []string{"", "B"} {
			d := NewCardOf(p, r, words.IdentityOf(p, r, revision, ""), Options{})
			labelsApart(t, d, "card of "+name)
			w, h := d.Size()
			assert.InDelta(t, 210, w/canvas.PerMM, 1e-9, "A4")
			assert.InDelta(t, 297, h/canvas.PerMM, 1e-9, "A4, with what is said of the typeface")
		}
		c := layCard(p, r, words.IdentityOf(p, r, "", ""), ownChecks(p, r), cardCapitalsLeast, 0)
		assert.LessOrEqual(t, c.end, typeset.UprightHeight-cardMargin-cardFoot, name)
	}
	for name, p := range drawtest.Plans(t) {
		look(name, p)
	}
	random := rand.New(rand.NewPCG(21, 6))
	for n := 0; n < 100; {
		if p, ok := drawtest.RandomPlan(t, random); ok {
			n++
			look(fmt.Sprint("plan ", n), p)
		}
	}
}

// The verdicts on the card of an unambiguous plan have capitals of at least 1/300 of
// two metres, what to do 6 mm, the lists under them 5 mm: our own measure (common
// practice, no source). The lowest line stands at the foot: the page is used.
func TestCardIsReadFromTwoMetres(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	c := layCard(p, r, words.IdentityOf(p, r, "A", ""), ownChecks(p, r), CardCapitals, 0)
	assert.LessOrEqual(t, c.end, typeset.UprightHeight-cardMargin-cardFoot)
	assert.InDelta(t, CardCapitals, c.size*1409/2048/canvas.PerMM, 1e-9)

	d := NewCard(p, r, Options{})
	lowest := 0.0
	sizes := map[string]float64{}
	for _, l := range d.Texts() {
		sizes[l.Text] = l.Style.Size / canvas.Lettered(1)
		if l.Y1 < typeset.UprightHeight-cardMargin-cardFoot {
			lowest = max(lowest, l.Y1)
		}
	}
	for _, text := range []string{"GOOD", "TOO TALL", "TOO SHORT or NO INSERT", "FAULT"} {
		assert.GreaterOrEqual(t, sizes[text], 2000.0/300, text)
	}
	assert.GreaterOrEqual(t, sizes["Set apart. Do not press again."], CardCapitals)
	assert.GreaterOrEqual(t, sizes["Passed: 24.990 to 25.014. Between: either way."], 5.0)
	assert.Greater(t, lowest, 0.93*typeset.UprightHeight, "the foot of the page is empty")
	assert.Contains(t, sizes, "Limit samples: seated height above the nest, mm")
	assert.Contains(t, sizes, "Bearing sleeve into anemometer hub", "a title that fits when it is smaller is not cut")
}

// TestCardIsBlackAndWhite: a card has no grey that a printer would make dots of.
func TestCardIsBlackAndWhite(t *testing.T) {
	p := drawtest.Example(t, nil)
	d := NewCard(p, press.Evaluate(p), Options{})
	list, _ := grey.Of(d)
	for _, q := range list {
		assert.True(t, q.Ink.Opacity == 1 && (q.Ink.Name == canvas.Black.Name || q.Ink.Name == canvas.Paper.Name), "%s at %v", q.Ink.Name, q.Ink.Opacity)
	}
}

// A card says what a plan means, and that a draft or a blocked plan is none to
// judge parts by.
func TestCardSays(t *testing.T) {
	p := drawtest.Example(t, nil)
	r := press.Evaluate(p)
	text := strings.Join(cardTexts(NewCard(p, r, Options{})), " ")
	for _, part := range []string{"GOOD", "TOO TALL", "TOO SHORT or NO INSERT", "FAULT", "DRAFT", "25.100", "24.904", "loose fit", "Never a hand", "no safety function", words.WhenRead, "Between: either way", "Stop. No part leads to this."} {
		assert.Contains(t, text, part)
	}
	assert.NotContains(t, strings.Join(cardTexts(NewCardOf(p, r, words.IdentityOf(p, r, "A", ""), Options{})), " "), "DRAFT")
	blocked := drawtest.Example(t, drawtest.Changes{"window.zone_start": "115.3", "window.zone_end": "115.4"})
	stopped := press.Evaluate(blocked)
	assert.Contains(t, strings.Join(cardTexts(NewCardOf(blocked, stopped, words.IdentityOf(blocked, stopped, "A", ""), Options{})), " "), "NOT READY")
}

// The plan's own first check takes the place of the usual one; a long one is cut,
// and says so.
func TestCardOwnChecks(t *testing.T) {
	p := drawtest.Example(t, drawtest.Changes{
		"quality.reactions[0].lamps": "on-off", "quality.reactions[0].when": "one", "quality.reactions[0].check": "Ring the bell.",
		"quality.reactions[1].lamps": "off-on", "quality.reactions[1].when": "one", "quality.reactions[1].check": strings.Repeat("fetch the setter ", 11),
	})
	d := NewCard(p, press.Evaluate(p), Options{})
	labelsApart(t, d, "card with own checks")
	texts := strings.Join(cardTexts(d), "|")
	assert.Contains(t, texts, "Ring the bell.")
	assert.Contains(t, texts, " …")
	assert.NotContains(t, texts, "Chip?")
}
