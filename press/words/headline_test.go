package words

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"ramplan/press"
)

// TestHeadline reads the headline of plans of every kind: nothing is praised of a
// plan that is not ready. The figures in the
// texts are regression values; that they are true is what TestHeadlineIsTrue
// checks.
func TestHeadline(t *testing.T) {
	for _, c := range []struct {
		name string
		plan changes
		want string
	}{
		{"example", nil, "Catches a part 0.01 mm too tall or too short 99.9 % of the time, on average over stations and days; a gap under 0.06 mm mostly passes; a loose fit is never seen."},
		{"touch", with(touch, changes{"parts[2].contact": "0"}), "Catches a part 0.01 mm too tall or 0.02 mm too short 99.9 % of the time, on average over stations and days; a gap under 0.06 mm mostly passes."},
		{"wide on one side", changes{"window.zone_start": "115", "faults.chip": "0.2"}, "Passes parts up to 0.05 mm too tall; catches a part 0.09 mm too tall or 0.01 mm too short 99.9 % of the time, on average over stations and days; a gap under 0.14 mm mostly passes; a loose fit is never seen."},
		{"generous guard band", changes{"window.guard_factor": "2"}, "Refuses 9.4 % (94 000 ppm) of all parts although good (target 2000 ppm), accepts < 0.01 ppm of wrong height (target 50 ppm); catches a part just outside the drawing 99.9 % of the time, on average over stations and days; a loose fit is never seen."},
		{"no stop", changes{"joint.stop": "none"}, "Not ready for use: nothing stops the press-in."},
		{"no setting", changes{"station.max_force": "2300"}, "Not ready for use: no setting seats every part and overloads none."},
		{"no acceptance", changes{"station.reference_uncertainty": "0.2"}, "Not ready for use: the guard bands leave nothing of the requirement."},
		{"never good", changes{"window.zone_start": "115.3", "window.zone_end": "115.4"}, "Not ready for use: no reading gives both signals; every part would be refused."},
		{"missing looks good", changes{"parts[1].insert": "false", "parts[2].insert": "true"}, "Not ready for use: a missing insert looks good."},
		{"another check", changes{"parts[1].insert": "false", "parts[2].insert": "true", "station.presence_check": "light barrier"}, "Catches a part 0.01 mm too tall or too short 99.9 % of the time, on average over stations and days; a gap under 0.06 mm mostly passes; a missing insert is left to the other check; a loose fit is never seen."},
		{"two blockers", changes{"ram.stroke": "115.2"}, "Not ready for use: the ram cannot go where it is sent."},
		{"three blockers", changes{"ram.max_speed": "150"}, "Not ready for use: the ram cannot move as asked, and one more blocker."},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := example(t, c.plan)
			r := press.Evaluate(p)
			got := plain(Headline(p, r))
			if c.want[len(c.want)-1] == '.' {
				assert.Equal(t, c.want, got)
			} else {
				assert.Contains(t, got, c.want)
			}
			wellFormed(t, Headline(p, r))
		})
	}
}

// plain puts plain spaces where a text has narrow ones.
func plain(s string) string {
	out := []rune(s)
	for i, c := range out {
		if string(c) == thin {
			out[i] = ' '
		}
	}
	return string(out)
}

// TestHeadlineIsTrue checks the promise against the samples: a part that much
// outside the drawing stands beyond the limit sample.
func TestHeadlineIsTrue(t *testing.T) {
	for _, c := range []changes{nil, {"window.zone_start": "115"}, {"window.guard_factor": "2"}, {"station.position_step": "0.001"}} {
		p := example(t, c)
		r := press.Evaluate(p)
		pos := PositionsOf(p)
		tall := pos.up(max(0, r.Samples.Long-p.Requirement.HeightHigh))
		assert.GreaterOrEqual(t, p.Requirement.HeightHigh+tall, r.Samples.Long-1e-8)
		low := pos.up(max(0, p.Requirement.HeightLow-r.Samples.Short))
		assert.LessOrEqual(t, p.Requirement.HeightLow-low, r.Samples.Short+1e-8)
		if gap, ok := passingGap(r, pos); ok {
			assert.LessOrEqual(t, r.Travel.SeatReading-gap, r.Window.Overlap[0]+1e-8, "what passes is never said to be less")
			assert.Less(t, r.Window.Overlap[0]-(r.Travel.SeatReading-gap), math.Pow10(-pos.Decimals()), "and not more than a digit more")
		}
	}
}

// TestTitle is the message of the strip.
func TestTitle(t *testing.T) {
	for _, c := range []struct {
		plan changes
		want string
	}{
		{nil, "Good between 115.08 and 115.19 mm; catches a part 0.01 mm too tall or too short 99.9 % of the time, on average over stations and days"},
		{changes{"window.zone_start": "115", "faults.chip": "0.2"}, "Accepted between 115.00 and 115.19 mm; catches a part 0.09 mm too tall or 0.01 mm too short 99.9 % of the time, on average over stations and days"},
		{changes{"window.zone_start": "115.19"}, "Accepted only at 115.19 mm, but the nominal part is refused"},
		{changes{"station.max_force": "2300"}, "Accepted between 115.06 and 115.18 mm, but no setting seats every part and overloads none"},
		{changes{"station.reference_uncertainty": "0.2"}, "No part is accepted: the guard bands leave nothing of the requirement"},
	} {
		p := example(t, c.plan)
		assert.Equal(t, c.want, plain(StripTitle(p, press.Evaluate(p))))
	}
}

