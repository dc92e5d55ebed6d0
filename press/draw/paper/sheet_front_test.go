package paper

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/draw/canvas"
	"ramplan/press/draw/drawtest"
	"ramplan/press/draw/drawtest/grey"
	"ramplan/press/draw/typeset"
	"ramplan/press/words"
)

// TestBlockedSheetHasASign: the message of a plan with a blocker stands in another ink
// on the first page, beside a triangle, and praises nothing.
func TestBlockedSheetHasASign(t *testing.T) {
	signs := func(p *press.Plan) (n int, subject string) {
		d := NewSheet(p, press.Evaluate(p), SheetOptions{})
		first := d.pages[0]
		list, _ := grey.Of(first)
		for _, q := range list {
			if b := q.Box(); q.Fill && q.Ink.Name == canvas.Alert.Name && len(q.At) == 3 && b.Height() > 0.8*sheetTitleLeast {
				n++
			}
		}
		return n, d.subject
	}
	n, subject := signs(drawtest.Example(t, nil))
	assert.Zero(t, n)
	assert.Contains(t, subject, "Catches")
	blocked := drawtest.Example(t, drawtest.Changes{"joint.stop": "none"})
	n, subject = signs(blocked)
	assert.Equal(t, 1, n)
	assert.Equal(t, words.Headline(blocked, press.Evaluate(blocked)), subject)
	assert.NotContains(t, subject, "atches")
}

// TestFirstPageIsFull: what goes on behind the first page has no room on it. The room for
// texts is cut down step by step, so that every kind of choice is made.
func TestFirstPageIsFull(t *testing.T) {
	fuller := 0
	for name, p := range drawtest.Plans(t) {
		r := press.Evaluate(p)
		words.Explain(r)
		s := &sheet{p: p, r: r, paper: Papers[0], title: newTitleBlock(p, r, nil)}
		texts, m := s.newTexts(), typeset.Setter{}
		for top := 300.0; top < 700; top += 40 {
			columns := s.columns(top, top)
			c, ok := s.choose(m, texts, columns)
			if !ok {
				continue
			}
			require.NotNil(t, s.arrange(m, texts, c, columns, nil))
			for _, more := range []choice{{findings: 1}, {unseen: 1}, {notes: 1}} {
				try, all := choice{c.findings + more.findings, c.unseen + more.unseen, c.notes + more.notes, c.short}, texts.all()
				if try.findings > all.findings || try.unseen > all.unseen || try.notes > all.notes {
					continue
				}
				fuller++
				assert.Nil(t, s.arrange(m, texts, try, columns, nil), "%s from %v down: %+v leaves room for more", name, top, c)
			}
		}
	}
	assert.Positive(t, fuller)
}

// TestSheetDrawsTheRun: where the ram runs through steps, the sheet draws these and not the
// plain cycle.
func TestSheetDrawsTheRun(t *testing.T) {
	p, r := drawtest.OfTheRun(t, nil)
	svg := string(written(t, NewSheet(p, r, SheetOptions{}), "svg", 1))
	assert.Contains(t, svg, ">own zone<")
	assert.NotContains(t, svg, ">retract<")
}
