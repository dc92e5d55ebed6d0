package draw

import (
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
	"ramplan/press/words"
)

// TestBlockedSheetHasASign: the message of a plan with a blocker stands in another ink
// on the first page, beside a triangle, and praises nothing.
func TestBlockedSheetHasASign(t *testing.T) {
	signs := func(p *press.Plan) (n int, subject string) {
		d := NewSheet(p, press.Evaluate(p), SheetOptions{})
		first := d.pages[0]
		m := newMarks(first.width, first.height)
		first.paint(&pen{c: m, h: first.height})
		for _, q := range m.list {
			if b := q.box(); q.fill && q.ink.name == alert.name && len(q.at) == 3 && b.height() > 0.8*sheetTitleLeast {
				n++
			}
		}
		return n, d.subject
	}
	n, subject := signs(example(t, nil))
	assert.Zero(t, n)
	assert.Contains(t, subject, "Catches")
	blocked := example(t, changes{"joint.stop": "none"})
	n, subject = signs(blocked)
	assert.Equal(t, 1, n)
	assert.Equal(t, words.Headline(blocked, press.Evaluate(blocked)), subject)
	assert.NotContains(t, subject, "atches")
}

// TestFirstPageIsFull: what goes on behind the first page has no room on it. The room for
// texts is cut down step by step, so that every kind of choice is made.
func TestFirstPageIsFull(t *testing.T) {
	fuller := 0
	for name, p := range plans(t) {
		r := press.Evaluate(p)
		words.Explain(r)
		s := &sheet{p: p, r: r, paper: Papers[0], title: newTitleBlock(p, r, nil)}
		texts, m := s.newTexts(), setter{}
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
	data, err := os.ReadFile("../../static/examples/pivot-bush.json")
	require.NoError(t, err)
	p, problems := press.Decode(data)
	require.Empty(t, problems)
	svg := string(written(t, NewSheet(p, press.Evaluate(p), SheetOptions{}), "svg", 1))
	assert.Contains(t, svg, ">own zone<")
	assert.NotContains(t, svg, ">retract<")
}
