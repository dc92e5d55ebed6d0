package draw

import (
	"bytes"
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
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
			assert.InDelta(t, 210, w/pxPerMM, 1e-9, "A4")
			assert.InDelta(t, 297, h/pxPerMM, 1e-9, "A4, with what is said of the typeface")
		}
		c := layCard(p, r, words.IdentityOf(p, r, "", ""), ownChecks(p, r), cardCapitalsLeast, 0)
		assert.LessOrEqual(t, c.end, cardHeight-cardMargin-cardFoot, name)
	}
	for name, p := range plans(t) {
		look(name, p)
	}
	random := rand.New(rand.NewPCG(21, 6))
	for n := 0; n < 100; {
		if p, ok := randomPlan(t, random); ok {
			n++
			look(fmt.Sprint("plan ", n), p)
		}
	}
}

// The verdicts on the card of an unambiguous plan have capitals of at least 1/300 of
// two metres, what to do 6 mm, the lists under them 5 mm: our own measure (common
// practice, no source). The lowest line stands at the foot: the page is used.
func TestCardIsReadFromTwoMetres(t *testing.T) {
	p := example(t, nil)
	r := press.Evaluate(p)
	c := layCard(p, r, words.IdentityOf(p, r, "A", ""), ownChecks(p, r), CardCapitals, 0)
	assert.LessOrEqual(t, c.end, cardHeight-cardMargin-cardFoot)
	assert.InDelta(t, CardCapitals, c.size*1409/2048/pxPerMM, 1e-9)

	d := NewCard(p, r, Options{})
	w, h := d.Size()
	lowest := 0.0
	sizes := map[string]float64{}
	for _, l := range d.on(newSVG(w, h)) {
		sizes[l.text] = l.style.size / capital(1)
		if l.y1 < cardHeight-cardMargin-cardFoot {
			lowest = max(lowest, l.y1)
		}
	}
	for _, text := range []string{"GOOD", "TOO TALL", "TOO SHORT or NO INSERT", "FAULT"} {
		assert.GreaterOrEqual(t, sizes[text], 2000.0/300, text)
	}
	assert.GreaterOrEqual(t, sizes["Set apart. Do not press again."], CardCapitals)
	assert.GreaterOrEqual(t, sizes["Passed: 24.990 to 25.014. Between: either way."], 5.0)
	assert.Greater(t, lowest, 0.93*cardHeight, "the foot of the page is empty")
	assert.Contains(t, sizes, "Limit samples: seated height above the nest, mm")
	assert.Contains(t, sizes, "Bearing sleeve into anemometer hub", "a title that fits when it is smaller is not cut")
}

// TestCardIsBlackAndWhite: a card has no grey that a printer would make dots of.
func TestCardIsBlackAndWhite(t *testing.T) {
	p := example(t, nil)
	d := NewCard(p, press.Evaluate(p), Options{})
	w, h := d.Size()
	m := newMarks(w, h)
	d.draw(m, h)
	for _, q := range m.list {
		assert.True(t, q.ink.opacity == 1 && (q.ink.name == black.name || q.ink.name == paper.name), "%s at %v", q.ink.name, q.ink.opacity)
	}
}

// A card says what a plan means, and that a draft or a blocked plan is none to
// judge parts by.
func TestCardSays(t *testing.T) {
	p := example(t, nil)
	r := press.Evaluate(p)
	text := strings.Join(cardTexts(NewCard(p, r, Options{})), " ")
	for _, part := range []string{"GOOD", "TOO TALL", "TOO SHORT or NO INSERT", "FAULT", "DRAFT", "25.100", "24.904", "loose fit", "Never a hand", "no safety function", words.WhenRead, "Between: either way", "Stop. No part leads to this."} {
		assert.Contains(t, text, part)
	}
	assert.NotContains(t, strings.Join(cardTexts(NewCardOf(p, r, words.IdentityOf(p, r, "A", ""), Options{})), " "), "DRAFT")
	blocked := example(t, changes{"window.zone_start": "115.3", "window.zone_end": "115.4"})
	stopped := press.Evaluate(blocked)
	assert.Contains(t, strings.Join(cardTexts(NewCardOf(blocked, stopped, words.IdentityOf(blocked, stopped, "A", ""), Options{})), " "), "NOT READY")
}

