package paper

import (
	"bytes"
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press/draw"
	"ramplan/press/training"
)

func TestRecordSheet(t *testing.T) {
	r := Record{Record: training.Record{
		Who: "Learner 7", At: time.Date(2026, 3, 4, 10, 5, 0, 0, time.UTC), Name: "Bearing sleeve into anemometer hub", Number: "WS-210",
		Revision: "B", Digest: "sha256:0123456789abcdef", Seed: 42, Items: 20, Right: 17, Needed: 16, Took: 432 * time.Second, Limit: 15 * time.Minute, Passed: true,
		Misses: []training.Miss{
			{Question: "Which lamps does a missing insert show?", Given: "Arrival on, zone on", Right: "Arrival off, zone on", Number: 4, Alone: true},
			{Question: "Would the two lamps find this: Loose fit?", Given: "no answer", Right: "Hardly ever, or never", Number: 7},
			{Question: strings.Repeat("a long question ", 20)},
		},
	}}
	d := NewRecord(r, draw.Options{}).Whole()
	require.Len(t, NewRecord(r, draw.Options{}).Pages(), 1)
	assert.Equal(t, cardTexts(d), cardTexts(NewRecord(r, draw.Options{}).Pages()[0]))
	labelsApart(t, d, "record")
	text := strings.Join(cardTexts(d), " ")
	for _, part := range []string{"Learner 7", "2026-03-04 10:05", "WS-210", "B", "0123456789ab", "42", "17 of 20 right; 16 needed", "7\u202fmin 12\u202fs", "Passed", "Loose fit", "Answered: no answer. Right: Hardly ever, or never.", "Learner", "Trainer", "2026-03-04 10:05 UTC+00:00", "Exam of everything"} {
		assert.Contains(t, text, part)
	}
	for range 200 {
		r.Misses = append(r.Misses, training.Miss{Question: "one more that was missed"})
	}
	assert.NotContains(t, text, "seen set")
	r.Passed, r.OverTime, r.Repeat, r.Revision = false, true, true, ""
	r.Who = strings.Repeat("very long name ", 14)
	d = NewRecord(r, draw.Options{}).Whole()
	labelsApart(t, d, "record with many misses")
	text = strings.Join(cardTexts(d), " ")
	assert.Contains(t, text, "Not passed: over the time")
	assert.Contains(t, text, "draft, not issued")
	r.As, r.Grave = "A", []string{"a refused part was passed on", "answered that work may go on after a fault"} // the first as an older program worded it
	d = NewRecord(r, draw.Options{}).Whole()
	labelsApart(t, d, "record of who passed on a refused part")
	text = strings.Join(cardTexts(d), " ")
	assert.Contains(t, text, "Not passed: over the time; answered that a refused part may be passed on; that work may go on after a fault")
	assert.Contains(t, text, "draft that became revision A")
	d = NewRecord(Record{Record: training.Record{Who: "Ada", Grave: []string{"a refused part was passed on"}}}, draw.Options{}).Whole()
	assert.Contains(t, strings.Join(cardTexts(d), " "), "Not passed: answered that a refused part may be passed on")
	d = NewRecord(Record{Record: training.Record{Who: "Ada", Exam: "setter", Unfinished: true, Answered: 7, Items: 20}}, draw.Options{}).Whole()
	labelsApart(t, d, "record of an exam that was left")
	left := strings.Join(cardTexts(d), " ")
	for _, part := range []string{"Not finished", "7 of 20 answered, nothing judged", "Setter's exam", "begun and left"} {
		assert.Contains(t, left, part)
	}
	assert.NotContains(t, left, "Nothing was missed")
	assert.Contains(t, text, "42: repeat of a seen set")
	assert.Equal(t, 200, strings.Count(text, "one more that was missed"))
	var pdf bytes.Buffer
	require.NoError(t, NewRecord(r, draw.Options{}).Write(&pdf, "pdf"))
}

// Everything that was missed is printed, on as many pages as it takes, each once and each
// page saying whose it is; what alone failed an exam stands on the page that is signed.
func TestEveryMissIsPrinted(t *testing.T) {
	r := Record{Record: training.Record{Who: "Ada", Number: "WS-210", Digest: "sha256:0123456789abcdef", Needed: 16, Items: 30}}
	for i := range 30 {
		r.Misses = append(r.Misses, training.Miss{Question: fmt.Sprintf("Question <%d> ", i+1) + strings.Repeat("A question with a long situation. ", 7), Given: "An answer", Right: "Another", Number: i + 1, Alone: i == 29})
	}
	sheet := NewRecord(r, draw.Options{})
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
	assert.Equal(t, 1, r.Misses[0].Number, "the record given is left alone")
}