// TestCauses: every code that can block has its words in the headline.
func TestCauses(t *testing.T) {
	for code, plans := range provoked {
		for _, c := range plans {
			p := example(t, c)
			r := press.Evaluate(p)
			wellFormed(t, Headline(p, r))
			for _, f := range r.Findings {
				if f.Severity == press.Blocker {
					alone := &press.Result{Outcome: press.Outcome{Findings: []press.Finding{f}}}
					assert.NotEqual(t, "a blocker was found", say.cause(alone), code)
				}
			}
		}
	}
}

// TestPerfect names what was not given.
func TestPerfect(t *testing.T) {
	assert.Empty(t, Perfect(press.Evaluate(example(t, changes{"motion.settle_time": "0.3"}))))
	r := press.Evaluate(example(t, changes{"station.nest_drift": "", "ram.force_scatter": ""}))
	assert.Equal(t, "Taken as perfect, because not given: nest drift, force scatter and settle time.", Perfect(r))
}

// TestNotReady: the cause of a headline by itself, and the shortest verdict.
// Regression values, in the words of TestHeadline.
func TestNotReady(t *testing.T) {
	for _, c := range []struct {
		name          string
		plan          changes
		cause, glance string
	}{
		{"example", nil, "", "Good between 115.08 and 115.19 mm"},
		{"no acceptance", changes{"station.reference_uncertainty": "0.2"}, "the guard bands leave nothing of the requirement", "Not ready: the guard bands leave nothing of the requirement"},
		{"never good", changes{"window.zone_start": "115.3", "window.zone_end": "115.4"}, "no reading gives both signals; every part would be refused", "Not ready: no reading gives both signals"},
		{"three blockers", changes{"ram.max_speed": "150"}, "the ram cannot move as asked, and one more blocker", "Not ready: the ram cannot move as asked"},
	} {
		p := example(t, c.plan)
		r := press.Evaluate(p)
		assert.Equal(t, c.cause, plain(NotReady(r)), c.name)
		assert.Equal(t, c.glance, plain(Glance(p, r)), c.name)
		if c.cause != "" {
			assert.Contains(t, Headline(p, r), "Not ready for use: "+NotReady(r)+".", c.name)
		}
	}
}

// TestSetpointNote: with a blocker no setpoint is called ready.
func TestSetpointNote(t *testing.T) {
	ready := press.Evaluate(example(t, nil))
	assert.Equal(t, "proposed", say.SetpointNote(ready, false))
	assert.Equal(t, "by hand", say.SetpointNote(ready, true))
	one := press.Evaluate(example(t, changes{"joint.stop": "none"}))
	assert.Equal(t, 1, one.Count(press.Blocker))
	assert.Equal(t, "not for use before the blocker is mended", say.SetpointNote(one, false))
	more := press.Evaluate(example(t, changes{"ram.max_speed": "150"}))
	assert.Equal(t, 2, more.Count(press.Blocker))
	assert.Equal(t, "by hand; not for use before the blockers are mended", say.SetpointNote(more, true))
	assert.Equal(t, "not for use before the blockers are mended", say.SetpointNote(more, false))
}

// With a probe that works the headline says from which fit on it refuses, and no longer that
// a loose fit is never seen; with one that cannot tell, or is not used, it still does.
func TestHeadlineOfAProbe(t *testing.T) {
	p := example(t, probing)
	r := press.Evaluate(p)
	said := Headline(p, r)
	assert.NotContains(t, said, "never seen")
	assert.Contains(t, said, "a fit looser than 4.8\u202fµm is refused by the probe 99.9\u202f% of the time")
	assert.GreaterOrEqual(t, r.Probe.CaughtBelow.Effective, 4.8, "rounded down")
	p = example(t, changes{"probe.use": "false"})
	assert.Contains(t, Headline(p, press.Evaluate(p)), "a loose fit is never seen")
}

// A headline that says a share under 100 ppm says on paper what that hangs on, with a mark
// at the figure; one without such a share has no mark.
func TestMarkedHeadline(t *testing.T) {
	p := example(t, changes{"targets.false_reject_ppm": "500"}) // of 1600 ppm, derived: the example's result
	r := press.Evaluate(p)
	text, says := say.MarkedHeadline(p, r)
	assert.Contains(t, text, "<\u202f0.01\u202fppm\u202f†‡ of wrong height")
	assert.Equal(t, say.Headline(p, r), strings.ReplaceAll(text, "\u202f†‡", ""), "nothing else differs")
	assert.Len(t, says, 3, "two marks, and what is in no share")
	p = example(t, nil)
	r = press.Evaluate(p)
	text, says = say.MarkedHeadline(p, r)
	assert.Equal(t, say.Headline(p, r), text)
	assert.Empty(t, says)
}