// The plan's own first check takes the place of the usual one; a long one is cut,
// and says so.
func TestCardOwnChecks(t *testing.T) {
	p := example(t, changes{
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

func cardTexts(d *Picture) []string {
	w, h := d.Size()
	var out []string
	for _, l := range d.on(newSVG(w, h)) {
		out = append(out, l.text)
	}
	return out
}

func TestRecordSheet(t *testing.T) {
	r := Record{
		Who: "Learner 7", When: time.Date(2026, 3, 4, 10, 5, 0, 0, time.UTC), Plan: "Bearing sleeve into anemometer hub", Number: "WS-210",
		Revision: "B", Digest: "sha256:0123456789abcdef", Seed: 42, Items: 20, Right: 17, Needed: 16, Took: 432 * time.Second, Limit: 15 * time.Minute, Passed: true,
		Missed: []RecordMiss{{"Which lamps does a missing insert show?", "Arrival on, zone on", "Arrival off, zone on", 4, true}, {"Would the two lamps find this: Loose fit?", "no answer", "Hardly ever, or never", 7, false}, {Question: strings.Repeat("a long question ", 20)}},
	}
	d := NewRecord(r, Options{}).Whole()
	require.Len(t, NewRecord(r, Options{}).Pages(), 1)
	assert.Equal(t, cardTexts(d), cardTexts(NewRecord(r, Options{}).Pages()[0]))
	labelsApart(t, d, "record")
	text := strings.Join(cardTexts(d), " ")
	for _, part := range []string{"Learner 7", "2026-03-04 10:05", "WS-210", "B", "0123456789ab", "42", "17 of 20 right; 16 needed", "7\u202fmin 12\u202fs", "Passed", "Loose fit", "Answered: no answer. Right: Hardly ever, or never.", "Learner", "Trainer", "2026-03-04 10:05 UTC+00:00", "Exam of everything"} {
		assert.Contains(t, text, part)
	}
	for range 200 {
		r.Missed = append(r.Missed, RecordMiss{Question: "one more that was missed"})
	}
	assert.NotContains(t, text, "seen set")
	r.Passed, r.OverTime, r.Repeat, r.Revision = false, true, true, ""
	r.Who = strings.Repeat("very long name ", 14)
	d = NewRecord(r, Options{}).Whole()
	labelsApart(t, d, "record with many misses")
	text = strings.Join(cardTexts(d), " ")
	assert.Contains(t, text, "Not passed: over the time")
	assert.Contains(t, text, "draft, not issued")
	r.As, r.Grave = "A", []string{"a refused part was passed on", "answered that work may go on after a fault"} // the first as an older program worded it
	d = NewRecord(r, Options{}).Whole()
	labelsApart(t, d, "record of who passed on a refused part")
	text = strings.Join(cardTexts(d), " ")
	assert.Contains(t, text, "Not passed: over the time; answered that a refused part may be passed on; that work may go on after a fault")
	assert.Contains(t, text, "draft that became revision A")
	d = NewRecord(Record{Who: "Ada", Grave: []string{"a refused part was passed on"}}, Options{}).Whole()
	assert.Contains(t, strings.Join(cardTexts(d), " "), "Not passed: answered that a refused part may be passed on")
	d = NewRecord(Record{Who: "Ada", Exam: "setter", Unfinished: true, Answered: 7, Items: 20}, Options{}).Whole()
	labelsApart(t, d, "record of an exam that was left")
	left := strings.Join(cardTexts(d), " ")
	for _, part := range []string{"Not finished", "7 of 20 answered, nothing judged", "Setter's exam", "begun and left"} {
		assert.Contains(t, left, part)
	}
	assert.NotContains(t, left, "Nothing was missed")
	assert.Contains(t, text, "42: repeat of a seen set")
	assert.Equal(t, 200, strings.Count(text, "one more that was missed"))
	var pdf bytes.Buffer
	require.NoError(t, NewRecord(r, Options{}).Write(&pdf, "pdf"))
}

// Everything that was missed is printed, on as many pages as it takes, each once and each
// page saying whose it is; what alone failed an exam stands on the page that is signed.
func TestEveryMissIsPrinted(t *testing.T) {
	r := Record{Who: "Ada", Number: "WS-210", Digest: "sha256:0123456789abcdef", Needed: 16, Items: 30}
	for i := range 30 {
		r.Missed = append(r.Missed, RecordMiss{Question: fmt.Sprintf("Question <%d> ", i+1) + strings.Repeat("A question with a long situation. ", 7), Given: "An answer", Right: "Another", Number: i + 1, Alone: i == 29})
	}
	sheet := NewRecord(r, Options{})
	pages := sheet.Pages()
	require.Greater(t, len(pages), 1)
	all := ""
	for i, page := range pages {
		labelsApart(t, page, fmt.Sprintf("record, page %d", i+1))
		text := strings.Join(cardTexts(page), " ")
		assert.Contains(t, text, "Ada")
		assert.Contains(t, text, "0123456789ab")
		assert.Contains(t, text, fmt.Sprintf("age %d of %d", i+1, len(pages)))
		all += text
	}
	whole := strings.Join(cardTexts(sheet.Whole()), " ")
	labelsApart(t, sheet.Whole(), "record in one picture")
	for i := range 30 {
		name := fmt.Sprintf("Question <%d>", i+1)
		assert.Equal(t, 1, strings.Count(all, name), name)
		assert.Equal(t, 1, strings.Count(whole, name), name)
	}
	assert.Contains(t, strings.Join(cardTexts(pages[0]), " "), "Question <30>")
	var pdf bytes.Buffer
	require.NoError(t, sheet.Write(&pdf, "pdf"))
	assert.Equal(t, len(pages), strings.Count(pdf.String(), "/Type /Page\n"))
	assert.Equal(t, 1, r.Missed[0].Number, "the record given is left alone")
}
