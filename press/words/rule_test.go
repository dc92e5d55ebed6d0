package words

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ramplan/press"
)

// TestTheReadingRuleSaysItsTimes: the rule and the setpoint list give the figures
// that the rule speaks of (derived: the watch time of the example's result is
// 1.69934 s, its confirm time 0.05 s).
func TestTheReadingRuleSaysItsTimes(t *testing.T) {
	p := decoded(t)
	r := press.Evaluate(p)
	rule := ReadingRule(p, r)
	assert.Contains(t, rule, "at arrival plus the confirm time of 0.05\u202fs")
	assert.Contains(t, rule, "after the watch time (wait at least 1.70\u202fs from home; "+MotionAlone+")")
	list := paperOf(t, "setpoints", p)
	assert.Contains(t, list.Rows, []string{"Confirm time", "0.05\u202fs", "", ""})
	assert.Contains(t, list.Rows, []string{"Watch time, at least", "1.70\u202fs", "", ""})
	assert.Contains(t, list.Notes, say.WatchNote(r))
	for _, name := range []string{"shift", "reactions"} {
		assert.Contains(t, paperOf(t, name, p).Notes, rule, name)
	}

	open := press.Evaluate(p)
	open.Cycle.WatchTime = nil
	assert.NotContains(t, ReadingRule(p, open), "at least")
	found := false
	for _, s := range say.typedIn(p, open) {
		found = found || s.Name == "watch_time" && s.Value == none && s.Number == nil
	}
	assert.True(t, found, "a watch time that is not known is said so")
}

// TestTheWatchTimeIsTypedIn: the controller's own words can name it, and what is
// typed in is rounded up in its unit as well.
func TestTheWatchTimeIsTypedIn(t *testing.T) {
	p := decoded(t, `"window": {}`, `"window": {}, "controller": {"words": [{"setpoint": "watch_time", "name": "T3", "unit": "ms", "factor": 1000}]}`)
	list := paperOf(t, "setpoints", p)
	last := list.Rows[len(list.Rows)-1]
	require.Equal(t, "Watch time, at least", last[0])
	assert.Equal(t, []string{"1.70\u202fs", "T3", "1700", "ms"}, last[1:5])
}

// TestAfter: a time that has to have gone by is never rounded down.
func TestAfter(t *testing.T) {
	for s, want := range map[float64]string{1.6993: "1.70", 1.7: "1.70", 1.7001: "1.71", 0: "0.00", 0.004: "0.01"} {
		assert.Equal(t, want, AfterBare(s), "%v", s)
		got := whenOver(s)
		assert.True(t, got >= s-1e-7 && got < s+0.01, "%v", s)
	}
	assert.Equal(t, none, AfterBare(math.Inf(1)))
}

// changed is a change that would do it, from one value to another.
func changed(path string, from, to float64) press.TargetChange {
	return press.TargetChange{Path: path, From: from, To: &to}
}

// TestNoTargetIsGivenUp: a target that would have to be allowed more than ten times is no
// change that is offered, and is spoken of instead. Ten times: our own limit, no source.
func TestNoTargetIsGivenUp(t *testing.T) {
	p := decoded(t)
	few, many := changed("targets.false_reject_ppm", 2000, 19000), changed("targets.false_reject_ppm", 2000, 21000)
	_, ok := say.Change(p, few)
	assert.True(t, ok)
	_, ok = say.Change(p, many)
	assert.False(t, ok)
	_, ok = say.Change(p, changed("station.stiffness", 1000, 10000))
	assert.True(t, ok)
	assert.Empty(t, say.GivenUp([]press.TargetChange{few}))
	assert.Contains(t, say.GivenUp([]press.TargetChange{few, many}), "10.50 times what is asked for")
}

// TestAdviceIsWhatWasEvaluated: the caution of missed targets names changes that were
// evaluated, and none that does not do it.
func TestAdviceIsWhatWasEvaluated(t *testing.T) {
	p := decoded(t, `"window": {}`, `"window": {"rule": "target"}`, `"reference_uncertainty": 0.01`, `"reference_uncertainty": 0.03`, `"false_accept_ppm": 50`, `"false_accept_ppm": 1`, `"false_reject_ppm": 2000`, `"false_reject_ppm": 1`)
	r := press.Evaluate(p)
	require.NotNil(t, r.Window.Target)
	require.False(t, r.Window.Target.Met)
	say.Explain(r)
	found := 0
	for _, f := range r.Findings {
		if f.Code != press.TargetMissed && f.Path != "window.rule" {
			continue
		}
		found++
		assert.Contains(t, f.Message, "alone would keep both targets", f.Code)
		for _, c := range r.TargetChanges() {
			if label, is := press.FieldAt(c.Path); is && c.To == nil && !strings.HasPrefix(c.Path, "targets.") {
				assert.NotContains(t, f.Message, lowerFirst(label.Label), f.Code)
			}
		}
		assert.NotContains(t, f.Message, "make the reading surer", f.Code)
	}
	assert.Positive(t, found)
}

// TestWindowBy: paper names the rule of the window and what it goes by.
func TestWindowBy(t *testing.T) {
	for window, want := range map[string]string{
		`{}`:                  "by the guard band, inside the drawing by the uncertainty of a reading",
		`{"rule": "process"}`: "around the process, within the guard bands, 4 standard deviations about the nominal reading",
		`{"rule": "target"}`:  "for the targets, accepted wrongly 50\u202fppm, refused wrongly 2000\u202fppm, on average",
		`{"rule": "target", "targets_for": "worst_day", "zone_start": 115.1}`: "zone start by hand, push end for the targets, accepted wrongly 50\u202fppm, refused wrongly 2000\u202fppm, on a worst day",
		`{"rule": "target", "push_stroke": 7.7, "zone_start": 115.1}`:         "zone start and push end set by hand, by no rule",
	} {
		assert.Equal(t, want, say.WindowBy(decoded(t, `"window": {}`, `"window": `+window)))
	}
}
