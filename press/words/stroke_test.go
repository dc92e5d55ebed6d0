package words

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
)

// After a probe the press starts where the part stalled. Who counts the stroke from there
// would drive past the push end: setpoints and their page say from where it counts.
func TestStrokeCountsFromTheApproachEnd(t *testing.T) {
	note := func(p *press.Plan, r *press.Result) string {
		for _, s := range Setpoints(p, r) {
			if s.Name == "push_stroke" {
				return s.Note
			}
		}
		return ""
	}
	page := func(p *press.Plan, r *press.Result) string {
		table, _ := Printer{}.Paper("setpoints", p, r)
		return strings.Join(table.Notes, "\n")
	}
	p, r := probed(t)
	pos := Printer{}.Positions(p)
	assert.Contains(t, note(p, r), "from the approach end, also after the probe")
	said := Printer{}.StrokeAfterProbe(p, r)
	assert.Contains(t, said, "Counted from the approach end at "+pos.SetAt(r.Travel.ApproachEnd)+", also after the probe")
	assert.Contains(t, said, "is given the push end, "+pos.SetAt(r.Travel.ApproachEnd+*r.Travel.PushStroke), "E = A + push stroke, by hand")
	assert.Contains(t, page(p, r), "Push stroke: counted from the approach end")

	p.Probe.Use = false
	r = press.Evaluate(p)
	assert.NotContains(t, note(p, r), "probe")
	assert.NotContains(t, page(p, r), "Push stroke: ")
}
