package words

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
)

// TestWatchTimesOfTheMotionAlone: while no settle time is given, every text that says a
// watch time says what to add and how to measure it; with one given, none does.
func TestWatchTimesOfTheMotionAlone(t *testing.T) {
	for _, c := range []struct {
		plan  changes
		lacks bool
	}{{nil, true}, {changes{"motion.settle_time": "0.3"}, false}} {
		p := example(t, c.plan)
		r := press.Evaluate(p)
		for name, text := range map[string]string{"rule": ReadingRule(p, r), "note": say.WatchNote(r), "catalogue": say.CatalogueLead(r)} {
			assert.Equal(t, c.lacks, strings.Contains(text, MotionAlone), name)
		}
		for name, text := range map[string]string{"title": CycleTitle(r), "brief": say.WatchBrief(r)} {
			assert.Equal(t, c.lacks, strings.Contains(text, "motion alone"), name)
		}
		proving := strings.Join(flat(paperOf(t, "proving", p)), "\n")
		assert.Contains(t, proving, "Time 25 arrivals")
		assert.Equal(t, !c.lacks, strings.Contains(proving, "not over the settle time of 0.30\u202fs"))
		assert.Contains(t, strings.Join(paperOf(t, "proving", p).Notes, "\n"), "What was found on this one still counts")
	}
}

// flat is every cell of a table.
func flat(t Table) []string {
	var out []string
	for _, row := range t.Rows {
		out = append(out, row...)
	}
	return out
}
