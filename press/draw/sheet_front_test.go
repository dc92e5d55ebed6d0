package draw

import (
	"testing"

	"github.com/stretchr/testify/assert"

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
